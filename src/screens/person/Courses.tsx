/** How often this worker is measured again at each kind of task, the next date, the run so far, and how it came to this. */
import type { Course } from '#findings/duties/course/course.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { en } from '#words/person.ts';
import { formatDay } from '#words/quantity.ts';
import { coursesOfPerson, groupText } from './people.ts';
import styles from './person.module.css';

const words = en.courses;
const day = (on: string): string => formatDay(on, 'en', 'weekday');

export interface OfPersonProps {
  readonly personId: string;
  readonly duties: DutiesOfBook;
  readonly book: Book;
}

function dueText({ due, dueOn, overdue }: Course): string {
  if (due === 'byDate' && dueOn !== null) return overdue ? words.due.overdue(day(dueOn)) : words.due.byDate(day(dueOn));
  return due === 'beforeNextTime'
    ? words.due.beforeNextTime
    : due === 'now'
      ? words.due.now(dueOn === null ? null : day(dueOn))
      : '';
}

const stands = (course: Course): string =>
  course.schedule === 'none' && course.due === 'now'
    ? words.noneInDoubt
    : [words.schedule[course.schedule], dueText(course)].filter((part) => part !== '').join('; ');

function beside({ run, changeOwed }: Course): string | undefined {
  const parts = [
    ...(changeOwed === null ? [] : [words.change(day(changeOwed.on))]),
    ...(run === null ? [] : [words.run(run.count, run.of, run.towards)]),
    ...(run?.nextFromOn ? [words.runFrom(day(run.nextFromOn))] : []),
  ];
  return parts.length === 0 ? undefined : parts.join('; ');
}

export function Courses({ personId, duties, book }: OfPersonProps) {
  const courses = coursesOfPerson(personId, duties);
  return (
    <>
      <Lines heading={words.heading} whenEmpty={words.none}>
        {courses.map((course) => (
          <Line key={course.groupKey} detail={beside(course)}>
            {`${groupText(course.groupKey, book)}: ${stands(course)}`}
          </Line>
        ))}
      </Lines>
      {courses.some(({ steps }) => steps.length > 0) && (
        <details>
          <summary className={styles.summary}>{words.steps}</summary>
          {courses.map(({ groupKey, steps }) => (
            <Lines key={groupKey} heading={groupText(groupKey, book)}>
              {steps.map(({ on, why, to, measurementIds, paragraph }) => (
                <Line key={`${on} ${why} ${to} ${measurementIds.join()}`} detail={paragraph}>
                  {words.step(day(on), words.why[why], words.schedule[to])}
                </Line>
              ))}
            </Lines>
          ))}
        </details>
      )}
    </>
  );
}
