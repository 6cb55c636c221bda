/** The flow checks of this day so far, newest first. */
import { wallTimeOf } from '#core/calendar.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { en as words } from '#words/flow.ts';
import { checksInOrder, flowText } from './pumpStands.ts';

export function CheckedToday({ book, shiftId }: { readonly book: Book; readonly shiftId: string }) {
  const checks = checksInOrder(book)
    .filter((check) => check.shiftId === shiftId)
    .reverse();
  const workOn = book.shifts.get(shiftId)?.workOn;
  return (
    <Lines heading={words.today} whenEmpty={words.noneToday}>
      {checks.map((check) => {
        const { day, time } = wallTimeOf(check.happened.at, check.happened.zone);
        return (
          <Line key={check.id} detail={words.checkDetail(check.purpose, time, day === workOn ? null : day)}>
            {words.checkLine(book.pumps.get(check.pumpId)?.serial ?? '', flowText(check, book))}
          </Line>
        );
      })}
    </Lines>
  );
}
