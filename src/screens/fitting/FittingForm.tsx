/** What the worker reads and taps. What is not tapped is asked about once, then written down as it is. */
import { type ReactNode, useState } from 'react';
import { useLocation } from 'wouter';
import { type PointKey, pointsFor, pointsOf } from '#findings/fittingPoints.ts';
import { Checklist } from '#parts/Checklist.tsx';
import { Choice } from '#parts/Choice.tsx';
import { ConfirmBox } from '#parts/ConfirmBox.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { Book, SampleRecord } from '#records/book.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useBookMeta, useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en as partsEn, es as partsEs } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import type { WorkerWords } from '#words/worker.ts';
import styles from './fitting.module.css';
import type { WorkerLanguage } from './LanguageSwitch.tsx';

type Mode = 'fitted' | 'declined' | 'fittedBySelf';
interface FittingDraft {
  readonly ticked: readonly PointKey[];
  readonly mode: Mode | null;
  readonly initials: string;
}

export interface FittingProps {
  readonly book: Book;
  readonly sample: SampleRecord;
  readonly words: WorkerWords;
  readonly language: WorkerLanguage;
  readonly workerName: string;
  readonly languages: ReactNode;
}

const longestInitials = 8;
const blank: FittingDraft = { ticked: [], mode: null, initials: '' };

export function FittingForm({ book, sample, words, language, workerName, languages }: FittingProps) {
  const name = `sample:${sample.id}/fitting`;
  const draft = useDraft(name, blank);
  const meta = useBookMeta();
  const [, go] = useLocation();
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const [asking, setAsking] = useState(false);
  const writing = useWrite();
  const { ticked, mode, initials } = draft.value;
  const change = (part: Partial<FittingDraft>) => draft.set({ ...draft.value, ...part });
  const points = pointsFor(sample.taskIds);
  const openCount = points.filter((key) => !ticked.includes(key)).length;

  const save = async () => {
    setAsking(false);
    if (mode === null) return;
    const zone = book.sites.get(sample.siteId)?.zone ?? '';
    const body = {
      sampleId: sample.id,
      mode,
      points: pointsOf(points, ticked),
      observationOffered: true,
      initials: mode === 'declined' ? null : initials.trim() || null,
      language,
    };
    const entry = { happened: happenedNow(zone), by: meta?.holderPersonId ?? null };
    const written = await writing.run([newFact('fittingChecked.v1', body, entry)], { draftKey: name });
    if (written === null) return;
    if (written.kind !== 'written') return setErrors(notWritten(written));
    go(`/sample/${sample.id}`);
  };
  const submit = () => {
    const read = fieldReader(language === 'es' ? partsEs : partsEn);
    if (mode === null) read.add('mode', words.modeMissing);
    if (mode === 'fitted' && initials.trim() === '') read.add('initials', words.initialsMissing);
    if (initials.trim().length > longestInitials) read.add('initials', words.initialsLong);
    setErrors(read.errors);
    if (read.errors.length > 0) return;
    if (openCount > 0) return setAsking(true);
    void save();
  };

  return (
    <Page
      heading={words.heading(workerName)}
      lang={language}
      action={
        <MainAction busy={writing.state === 'saving'} onClick={submit}>
          {words.done}
        </MainAction>
      }
    >
      {languages}
      <ErrorSummary errors={errors} />
      <p>{words.whatText}</p>
      <p>{words.measures(book.book?.firmName ?? '')}</p>
      <section>
        <h2>{words.please}</h2>
        <ul className={styles.plain}>
          {words.pleaseLines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
      <section>
        <h2>{words.watch}</h2>
        <p>{words.watchText}</p>
      </section>
      <Checklist
        name="points"
        label={words.check}
        hint={words.checkHint}
        options={points.map((value) => ({ value, label: words.points[value] }))}
        value={ticked}
        onChange={(value) => change({ ticked: value })}
      />
      <Choice
        name="mode"
        label={words.mode}
        options={(['fitted', 'declined', 'fittedBySelf'] as const).map((value) => ({
          value,
          label: words.modes[value],
        }))}
        value={mode}
        onChange={(value) => change({ mode: value })}
        error={errorOf(errors, 'mode')}
      />
      {mode !== null && mode !== 'declined' && (
        <TextField
          name="initials"
          label={words.initials}
          hint={words.initialsHint}
          kind="code"
          value={initials}
          onChange={(value) => change({ initials: value })}
          error={errorOf(errors, 'initials')}
        />
      )}
      <ConfirmBox
        open={asking}
        heading={words.notTicked(openCount)}
        confirmText={words.goOn}
        onConfirm={() => void save()}
        onCancel={() => setAsking(false)}
      >
        <p>{words.notTickedText}</p>
        <ul className={styles.plain}>
          {points
            .filter((key) => !ticked.includes(key))
            .map((key) => (
              <li key={key}>{words.points[key]}</li>
            ))}
        </ul>
      </ConfirmBox>
    </Page>
  );
}
