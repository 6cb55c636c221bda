/** What is asked before a notice is made: whom it stands for, how and where it is given, languages, and corrective action where needed. */
import { Checklist } from '#parts/Checklist.tsx';
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf } from '#parts/ErrorSummary.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en as words } from '#words/noticeScreen.ts';
import { en as papers } from '#words/printPapers.ts';
import { Corrective } from './Corrective.tsx';
import type { NoticeText, PaperLanguage } from './noticeDraft.ts';
import type { NoticeHere } from './noticeHere.ts';
import type { NoticeMaking } from './useNoticeMaking.ts';
import { WhoLines } from './WhoLines.tsx';

export interface MakeFormProps {
  readonly here: NoticeHere;
  readonly making: NoticeMaking;
}

export function MakeForm({ here, making }: MakeFormProps) {
  const { draft, errors } = making;
  const text = draft.value;
  const change = (part: Partial<NoticeText>) => draft.set({ ...text, ...part });
  return (
    <>
      <ErrorSummary errors={errors} />
      <WhoLines here={here} text={text} onChange={change} errors={errors} />
      {here.owed.correctiveActionNeeded && <Corrective text={text} onChange={change} errors={errors} />}
      <Choice
        name="form"
        label={words.form.label}
        options={[
          { value: 'inWriting', label: words.form.inWriting },
          { value: 'posted', label: words.form.posted },
        ]}
        value={text.form}
        onChange={(form) => change({ form })}
        error={errorOf(errors, 'form')}
      />
      {text.form === 'posted' && (
        <TextField
          name="places"
          label={words.places}
          hint={words.placesHint}
          rows={3}
          value={text.places}
          onChange={(places) => change({ places })}
          error={errorOf(errors, 'places')}
        />
      )}
      <Choice
        name="shownAs"
        label={words.shownAs.label}
        options={[
          { value: 'name', label: words.shownAs.name },
          { value: 'identifier', label: words.shownAs.identifier },
        ]}
        value={text.shownAs}
        onChange={(shownAs) => change({ shownAs })}
        error={errorOf(errors, 'shownAs')}
      />
      <Checklist<PaperLanguage>
        name="languages"
        label={words.languages.label}
        hint={words.languages.hint}
        options={[
          { value: 'en', label: words.languages.en },
          { value: 'es', label: words.languages.es },
        ]}
        value={text.languages}
        onChange={(languages) => change({ languages })}
        error={errorOf(errors, 'languages')}
      />
      <TextField
        name="questionsTo"
        label={words.questionsTo}
        hint={words.questionsHint}
        value={text.questionsTo}
        onChange={(questionsTo) => change({ questionsTo })}
        error={errorOf(errors, 'questionsTo')}
      />
      {here.revision !== '1' && (
        <TextField
          name="whyRevised"
          label={words.whyRevised}
          rows={2}
          value={text.whyRevised}
          onChange={(whyRevised) => change({ whyRevised })}
          error={errorOf(errors, 'whyRevised')}
        />
      )}
      <Choice
        name="paper"
        label={papers.paper}
        options={(['letter', 'a4'] as const).map((value) => ({ value, label: papers.papers[value] }))}
        value={text.paper}
        onChange={(paper) => change({ paper })}
      />
    </>
  );
}
