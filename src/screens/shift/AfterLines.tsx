/** Who is back: what is still open on each cassette, and the void ones, none hidden. */
import { checksOfSample } from '#findings/checks.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import type { SampleRecord } from '#records/book.ts';
import { formatList } from '#words/quantity.ts';
import { en as words } from '#words/shift.ts';
import { airOf, voidOf } from './daySamples.ts';
import type { ShiftDay } from './useShift.ts';

function openSteps(sample: SampleRecord, { book }: ShiftDay): readonly string[] {
  const { steps } = words.after;
  const regular = book.workdays.get(sample.workdayId ?? '')?.regular ?? null;
  return [
    ...(checksOfSample(sample, book).after === null ? [steps.flowAfter] : []),
    ...(regular === null ? [steps.regularDay] : []),
    ...(sample.sealed === null ? [steps.seal] : []),
    ...(sample.sealed === null || sample.sealed.lockedIn === null ? [steps.lockIn] : []),
  ];
}

export function AfterLines({ day }: { readonly day: ShiftDay }) {
  const nameOf = (sample: SampleRecord): string => day.book.people.get(sample.workerId ?? '')?.name ?? '';
  return (
    <Lines heading={words.after.heading} whenEmpty={words.after.none}>
      {airOf(day)
        .filter(({ stopped }) => stopped !== null)
        .map((sample) => {
          const open = openSteps(sample, day);
          return (
            <Line
              key={sample.id}
              to={open.length === 0 ? `/sample/${sample.id}` : `/sample/${sample.id}/after`}
              detail={open.length === 0 ? words.after.closed : words.after.open(formatList(open))}
              end={<StandingMark standing={open.length === 0 ? 'done' : 'due'} />}
            >
              {words.after.line(nameOf(sample), sample.sampleNumber)}
            </Line>
          );
        })}
      {voidOf(day).map((sample) => (
        <Line
          key={sample.id}
          to={`/sample/${sample.id}`}
          detail={words.voidedBecause(sample.voided?.why ?? null)}
          end={<StandingMark standing="void" />}
        >
          {sample.sampleKind === 'blank'
            ? words.voidedBlank(sample.sampleNumber)
            : words.voided(nameOf(sample), sample.sampleNumber)}
        </Line>
      ))}
    </Lines>
  );
}
