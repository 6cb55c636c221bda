/** Labels of the day: on which sheet, how many spares and blanks. Numbers that are lacking are taken from the book and kept for the day. */
import { useState } from 'react';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { HandedOut } from '#parts/HandedOut.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import { labelSheetById, labelSheets } from '#reference/labelSheets.ts';
import { useDraft } from '#store/hooks.ts';
import { spacedDigits } from '#words/digits.ts';
import { en as labelWords } from '#words/labels.ts';
import { en as partsWords } from '#words/parts.ts';
import { en } from '#words/tomorrowScreen.ts';
import { type LabelChoice, type LabelHere, labelsOfDay, lacking, placesOn } from './labelsOfDay.ts';
import type { LabelsProps } from './paperChoice.ts';
import styles from './tomorrow.module.css';
import { useLabels } from './useLabels.ts';

const words = en.labels;

export function Labels(props: LabelsProps) {
  const { shiftId, book, tomorrow } = props;
  const first: LabelChoice = {
    sheet: 'letter30',
    startAt: '1',
    spares: String(Math.max(tomorrow.spareNumbers.length, tomorrow.spareCassettesCount)),
    blanks: String(Math.max(tomorrow.blankNumbers.length, tomorrow.blanks.count)),
  };
  const draft = useDraft<LabelChoice>(`dayPlan:${shiftId}/labels`, first);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const typed = draft.value;
  const change = (part: Partial<LabelChoice>) => draft.set({ ...typed, ...part });
  const file = useLabels(props, typed, setErrors);
  const places = placesOn(typed.sheet);
  const submit = () => {
    const read = fieldReader(partsWords);
    const start = Number(typed.startAt);
    if (!/^\d{1,3}$/.test(typed.startAt.trim()) || start < 1 || start > places)
      read.add('startAt', words.startAtBad(places));
    for (const name of ['spares', 'blanks'] as const)
      if (!/^([0-3]?\d|40)$/.test(typed[name].trim())) read.add(name, words.countBad);
    const wanted = [...labelsOfDay(book, shiftId), ...lacking(tomorrow, book, typed)];
    if (read.errors.length === 0 && wanted.length === 0) read.add(null, words.nothing);
    setErrors(read.errors);
    if (read.errors.length === 0) void file.handOut();
  };
  return (
    <section className={styles.part}>
      <h2>{words.heading}</h2>
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      <SelectField
        name="labelSheet"
        label={words.sheet}
        hint={labelWords.sheetNote}
        options={labelSheets().map(({ id }) => ({ value: id, label: labelWords.sheets[id] }))}
        value={typed.sheet}
        onChange={(id) => change({ sheet: labelSheetById(id)?.id ?? typed.sheet, startAt: '1' })}
      />
      {places > 1 && (
        <TextField
          name="startAt"
          label={words.startAt}
          kind="digits"
          value={typed.startAt}
          onChange={(startAt) => change({ startAt })}
          error={errorOf(errors, 'startAt')}
        />
      )}
      <div className={styles.two}>
        <TextField
          name="spares"
          label={words.spares}
          kind="digits"
          value={typed.spares}
          onChange={(spares) => change({ spares })}
          error={errorOf(errors, 'spares')}
        />
        <TextField
          name="blanks"
          label={words.blanks}
          hint={words.blanksHint(tomorrow.blanks.count)}
          kind="digits"
          value={typed.blanks}
          onChange={(blanks) => change({ blanks })}
          error={errorOf(errors, 'blanks')}
        />
      </div>
      <div>
        <QuietAction busy={file.state === 'making'} onClick={submit}>
          {file.state === 'making' ? en.papers.making : words.make}
        </QuietAction>
      </div>
      <HandedOut state={file.state} outcome={file.outcome} />
      <Made labels={labelsOfDay(book, shiftId)} book={book} />
    </section>
  );
}

function Made({ labels, book }: { readonly labels: readonly LabelHere[]; readonly book: LabelsProps['book'] }) {
  if (labels.length === 0) return null;
  const whose = ({ workerId, blank }: LabelHere): string =>
    blank ? words.blank : workerId === null ? words.spare : (book.people.get(workerId)?.name ?? '');
  return (
    <>
      <h3>{words.made}</h3>
      <ul className={styles.plain}>
        {labels.map((label) => (
          <li key={label.sampleNumber}>{words.are(whose(label), spacedDigits(label.sampleNumber))}</li>
        ))}
      </ul>
    </>
  );
}
