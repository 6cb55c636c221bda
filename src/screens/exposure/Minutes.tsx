/** Every minute of the day in one table, one row a stretch. What is unknown can be said there and then. */
import type { Segment } from '#findings/workday.ts';
import { QuietAction } from '#parts/QuietAction.tsx';
import { en as words } from '#words/exposure.ts';
import { formatEstimateNumber, formatNumber } from '#words/quantity.ts';
import type { DayOn } from './dayOn.ts';
import styles from './exposure.module.css';

export interface MinutesProps {
  readonly day: DayOn;
  readonly onSay: (segment: Segment) => void;
}

const text = words.minutes;

export function Minutes({ day, onSay }: MinutesProps) {
  const { segments } = day.finding;
  return (
    <section className={styles.everyMinute}>
      <h2>{text.heading}</h2>
      {segments.length === 0 ? (
        <p>{text.none}</p>
      ) : (
        <table className={styles.minutes}>
          <thead>
            <tr>
              <th scope="col">{text.when}</th>
              <th scope="col" className={styles.right}>
                {text.length}
              </th>
              <th scope="col">{text.what}</th>
              <th scope="col" className={styles.right}>
                {text.figure}
              </th>
            </tr>
          </thead>
          <tbody>
            {segments.map((segment) => (
              <Row key={segment.fromAt} segment={segment} day={day} onSay={onSay} />
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

function Row({ segment, day, onSay }: MinutesProps & { readonly segment: Segment }) {
  const unknown = segment.as === 'unknown';
  return (
    <>
      <tr className={unknown ? styles.unknown : undefined}>
        <td>{text.span(day.clock(segment.fromAt), day.clock(segment.toAt))}</td>
        <td className={styles.right}>{formatNumber(segment.durationMin, 'min')}</td>
        <td>
          {whatItWas(segment, day)}
          {segment.reason !== null && <span className={styles.reason}>{segment.reason}</span>}
        </td>
        <td className={styles.right}>{figureOf(segment)}</td>
      </tr>
      {unknown && (
        <tr>
          <td colSpan={4}>
            <QuietAction onClick={() => onSay(segment)}>{text.say}</QuietAction>
          </td>
        </tr>
      )}
    </>
  );
}

function whatItWas({ as, sampleId }: Segment, { samples }: DayOn): string {
  const number = samples.find(({ id }) => id === sampleId)?.sampleNumber ?? '';
  if (as === 'sampled') return text.sample(number);
  return as === 'sameAs' ? text.like(number) : text.as[as];
}

function figureOf({ as, concentration }: Segment): string {
  if (concentration !== null) return formatEstimateNumber(concentration.estimate, concentration.unit);
  return as === 'sampled' || as === 'sameAs' ? text.awaited : '';
}
