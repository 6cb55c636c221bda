/** What the command line says. English only. */
import type { Governs } from '#reference/limits.ts';

const governs: Readonly<Record<Governs, (document: string, stateCode: string) => string>> = {
  federal: (document) => `Held against ${document}.`,
  federalForPrivateFirms: (document, stateCode) =>
    `Held against ${document}. The plan of ${stateCode} is for state and local government workers.`,
  statePlan: (document, stateCode) =>
    `${stateCode} runs its own plan and its rule is not held here. The figures are held against ${document}; no duties follow from them here.`,
  statePlanPartlyHeld: (document, stateCode) =>
    `The limits of ${stateCode} are held (${document}), the rest of its rule is not: figures only.`,
  unknownState: (document) =>
    `The state is not known. The figures are held against ${document}; no duties follow from them here.`,
  beforeHeldText: (document) => `The day lies before the text of ${document} that is held: figures only.`,
};

export const en = {
  usage: 'Use: npm run -s assess -- day.json [--json]   (- reads from standard input)',
  refused: (path: string, reason: string) => `${path === '' ? '/' : path}: ${reason}`,
  refusedHeading: (file: string) => `Refused: ${file}. Nothing was assessed.`,
  cannotRead: 'the file cannot be read',
  notJson: (why: string) => `this is not JSON: ${why}`,
  bug: 'This is a mistake in Fullshift, not in the file:',
  title: (worker: string, workOn: string) => `${worker}, ${workOn}`,
  standsOn:
    'Figures of one worker on one day. The current text of the rule, state and local rules, and whoever is licensed or certified for this decide.',
  editions: (rules: string, formulas: string) => `Rules ${rules}. Formulas ${formulas}.`,
  governs: (key: Governs, document: string, stateCode: string) => governs[key](document, stateCode),
  everyMinute: 'Every minute',
  segment: (from: string, to: string, minutes: string, what: string) => `${from} to ${to} (UTC)  ${minutes}  ${what}`,
  as: {
    sampled: (number: string) => `sampled, ${number}`,
    sameAs: (number: string, why: string) => `the same as ${number}: ${why}`,
    away: (why: string) => `away from the lead area: ${why}`,
    unknown: 'not known',
  },
  awaited: 'result not in',
  sample: (number: string, quality: string) => `Sample ${number}: ${quality}`,
  quality: { good: 'good', doubtful: 'doubtful', void: 'void', open: 'not finished' },
  noFigure: 'No figure.',
  twa8: '8-hour average',
  protectiveTwa8: '8-hour average from the protective flows (this one judges)',
  shiftAverage: 'Average over the hours worked',
  allowable: 'What that average may reach in a shift of this length',
  standing: 'Standing',
  unknownWouldReach: (average: string, limit: string) =>
    `to reach ${limit}, the minutes without a figure would have to average ${average}`,
  protectiveJudges: 'the figure from the protective flow judges here',
  keeps: 'What keeps it from being settled',
  also: 'Also to know',
  own: 'our own derivation',
  practice: 'common practice, no source read',
  from: (source: string) => `from ${source}`,
  writtenAt: (paths: string) => `written at ${paths}`,
} as const;
