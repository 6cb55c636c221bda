/** Published worked examples, computed now and held against what was printed. */

import type { FormulaText } from '#core/formula.ts';
import { computeByName, formulary } from '#core/formulary.ts';
import { commonPractice, type PublishedExample, publishedExamples } from '#reference/examples.ts';

export interface CheckedExample {
  readonly example: PublishedExample;
  readonly formula: FormulaText;
  readonly ours: number;
  /** Ours less what was printed, in the unit of the example. */
  readonly difference: number;
  readonly within: boolean;
}

function checked(example: PublishedExample): CheckedExample {
  const formula = formulary.get(example.formula);
  if (!formula) throw new Error(`no formula named ${example.formula}`);
  const ours = computeByName(example.formula, example.inputs);
  const difference = ours - example.expected;
  return { example, formula, ours, difference, within: Math.abs(difference) <= example.tolerance };
}

export const checkedPublished = (): readonly CheckedExample[] => publishedExamples().map(checked);
/** Without a source that was read: shown apart, and said to be common practice. */
export const checkedCommon = (): readonly CheckedExample[] => commonPractice().map(checked);
