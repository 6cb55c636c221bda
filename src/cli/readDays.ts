/** From the text of a day file to its values, or every reason why not. */
import { en as words } from '#words/assess.ts';
import { type DayFile, dayFile } from './dayFile.ts';
import { referenceProblems } from './dayReferences.ts';
import { timeProblems } from './dayTimes.ts';
import { jsonProblem } from './jsonText.ts';
import { type Refusal, refusalsOf } from './refusal.ts';

export type ReadDays =
  | { readonly kind: 'days'; readonly file: DayFile }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

const refused = (refusals: readonly Refusal[]): ReadDays => ({ kind: 'refused', refusals });

export function readDays(text: string): ReadDays {
  // a byte order mark, which some editors put in front, is no part of the text
  const plain = text.replace(/^\uFEFF/, '');
  const problem = jsonProblem(plain);
  if (problem) {
    const { kind, line, column, found } = problem;
    return refused([{ path: '', reason: words.refusals[kind](line, column, found) }]);
  }
  const json: unknown = JSON.parse(plain);
  const parsed = dayFile.safeParse(json);
  if (!parsed.success) return refused(refusalsOf(parsed.error, json));
  const names = referenceProblems(parsed.data);
  const refusals = names.length > 0 ? names : timeProblems(parsed.data);
  return refusals.length > 0 ? refused(refusals) : { kind: 'days', file: parsed.data };
}
