/** What (d)(5) asks to be written down, and what else it rests on. */
import { Choice } from '#parts/Choice.tsx';
import { DateField } from '#parts/DateField.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en } from '#words/determinationScreen.ts';
import { en as papers } from '#words/printPapers.ts';
import type { DeterminationHere } from './determinationHere.ts';
import type { DeterminationText, Writing } from './useWriting.ts';

const words = en.fields;

export interface AskedFieldsProps {
  readonly here: DeterminationHere;
  readonly writing: Writing;
}

export function AskedFields({ here, writing }: AskedFieldsProps) {
  const { draft, errors, outcome } = writing;
  const text = draft.value;
  const change = (part: Partial<DeterminationText>) => draft.set({ ...text, ...part });
  const lines = (
    name: 'location' | 'observations' | 'earlier' | 'complaints' | 'writtenBy',
    hint?: string,
    rows?: number,
  ) => (
    <TextField
      name={name}
      label={words[name]}
      hint={hint}
      rows={rows}
      value={text[name]}
      onChange={(typed) => change({ [name]: typed })}
      error={errorOf(errors, name)}
    />
  );
  return (
    <>
      <Choice
        name="outcome"
        label={words.outcome}
        options={[
          ...(here.finding.outcome === 'negativeMayBeWritten'
            ? [{ value: 'negative' as const, label: words.negative }]
            : []),
          { value: 'positive' as const, label: words.positive },
        ]}
        value={outcome}
        onChange={(chosen) => change({ outcome: chosen })}
        error={errorOf(errors, 'outcome')}
      />
      {lines('location', words.locationHint)}
      <DateField
        name="determinedOn"
        label={words.determinedOn}
        today={here.duties.today}
        value={text.determinedOn}
        onChange={(determinedOn) => change({ determinedOn })}
        error={errorOf(errors, 'determinedOn')}
      />
      {lines('observations', words.observationsHint, 3)}
      {lines('earlier', words.earlierHint, 3)}
      {lines('complaints', words.complaintsHint, 2)}
      <Choice
        name="shownAs"
        label={words.shownAs}
        options={[
          { value: 'name', label: words.name },
          { value: 'identifier', label: words.identifier },
        ]}
        value={text.shownAs}
        onChange={(shownAs) => change({ shownAs })}
        error={errorOf(errors, 'shownAs')}
      />
      {lines('writtenBy')}
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
