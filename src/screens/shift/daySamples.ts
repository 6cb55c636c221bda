/** The cassettes of one site's day, in the order in which they were prepared. */
import type { SampleRecord } from '#records/book.ts';
import type { ShiftDay } from './useShift.ts';

const ofDay = ({ book, place }: ShiftDay): SampleRecord[] =>
  [...book.samples.values()]
    .filter((sample) => sample.shiftId === place.shift.id)
    .sort((a, b) => a.preparedAt.localeCompare(b.preparedAt) || a.sampleNumber.localeCompare(b.sampleNumber));

/** Air samples that are not void. */
export const airOf = (day: ShiftDay): SampleRecord[] =>
  ofDay(day).filter(({ sampleKind, voided }) => sampleKind === 'air' && voided === null);

/** Field blanks that are not void. */
export const blanksOf = (day: ShiftDay): SampleRecord[] =>
  ofDay(day).filter(({ sampleKind, voided }) => sampleKind === 'blank' && voided === null);

export const voidOf = (day: ShiftDay): SampleRecord[] => ofDay(day).filter(({ voided }) => voided !== null);
