/** One thing to do: what, by when, for whom, under which paragraph, because of what, and where it is done or noted as done. */

import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import { hrefOf } from '#parts/href.ts';
import type { Book } from '#records/book.ts';
import { isCitable } from '#reference/source.ts';
import { anothersDecision, presumedNote } from '#words/duties.ts';
import { formatDay } from '#words/quantity.ts';
import { dayInList, whenText, en as words } from '#words/todo.ts';
import { becauseOf, dutyPath, fulfilledAt } from './dutyPaths.ts';
import styles from './todo.module.css';
import { becauseOfWhat, whatToDo } from './whatToDo.ts';

export interface DutyLineProps {
  readonly duty: Duty;
  readonly duties: DutiesOfBook;
  readonly book: Book;
  /** Under a heading that says by when already. */
  readonly isSaidAbove?: boolean;
}

/** Late: what mends it, or that it was done late. null: it is not late. */
export function lateText({ late, done, when, fulfilledBy }: Duty): string | null {
  if (!late) return null;
  if (done !== null) return words.lateDone;
  if (when === 'beforeOrOnFirstDayAgain') return words.lateAgain;
  return fulfilledBy === 'notice' ? words.lateNotice : words.late;
}

/** Under which paragraph: only what was read is cited. */
export const paragraphOf = ({ source, paragraph }: Duty): string =>
  isCitable(source) ? words.under(paragraph, source.title) : words.notCited;

/** Why, under which paragraph, whose decision: read in one go. Then what is told only of some. */
function detailsOf(duty: Duty, { duties, book }: Pick<DutyLineProps, 'duties' | 'book'>): readonly string[] {
  const { done, laterReadingOn, overdue } = duty;
  const [note, late] = [presumedNote(duty), overdue ? null : lateText(duty)];
  const why = [
    becauseOfWhat(duty, book),
    words.sentence(paragraphOf(duty)),
    note,
    done === null ? anothersDecision(duty) : null,
  ];
  return [
    why.filter((part) => part !== null).join(' '),
    ...(done === null ? [] : [doneOf(done, book).join('. ')]),
    ...(laterReadingOn === null || done !== null ? [] : [words.laterReading(dayInList(laterReadingOn, duties.today))]),
    ...(late === null ? [] : [late]),
  ];
}

const doneOf = (done: NonNullable<Duty['done']>, book: Book): readonly string[] => [
  words.doneOn(formatDay(done.on), book.people.get(done.byId ?? '')?.name ?? null),
  done.whereItLies === null ? words.noPlace : words.whereItLies(done.whereItLies),
];

export function DutyLine(props: DutyLineProps) {
  const { duty, duties, book, isSaidAbove } = props;
  const what = whatToDo(duty, book);
  const because = becauseOf(duty, duties, book);
  const fulfil = fulfilledAt(duty);
  const own = dutyPath(duty);
  const when =
    duty.overdue && duty.done === null && duty.dueOn !== null
      ? words.overdueSince(dayInList(duty.dueOn, duties.today))
      : whenText(duty, duties.today);
  return (
    <li className={styles.item}>
      <p className={styles.sentence}>{isSaidAbove ? what : words.line(what, when)}</p>
      {detailsOf(duty, props).map((text) => (
        <p key={text} className={styles.detail}>
          {text}
        </p>
      ))}
      <div className={styles.ways}>
        {because !== null && <Way to={because.to} text={because.text} />}
        {duty.done === null && fulfil.to !== own && <Way to={fulfil.to} text={fulfil.text} />}
        <Way to={own} text={duty.done === null && fulfil.to === own ? fulfil.text : words.open} about={what} />
      </div>
    </li>
  );
}

/** `about` says to those who listen what a short link is about. */
function Way({ to, text, about }: { readonly to: string; readonly text: string; readonly about?: string }) {
  return (
    <a className={styles.way} href={hrefOf(to)} aria-label={about === undefined ? undefined : `${text}: ${about}`}>
      {text}
    </a>
  );
}
