/** Beside the answer: what ends it, whose rule it is, what this state has of its own, and what this page does not promise. */
import type { FirstDay, TaskLimit } from '#findings/duties/protecting/firstDay.ts';
import { formatDay, formatInWorking } from '#words/quantity.ts';
import { en } from '#words/wear.ts';
import styles from './wear.module.css';

const words = en.answer;

interface GovernsProps {
  readonly first: FirstDay;
  /** The state's name. */
  readonly state: string;
}

export function Governs({ first, state }: GovernsProps) {
  const { endsAt, limits, taskLimits, levels } = first;
  return (
    <>
      <section className={styles.beside}>
        <h2>{words.ends}</h2>
        <p>{endsAt === null ? words.endsNone : words.endsText(formatInWorking(endsAt.levelUgPerM3, 'µg/m³'))}</p>
        {endsAt !== null && levels.ofState && <p className={styles.source}>{words.endsOwn}</p>}
      </section>
      <section className={styles.beside}>
        <h2>{words.governs}</h2>
        <p>{en.governs[limits.governs](state)}</p>
        <p className={styles.source}>{words.textHeld(limits.set.document, limits.set.textHeld)}</p>
      </section>
      {taskLimits.length > 0 && (
        <section className={styles.beside}>
          <h2>{words.taskLimits}</h2>
          {taskLimits.map((limit) => (
            <p key={limit.key}>{sentenceOf(limit)}</p>
          ))}
        </section>
      )}
      <section className={styles.beside}>
        <h2>{words.cautions}</h2>
        <ul className={styles.plain}>
          {words.cautionLines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
    </>
  );
}

function sentenceOf({ key, value, unit, untilOn, thenValue }: TaskLimit): string {
  const until = untilOn === null ? '' : words.until(formatDay(untilOn));
  const then = thenValue === null ? '' : words.afterwards(formatInWorking(thenValue, unit));
  return words.taskLimit[key]?.(formatInWorking(value, unit), until, then) ?? '';
}
