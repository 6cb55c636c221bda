/** Each worker and day of a plan, with how it stands; what is still to do leads to another day or to why it did not come about. */
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { PlanStanding, SlotFinding } from '#findings/season/plan.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import type { Book, PlanRecord } from '#records/book.ts';
import { en } from '#words/planScreen.ts';
import { placeKey } from './places.ts';

const words = en.page;

const marks = {
  done: 'done',
  onTheWorker: 'waiting',
  notSent: 'waiting',
  withTheLaboratory: 'waiting',
  toDo: 'due',
} as const;

/** Nothing is late while the day is ahead, or not chosen. */
const isAhead = ({ why }: SlotFinding): boolean => why === 'ahead' || why === 'dayOpen';

export interface PlacesProps {
  readonly plan: PlanRecord;
  readonly standing: PlanStanding;
  readonly book: Book;
  readonly found: DutiesOfBook;
}

export function Places({ plan, standing, book, found }: PlacesProps) {
  const leadsTo = (slot: SlotFinding): string | undefined => {
    const measurement = found.measurements.get(slot.measurementId ?? '');
    if (slot.state !== 'toDo') return measurement?.from === 'sampled' ? `/day/${measurement.id}` : undefined;
    return plan.dropped === null ? `/plan/${plan.id}?place=${placeKey(slot)}` : undefined;
  };
  return (
    <Lines heading={words.places}>
      {standing.slots.map((slot, at) => (
        <Line
          // biome-ignore lint/suspicious/noArrayIndexKey: two open days of one worker differ by nothing else
          key={`${placeKey(slot)} ${at}`}
          to={leadsTo(slot)}
          detail={words.state(slot)}
          end={isAhead(slot) ? undefined : <StandingMark standing={marks[slot.state]} />}
        >
          {words.place(book.people.get(slot.workerId)?.name ?? words.someone, slot.workOn)}
        </Line>
      ))}
    </Lines>
  );
}
