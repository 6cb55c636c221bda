/** Duties of the site and towards its people, each with the day it was done and where it lies. */
import { dutyNames } from '#findings/duties/list/calendar.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import type { InspectorView } from '#findings/duties/list/inspector.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { whatToDo } from '#words/duties.ts';
import { en as words } from '#words/inspector.ts';
import { formatDay } from '#words/quantity.ts';
import { dayInList, en as todo, whenText } from '#words/todo.ts';

export interface ProgrammeProps {
  readonly view: InspectorView;
  readonly book: Book;
  /** As they stand on the list: what a sentence counts in days is taken from there. */
  readonly duties: readonly Duty[];
  readonly today: string;
}

/** Of a duty towards people only what its sentence counts: nothing that another site might have given. */
const counted = (duty: Duty, duties: readonly Duty[]): Duty => {
  const { workingDaysCount, askedOn } = duties.find(({ id }) => id === duty.id)?.params ?? {};
  const known = Object.entries({ workingDaysCount, askedOn }).filter(([, value]) => value !== undefined);
  return { ...duty, params: { ...duty.params, ...(Object.fromEntries(known) as Duty['params']) } };
};

export function Programme({ view, book, duties, today }: ProgrammeProps) {
  // Named are only those who worked here: the duties that the view hands out name nobody else, nor who asked for records.
  const names = { ...dutyNames(book, 'names'), hidesNames: true };
  const line = (duty: Duty) => (
    <Line key={duty.id} detail={howDone(duty, today)}>
      {whatToDo(duty, names)}
    </Line>
  );
  return (
    <>
      <Lines heading={words.programme} whenEmpty={words.programmeNone}>
        {view.programme.filter((duty) => !standsAbove(duty)).map(line)}
      </Lines>
      {view.ofPeople.length > 0 && (
        <Lines heading={words.ofPeople}>{view.ofPeople.map((duty) => line(counted(duty, duties)))}</Lines>
      )}
    </>
  );
}

/** Notices and determinations have lines of their own on this page. */
const standsAbove = ({ fulfilledBy }: Duty): boolean => fulfilledBy === 'notice' || fulfilledBy === 'determination';

/** A date that lies ahead says enough; what was due, or lasts, says that nothing is noted. */
function openText(duty: Duty, today: string): string {
  const { dueOn, overdue, fulfilledBy } = duty;
  if (overdue && dueOn !== null) return words.notDone(todo.overdueSince(dayInList(dueOn, today)));
  const when = whenText(duty, today);
  return fulfilledBy === 'measurement' || (dueOn !== null && dueOn > today) ? when : words.notDone(when);
}

const howDone = (duty: Duty, today: string): string => {
  const { done } = duty;
  return done === null
    ? openText(duty, today)
    : [words.doneOn(formatDay(done.on)), done.whereItLies === null ? null : words.lies(done.whereItLies)]
        .filter((part) => part !== null)
        .join(', ');
};
