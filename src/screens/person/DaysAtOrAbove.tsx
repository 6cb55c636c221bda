/** Days at or above the action level over twelve months: measured, stood for by another measurement, presumed, each told apart. */
import type { ExposureDay } from '#findings/duties/exposure/exposureDays.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { en } from '#words/person.ts';
import { formatDay } from '#words/quantity.ts';
import type { OfPersonProps } from './Courses.tsx';
import styles from './person.module.css';

const words = en.days;

export function DaysAtOrAbove({ personId, duties }: OfPersonProps) {
  const days = duties.exposureDays.get(personId);
  if (days === undefined || days.days.length === 0)
    return (
      <Lines heading={words.heading} whenEmpty={words.none}>
        {[]}
      </Lines>
    );
  const { running, most, moreThanThirty } = days;
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      <p>
        <strong>{words.running(running.count, formatDay(running.fromOn), formatDay(running.toOn))}</strong>
      </p>
      {running.presumedCount > 0 && <p>{words.presumed(running.presumedCount)}</p>}
      {running.notKnownCount > 0 && <p>{words.notKnown(running.notKnownCount)}</p>}
      {most !== null && <p>{words.most(most.count, formatDay(most.fromOn), formatDay(most.toOn))}</p>}
      {moreThanThirty && <p>{words.more}</p>}
      <details>
        <summary className={styles.summary}>{words.show(days.days.length)}</summary>
        <Lines>
          {days.days.toReversed().map((day) => (
            <Line key={day.on} to={linkOf(day)}>
              {words.line(formatDay(day.on, 'en', 'weekday'), words.atOrAbove[day.atOrAbove], words.by[day.by])}
            </Line>
          ))}
        </Lines>
      </details>
    </section>
  );
}

/** A work day of ours has a page; its id tells it from what was reported. */
const linkOf = ({ measurementId }: ExposureDay): string | undefined =>
  measurementId?.includes('.') ? `/day/${measurementId}` : undefined;
