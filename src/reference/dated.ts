/** A value that changes by date: one period after the other, without a gap and without an overlap. */
import { z } from 'zod';
import { addDays } from '#core/calendar.ts';
import { day, type ReadSource, source } from './source.ts';

/** First and last day on which something holds; `to` null = until further notice. */
export const period = z.strictObject({ from: day, to: day.nullable() });
export interface Period {
  readonly from: string;
  readonly to: string | null;
}

export interface DatedValue extends Period {
  readonly value: number;
  readonly source: ReadSource;
}

/** What is wrong with the dates of a series, or null. */
export function datesProblem(periods: readonly Period[]): string | null {
  if (periods.length === 0) return 'no period at all';
  for (const [index, { from, to }] of periods.entries()) {
    if (to !== null && to < from) return `a period ends on ${to}, before it begins on ${from}`;
    const next = periods[index + 1];
    if (!next) continue;
    if (to === null || to >= next.from) return `an overlap at ${next.from}`;
    if (addDays(to, 1) !== next.from) return `a gap between ${to} and ${next.from}`;
  }
  return null;
}

export const datedValues = z
  .array(z.strictObject({ ...period.shape, value: z.number(), source }))
  .superRefine((values, context) => {
    const problem = datesProblem(values);
    if (problem) context.addIssue({ code: 'custom', message: problem });
  });

/** Does the period hold on that day? */
export const holdsOn = (on: string, { from, to }: Period): boolean => from <= on && (to === null || on <= to);

/** The value on a day; before the first period, the first one. Callers that care ask `holdsOn` of the whole set. */
export function valueOn(on: string, values: readonly DatedValue[]): DatedValue {
  const value =
    values.find((one) => holdsOn(on, one)) ?? (values[0] && on < values[0].from ? values[0] : values.at(-1));
  if (!value) throw new Error('a series without a value');
  return value;
}
