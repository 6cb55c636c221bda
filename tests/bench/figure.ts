/** One measured figure, and how it is printed. */
import { loadavg } from 'node:os';

export interface Figure {
  readonly name: string;
  readonly unit: string;
  readonly values: readonly number[];
  readonly goal: number;
  /** Whether more is better. */
  readonly atLeast?: boolean;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const [low = Number.NaN, high = Number.NaN] = [sorted[sorted.length % 2 === 0 ? middle - 1 : middle], sorted[middle]];
  return (low + high) / 2;
}

const digits = (value: number): string => (value < 100 ? value.toPrecision(3) : Math.round(value).toString());

/** The load stands in each line: a busy machine makes any figure worse. */
export function print({ name, unit, values, goal, atLeast = false }: Figure): void {
  const mid = median(values);
  const met = atLeast ? mid >= goal : mid <= goal;
  const range =
    values.length > 1
      ? ` (${digits(Math.min(...values))} to ${digits(Math.max(...values))}, ${values.length} times)`
      : '';
  const load = loadavg()[0]?.toFixed(1);
  console.info(
    `${met ? 'met   ' : 'MISSED'} ${name}: ${digits(mid)} ${unit}${range}; goal ${atLeast ? 'at least' : 'at most'} ${goal}; load ${load}`,
  );
}
