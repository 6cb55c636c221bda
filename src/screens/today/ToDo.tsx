/**
 * Today's quiet line on what the rule asks next, and the way to one site at the door. It comes once the page stands and the device is
 * idle; while a pump runs the book is left alone and only the ways stand.
 */
import { wallTimeOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { dutyNames } from '#findings/duties/list/calendar.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { useFoundInBook, useIdle } from '#store/hooks/useDuties.ts';
import { useNow } from '#store/hooks.ts';
import { whatToDo } from '#words/duties.ts';
import { en as season } from '#words/season.ts';
import { dayInList, en, whenText } from '#words/todo.ts';

const words = en.quiet;

/** From this hour on the next day is made ready: common sense, no source. */
const afternoonFrom = '12:00';
const quarterOfHour = 900_000;

export function ToDo({ today, isRunning }: { readonly today: string; readonly isRunning: boolean }) {
  const idle = useIdle();
  const isAfternoon = wallTimeOf(useNow(quarterOfHour), deviceZone()).time >= afternoonFrom;
  return (
    <Lines>
      {idle && !isRunning ? (
        <Counted today={today} isAfternoon={isAfternoon} />
      ) : (
        <>
          <Line to="/todo">{words.action}</Line>
          {isAfternoon && <Line to="/tomorrow">{season.quietTomorrow}</Line>}
        </>
      )}
      <Line to="/season">{season.quiet}</Line>
      <Line to="/inspector">{en.more.inspector}</Line>
    </Lines>
  );
}

function Counted({ today, isAfternoon }: { readonly today: string; readonly isAfternoon: boolean }) {
  const found = useFoundInBook(findDutiesInSteps, today, true);
  const open = found?.found.duties.filter(({ done }) => done === null);
  const [first] = open ?? [];
  const isReady = [...(found?.book.dayPlans.values() ?? [])].some(({ workOn }) => workOn >= today);
  return (
    <>
      {found === undefined || open === undefined || first === undefined ? (
        <Line to="/todo">{open === undefined ? words.action : words.nothing}</Line>
      ) : (
        <Line to="/todo">{sentenceOf(first, open.length, found.book, today)}</Line>
      )}
      {(isAfternoon || isReady) && <Line to="/tomorrow">{season.quietTomorrow}</Line>}
    </>
  );
}

/** The sentence of a duty begins with a capital; inside another one it does not. */
const lowered = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;

function sentenceOf(duty: Duty, count: number, book: Book, today: string): string {
  const what = lowered(whatToDo(duty, dutyNames(book, 'names')));
  if (duty.overdue && duty.dueOn !== null) return words.overdue(count, what, dayInList(duty.dueOn, today));
  return words.line(count, what, whenText(duty, today));
}
