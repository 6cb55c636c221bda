/** The pumps that are on a worker now: minutes so far, and when a look is due. */
import { wallTimeOf } from '#core/calendar.ts';
import { findOnWorker } from '#findings/onWorker.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import type { SampleRecord } from '#records/book.ts';
import { formatMinutes } from '#words/quantity.ts';
import { en as words } from '#words/shift.ts';
import { airOf } from './daySamples.ts';
import type { ShiftDay } from './useShift.ts';

interface Stands {
  readonly text: string;
  readonly isDue: boolean;
}

function howItStands(sample: SampleRecord, { book, place }: ShiftDay): Stands {
  const { soFarMin, nextLookAt, lookOverdue, state } = findOnWorker(sample.id, book, place.now, null);
  const minutes = formatMinutes(soFarMin);
  const look = nextLookAt === null ? null : wallTimeOf(nextLookAt, place.zone).time;
  if (state === 'offRunning' || state === 'offStopped') return { text: words.on.off(minutes), isDue: false };
  if (state === 'doubtful') return { text: words.on.fault(minutes), isDue: true };
  if (sample.intervals.at(-1)?.awayFromLead === true) return { text: words.on.away(minutes), isDue: false };
  return lookOverdue && look !== null
    ? { text: words.on.overdue(minutes, look), isDue: true }
    : { text: words.on.running(minutes, look), isDue: false };
}

export function OnWorkerLines({ day }: { readonly day: ShiftDay }) {
  const { book, place } = day;
  const worn = airOf(day).filter(({ putOn, stopped }) => putOn !== null && stopped === null);
  return (
    <Lines heading={words.on.heading} whenEmpty={words.on.none}>
      {worn.map((sample) => {
        const { text, isDue } = howItStands(sample, day);
        const since = sample.putOn === null ? '' : wallTimeOf(sample.putOn.at, place.zone).time;
        return (
          <Line
            key={sample.id}
            to={`/sample/${sample.id}`}
            detail={text}
            end={isDue ? <StandingMark standing="due" /> : undefined}
          >
            {words.on.since(book.people.get(sample.workerId ?? '')?.name ?? '', since)}
          </Line>
        );
      })}
    </Lines>
  );
}
