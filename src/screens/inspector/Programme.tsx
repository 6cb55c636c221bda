/** Duties of the site and towards its people, each with the day it was done and where it lies. */
import { dutyNames } from '#findings/duties/calendar.ts';
import type { Duty } from '#findings/duties/duty.ts';
import type { InspectorView } from '#findings/duties/inspector.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { whatToDo } from '#words/duties.ts';
import { en as words } from '#words/inspector.ts';
import { formatDay } from '#words/quantity.ts';

export interface ProgrammeProps {
  readonly view: InspectorView;
  readonly book: Book;
  /** As they stand on the list: what a sentence counts in days is taken from there. */
  readonly duties: readonly Duty[];
}

/** Of a duty towards people only what its sentence counts: nothing that another site might have given. */
const counted = (duty: Duty, duties: readonly Duty[]): Duty => {
  const { workingDaysCount, askedOn } = duties.find(({ id }) => id === duty.id)?.params ?? {};
  const known = Object.entries({ workingDaysCount, askedOn }).filter(([, value]) => value !== undefined);
  return { ...duty, params: { ...duty.params, ...(Object.fromEntries(known) as Duty['params']) } };
};

export function Programme({ view, book, duties }: ProgrammeProps) {
  // Named are only those who worked here: the duties that the view hands out name nobody else, nor who asked for records.
  const names = { ...dutyNames(book, 'names'), hidesNames: true };
  const line = (duty: Duty) => (
    <Line key={duty.id} detail={howDone(duty)}>
      {whatToDo(duty, names)}
    </Line>
  );
  return (
    <>
      <Lines heading={words.programme} whenEmpty={words.programmeNone}>
        {view.programme.map(line)}
      </Lines>
      {view.ofPeople.length > 0 && (
        <Lines heading={words.ofPeople}>{view.ofPeople.map((duty) => line(counted(duty, duties)))}</Lines>
      )}
    </>
  );
}

const howDone = ({ done }: Duty): string =>
  done === null
    ? words.notDone
    : [words.doneOn(formatDay(done.on)), done.whereItLies === null ? null : words.lies(done.whereItLies)]
        .filter((part) => part !== null)
        .join(', ');
