/** The five resemblance terms of 29 CFR 1926.62(d)(3)(iii), filled from the conditions of a day and compared. */
import type { ShiftRecord } from '#records/book.ts';
import type { ResemblanceTerm } from './taskGroup.ts';

/** Each term as one text; null where the conditions of the day do not tell it. */
export type TermsOfDay = Readonly<Record<ResemblanceTerm, string | null>>;
export type TermAnswers = Readonly<Record<ResemblanceTerm, 'alike' | 'unlike' | 'notKnown'>>;

export function termsOn(_conditions: ShiftRecord['conditions'], _taskIds: readonly string[]): TermsOfDay {
  throw new Error('not written yet');
}

export function compareTerms(_a: TermsOfDay, _b: TermsOfDay): TermAnswers {
  throw new Error('not written yet');
}
