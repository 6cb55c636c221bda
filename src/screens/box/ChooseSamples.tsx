/** Which cassettes go into the box: each by its number, compared with the cassette in the hand. */

import { blanksNeeded } from '#findings/blanks.ts';
import { Checklist } from '#parts/Checklist.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { type CheckedCode, ReadCode } from '#parts/ReadCode.tsx';
import type { SampleRecord } from '#records/book.ts';
import { checkSampleNumber } from '#records/sampleNumber.ts';
import type { Registers } from '#store/hooks.ts';
import { en } from '#words/box.ts';
import { formatDay, formatList } from '#words/quantity.ts';

export interface ChooseSamplesProps {
  /** Stopped cassettes and blanks of the site that are in no other box. */
  readonly samples: readonly SampleRecord[];
  readonly running: readonly SampleRecord[];
  readonly chosen: readonly string[];
  readonly onChange: (ids: readonly string[]) => void;
  readonly registers: Registers;
  readonly errors: readonly FieldError[];
}

const words = en.pack;

export function ChooseSamples({ samples, running, chosen, onChange, registers, errors }: ChooseSamplesProps) {
  const inBox = samples.filter(({ id }) => chosen.includes(id));
  const blanksCount = inBox.filter(({ sampleKind }) => sampleKind === 'blank').length;
  const airCount = inBox.length - blanksCount;
  const who = ({ sampleKind, workerId }: SampleRecord): string =>
    sampleKind === 'blank' ? words.blank : (registers.people.byId.get(workerId ?? '')?.name ?? '');
  const check = (text: string): CheckedCode => {
    const checked = checkSampleNumber(text);
    if (checked.kind === 'wrong') return { kind: 'wrong', why: words.code.notNumber };
    const number = checked.sampleNumber;
    const count = samples.filter(({ sampleNumber }) => sampleNumber === number).length;
    if (count !== 1) return { kind: 'wrong', why: count === 0 ? words.code.notHere(number) : words.code.twice(number) };
    return { kind: 'right', number };
  };
  const putIn = (number: string) => {
    const found = samples.find(({ sampleNumber }) => sampleNumber === number);
    if (found && !chosen.includes(found.id)) onChange([...chosen, found.id]);
  };
  return (
    <>
      <ReadCode check={check} onRead={putIn} goesOn />
      <Checklist
        name="samples"
        label={words.samples}
        hint={words.samplesHint}
        options={samples.map((sample) => ({
          value: sample.id,
          label: words.sample(sample.sampleNumber, who(sample)),
          hint: hintOf(sample),
        }))}
        value={chosen}
        onChange={onChange}
        error={errorOf(errors, 'samples')}
      />
      {running.length > 0 && <p>{words.running(formatList(running.map(({ sampleNumber }) => sampleNumber)))}</p>}
      <p role="status">{words.counts(airCount, blanksCount, blanksNeeded(airCount, 'tenPercent').count)}</p>
    </>
  );
}

function hintOf(sample: SampleRecord): string {
  const day = formatDay(sample.workOn);
  const when = sample.sampleKind === 'blank' ? words.opened(day) : words.onDay(day);
  if (sample.voided !== null) return `${when}, ${words.marked}`;
  return sample.sampleKind === 'air' && sample.sealed === null ? `${when}, ${words.notSealed}` : when;
}
