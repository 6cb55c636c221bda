/** What belongs to the whole day: field blanks, conditions, forms on paper, and the box for the laboratory. */
import { blanksNeeded } from '#findings/blanks.ts';
import { shiftEndedAt } from '#findings/shiftEnded.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import { en as words } from '#words/shift.ts';
import { airOf, blanksOf } from './daySamples.ts';
import type { ShiftDay } from './useShift.ts';

export interface DayLinesProps {
  readonly day: ShiftDay;
  /** When the last file left this device; null when none did. */
  readonly lastSentAt: string | null;
}

export function DayLines({ day, lastSentAt }: DayLinesProps) {
  const { book, place } = day;
  const shift = `/shift/${place.shift.id}`;
  const blanksCount = blanksOf(day).length;
  const wanted = blanksNeeded(airOf(day).length, 'tenPercent').count;
  const enough = blanksCount >= wanted;
  const boxed = new Set([...book.boxes.values()].flatMap(({ packed }) => packed.sampleIds));
  const sealed = airOf(day).filter((sample) => sample.sealed !== null);
  const waiting = sealed.filter(({ id, results }) => !boxed.has(id) && results.length === 0);
  const hasConditions = place.shift.conditions !== null;
  const endedAt = shiftEndedAt(book, place.shift.id);
  const isSent = endedAt !== null && lastSentAt !== null && lastSentAt >= endedAt;
  const mark = (isDone: boolean) => <StandingMark standing={isDone ? 'done' : 'due'} />;
  return (
    <>
      <Lines heading={words.blanks.heading}>
        <Line
          to={`${shift}/blank`}
          detail={words.blanks.detail}
          end={airOf(day).length === 0 ? undefined : mark(enough)}
        >
          {enough ? words.blanks.enough(blanksCount) : words.blanks.line(blanksCount, wanted)}
        </Line>
      </Lines>
      <Lines heading={words.conditions.heading}>
        <Line to={`${shift}/conditions`} end={hasConditions ? mark(true) : undefined}>
          {hasConditions ? words.conditions.filled : words.conditions.none}
        </Line>
      </Lines>
      <Lines heading={words.paper.heading}>
        <Line to={`/key-in?shift=${place.shift.id}`} detail={words.paper.keyInDetail}>
          {words.paper.keyIn}
        </Line>
        <Line to="/papers">{words.paper.blank}</Line>
      </Lines>
      <Lines heading={words.box.heading}>
        <Line to="/boxes">
          {sealed.length === 0
            ? words.box.none
            : waiting.length === 0
              ? words.box.sent
              : words.box.waiting(waiting.length)}
        </Line>
      </Lines>
      <Lines heading={words.file.heading}>
        <Line
          to="/send?today=1"
          detail={endedAt === null ? words.file.notYet : isSent ? words.file.sent : words.file.unsent}
          end={endedAt === null ? undefined : mark(isSent)}
        >
          {words.file.open}
        </Line>
      </Lines>
      <Lines heading={words.next.heading}>
        <Line to={`/todo?site=${place.site.id}`}>{words.next.todo}</Line>
        <Line to={`/determination/${place.site.id}`}>{words.next.determination}</Line>
        <Line to={`/inspector/${place.site.id}`}>{words.next.inspector}</Line>
      </Lines>
    </>
  );
}
