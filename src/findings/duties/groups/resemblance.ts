/**
 * The five resemblance terms of 29 CFR 1926.62(d)(3)(iii), filled from the conditions of a day and compared. What the conditions do not
 * tell is not known; which condition speaks for which term is our own reading.
 */
import type { ShiftRecord } from '#records/book.ts';
import { type ResemblanceTerm, resemblanceTerms } from './taskGroup.ts';

/** What the conditions tell of a term, by name of the condition; null where nobody noted it. */
export type TermsOfDay = Readonly<Record<ResemblanceTerm, Readonly<Record<string, string | null>>>>;
export type TermAnswer = 'alike' | 'unlike' | 'notKnown';
export type TermAnswers = Readonly<Record<ResemblanceTerm, TermAnswer>>;

/** Two days of *other* tools, or of paint that nobody knows, are not shown to be alike. */
const told = (value: string | null | undefined, unless: string): string | null =>
  value === null || value === undefined || value === unless ? null : value;

export function termsOn(conditions: ShiftRecord['conditions'], taskIds: readonly string[]): TermsOfDay {
  const { dustCollection = null, containment = null, ventilation = null, method = null } = conditions ?? {};
  return {
    processes: { tasks: [...new Set(taskIds)].sort().join('+'), tool: told(conditions?.tool, 'other') },
    material: { paintLead: told(conditions?.paintLead, 'notKnown') },
    controls: { dustCollection, containment, ventilation },
    practices: { method },
    environment: { weather: conditions?.weather ?? null, area: conditions?.area ?? null },
  };
}

/** Paint that was tested and paint that was presumed may be the same paint: that one differs is no answer. */
function compareTerm(term: ResemblanceTerm, a: TermsOfDay, b: TermsOfDay): TermAnswer {
  const names = Object.keys(a[term]);
  const pairs = names.map((name) => [a[term][name] ?? null, b[term][name] ?? null] as const);
  if (pairs.some(([x, y]) => x !== null && y !== null && x !== y)) return term === 'material' ? 'notKnown' : 'unlike';
  return pairs.some(([x, y]) => x === null || y === null) ? 'notKnown' : 'alike';
}

export const compareTerms = (a: TermsOfDay, b: TermsOfDay): TermAnswers =>
  Object.fromEntries(resemblanceTerms.map((term) => [term, compareTerm(term, a, b)])) as TermAnswers;

export const allAlike = (answers: TermAnswers): boolean => resemblanceTerms.every((term) => answers[term] === 'alike');
