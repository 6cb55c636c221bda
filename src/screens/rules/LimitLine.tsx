/** One limit, large enough to read across a table: value, sign, averaging time, and from when to when. */
import { holdsOn } from '#reference/dated.ts';
import type { LimitSet } from '#reference/limits.ts';
import { en as words } from '#words/limitsBeside.ts';
import { formatInWorking } from '#words/quantity.ts';
import styles from './rules.module.css';

interface LimitLineProps {
  readonly which: 'actionLevel' | 'pel';
  /** Of a set that is shown beside: it calls its limit what it likes. */
  readonly beside?: boolean;
  readonly limit: { readonly value: number; readonly from: string | null; readonly to: string | null };
}

export function LimitLine({ which, limit, beside = false }: LimitLineProps) {
  const say = beside ? words.besideLimit : words.limit;
  const dates = [limit.from && words.since(limit.from), limit.to && words.until(limit.to)].filter(Boolean);
  return (
    <p className={styles.limit}>
      <strong>{say(which, limit.value)}</strong>{' '}
      <span className={styles.quiet}>{[words.eightHours, words.sign[which], ...dates].join(', ')}</span>
    </p>
  );
}

type TaskLimits = LimitSet['exceptions'][number] | LimitSet['workLimits'][number];

/** A limit, or the hours, that one task has, with its last day and what follows. */
export function OfTask({ taskLimit, on }: { readonly taskLimit: TaskLimits; readonly on: string }) {
  const { key, unit, values } = taskLimit;
  const at = values.findIndex((one) => holdsOn(on, one));
  const [value, next] = [values[at], values[at + 1]];
  if (value === undefined) return null;
  const say = (amount: number) => (unit === 'h' ? words.hoursADay(amount) : formatInWorking(amount, unit));
  return (
    <p>
      {words.ofTaskLine(
        words.ofTask[key] ?? key,
        say(value.value),
        value.to === null ? '' : `, ${words.until(value.to)}`,
        next === undefined ? '' : `; ${say(next.value)} ${words.from(next.from)}`,
      )}
    </p>
  );
}
