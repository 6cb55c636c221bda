/** Whom the result stands for: ticked from the roster. A tick taken off asks for a reason; somebody can be added. */
import { Checklist } from '#parts/Checklist.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en } from '#words/noticeScreen.ts';
import styles from './notice.module.css';
import { type NoticeText, namesOf } from './noticeDraft.ts';
import type { NoticeHere } from './noticeHere.ts';

const words = en.who;

export interface WhoLinesProps {
  readonly here: NoticeHere;
  readonly text: NoticeText;
  readonly onChange: (part: Partial<NoticeText>) => void;
  readonly errors: readonly FieldError[];
}

export function WhoLines({ here: { owed, book, measurement }, text, onChange, errors }: WhoLinesProps) {
  const { affectedIds } = owed;
  const others = [...book.people.values()].filter(({ id }) => !affectedIds.includes(id));
  const out = affectedIds.filter((id) => text.leftOut.includes(id));
  const person = (id: string) => book.people.get(id);
  return (
    <>
      <Checklist
        name="workers"
        label={words.label}
        hint={words.hint}
        options={affectedIds.map((id) => ({
          value: id,
          label: person(id)?.name ?? en.someWorker,
          hint: id === measurement.workerId ? words.measured : (person(id)?.employer ?? undefined),
        }))}
        value={affectedIds.filter((id) => !text.leftOut.includes(id))}
        onChange={(ids) => onChange({ leftOut: affectedIds.filter((id) => !ids.includes(id)) })}
        error={errorOf(errors, 'workers')}
      />
      {out.length > 0 && (
        <TextField
          name="whyLeftOut"
          label={words.leftOut(namesOf(out, book))}
          rows={2}
          value={text.whyLeftOut}
          onChange={(whyLeftOut) => onChange({ whyLeftOut })}
          error={errorOf(errors, 'whyLeftOut')}
        />
      )}
      {others.length > 0 && (
        <details open={text.added.length > 0}>
          <summary className={styles.summary}>{words.add}</summary>
          <Checklist
            name="added"
            label={words.add}
            hint={words.addHint}
            options={others.map(({ id, name, employer }) => ({ value: id, label: name, hint: employer ?? undefined }))}
            value={text.added}
            onChange={(added) => onChange({ added })}
          />
        </details>
      )}
    </>
  );
}
