/** Measured, and no figure yet: in no picture, and not left out. */
import type { SeasonPicture } from '#findings/season/picture.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/seasonPicture.ts';

interface AwaitedProps {
  readonly picture: SeasonPicture;
  readonly book: Book;
}

export function Awaited({ picture: { awaited }, book }: AwaitedProps) {
  if (awaited.length === 0) return null;
  return (
    <Lines heading={words.awaited}>
      {awaited.map(({ measurementId, workdayId, workOn, workerId }) => (
        <Line key={measurementId} to={workdayId === null ? undefined : `/day/${workdayId}`}>
          {`${formatDay(workOn)}, ${book.people.get(workerId ?? '')?.name ?? words.someone}`}
        </Line>
      ))}
    </Lines>
  );
}
