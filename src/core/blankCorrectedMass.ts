/** Mass of lead on the filter, less what the field blanks held. Lowers a figure, so it needs evidence at every step. */
import type { Estimate } from './estimate.ts';
import { formula, type Term, type Working } from './formula.ts';

/** Mean of the blanks taken off, never below the reporting limit R. µg. Holds for m at or above R. */
export const blankCorrectedMass = formula({
  symbol: 'm',
  name: 'blankCorrectedMass',
  unit: 'µg',
  inputs: {
    mr: { name: 'massReported', unit: 'µg' },
    B: { name: 'massOnBlank', unit: 'µg', list: true },
    R: { name: 'reportingLimit', unit: 'µg' },
  },
  expression: 'm = max(mr − Σ B / n, R)',
  source: {
    title: 'NIOSH Manual of Analytical Methods, 5100; 29 CFR 1910.1027 Appendix E',
    section: '5100 page 3; 3.12.4-3.12.6',
    mark: 'READ',
    note: 'Mean of the blanks from 5100. That subtraction stops at the reporting limit is our choice',
  },
  increasesWith: ['mr', 'R'],
  decreasesWith: ['B'],
  compute: ({ mr, B, R }) => Math.max(mr - B.reduce((sum, one) => sum + one, 0) / B.length, R),
});

/** A field blank's figure and its own reporting limit; null when the laboratory does not state it. */
export interface BlankMass {
  readonly mass: Term;
  readonly reportingLimitUg: number | null;
}

export type WhyNotSubtracted =
  | 'alreadyCorrected'
  | 'notStatedWhetherCorrected'
  | 'noBlanks'
  | 'noReportingLimit'
  | 'massNotANumber'
  | 'massBelowReportingLimit'
  | 'blankNotANumber'
  | 'blankBelowReportingLimit';

export type BlankCorrection =
  | { readonly kind: 'subtracted'; readonly mass: Working }
  | { readonly kind: 'asReported'; readonly mass: Term; readonly why: WhyNotSubtracted };

const exactUg = (estimate: Estimate): number | null => (estimate.kind === 'exact' ? estimate.value : null);

/**
 * The mass that the concentration stands on. Blanks come off only if the laboratory says that it did not correct, and every blank
 * is a number at or above its reporting limit; never twice; never below the reporting limit.
 */
export function massLessBlanks(
  reported: Term,
  reportingLimit: Term | null,
  blanks: readonly BlankMass[],
  laboratoryCorrected: 'yes' | 'no' | 'notStated',
): BlankCorrection {
  const why = whyNot(reported, reportingLimit, blanks, laboratoryCorrected);
  if (why || !reportingLimit) return { kind: 'asReported', mass: reported, why: why ?? 'noReportingLimit' };
  const B = blanks.map((blank) => blank.mass);
  return { kind: 'subtracted', mass: blankCorrectedMass.of({ mr: reported, B, R: reportingLimit }) };
}

function whyNot(
  reported: Term,
  reportingLimit: Term | null,
  blanks: readonly BlankMass[],
  laboratoryCorrected: 'yes' | 'no' | 'notStated',
): WhyNotSubtracted | null {
  const twice = reported.kind === 'working' && reported.formula.name === blankCorrectedMass.name;
  if (twice || laboratoryCorrected === 'yes') return 'alreadyCorrected';
  if (laboratoryCorrected === 'notStated') return 'notStatedWhetherCorrected';
  if (blanks.length === 0) return 'noBlanks';
  const mass = exactUg(reported.estimate);
  if (mass === null) return 'massNotANumber';
  const limit = reportingLimit && exactUg(reportingLimit.estimate);
  if (limit === null) return 'noReportingLimit';
  if (mass < limit) return 'massBelowReportingLimit';
  return blanks.map(blankProblem).find((problem) => problem !== null) ?? null;
}

function blankProblem({ mass, reportingLimitUg }: BlankMass): WhyNotSubtracted | null {
  const value = exactUg(mass.estimate);
  if (value === null) return 'blankNotANumber';
  if (reportingLimitUg === null) return 'noReportingLimit';
  return value < reportingLimitUg ? 'blankBelowReportingLimit' : null;
}
