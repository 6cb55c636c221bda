/** Where a value of shared/ comes from, and how it was read. Only READ and READ-2 may be shown as a citation. */
import { z } from 'zod';
import { isDay } from '#core/calendar.ts';
import { withSources } from './namedSources.ts';

export const day = z.string().refine(isDay, 'not a day of the calendar');
export const readingMark = z.enum(['READ', 'READ-2', 'DERIVED', 'MEMORY']);

/** `readOn` is null only for what nobody read: DERIVED is our own arithmetic or reading, MEMORY is recalled and unchecked. */
export const source = z
  .strictObject({
    title: z.string().min(3),
    section: z.string().min(1).exactOptional(),
    url: z.url().exactOptional(),
    edition: z.string().min(1).exactOptional(),
    readOn: day.nullable(),
    mark: readingMark,
    note: z.string().min(1).exactOptional(),
  })
  .refine((s) => (s.mark === 'READ' || s.mark === 'READ-2') === (s.readOn !== null), 'read means read on a day');
export type ReadSource = z.infer<typeof source>;

/** May this source be shown as a citation? */
export const isCitable = (from: Pick<ReadSource, 'mark'>): boolean => from.mark === 'READ' || from.mark === 'READ-2';

/** One number of shared/: never without its unit and its source. */
export const quantity = <U extends string>(unit: U) =>
  z.strictObject({ value: z.number(), unit: z.literal(unit), source });
export interface Quantity<U extends string = string> {
  readonly value: number;
  readonly unit: U;
  readonly source: ReadSource;
}

/** A low and a high end, either of which may be unstated. */
export const range = <U extends string>(unit: U) =>
  z
    .strictObject({ low: z.number().nullable(), high: z.number().nullable(), unit: z.literal(unit), source })
    .refine((r) => r.low === null || r.high === null || r.low <= r.high, 'the low end is above the high end');

/** Reads a file of shared/ through its schema, once, when it is first asked for. */
export function readOnce<T>(schema: z.ZodType<T>, file: object): () => T {
  let held: T | undefined;
  return () => {
    held ??= schema.parse(withSources(file));
    return held;
  };
}
