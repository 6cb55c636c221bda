/** What the command line says. English only. */
import type { Governs } from '#reference/limits.ts';
import { refusals } from './dayFile.ts';

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

const names: Readonly<Record<string, string>> = {
  pel: 'permissible exposure limit',
  actionLevel: 'action level',
};

export const en = {
  usage: 'Use: npm run -s assess -- day.json [more.json] [--json] [--today=2026-11-25]   (- reads from standard input)',
  refused: (path: string, reason: string) => `${path === '' ? '/' : path}: ${reason}`,
  refusedHeading: (file: string) => `Refused: ${file}. Nothing of it was assessed.`,
  bug: 'This is a mistake in Fullshift, not in the file:',
  refusals,
  fileHeading: (file: string) => `File ${file}`,
  title: (worker: string, workOn: string, site: string) => `${worker}, ${workOn}, ${site}`,
  standsOn: [
    'Each figure is of one worker on one day; it stands for nobody else by itself.',
    'The current text of the rule, state plans, local codes, and whoever is licensed or certified for this come first.',
  ],
  editions: (rules: string, formulas: string) => `Rules ${rules}. Formulas ${formulas}.`,
  governs: (key: Governs, document: string, stateCode: string) => governs[key](document, stateCode),
  textHeld: (text: string) => `Text held: ${text}.`,
  everyMinute: 'Every minute',
  noMinutes: 'No minute is accounted for: neither a sample nor hours of work.',
  segment: (from: string, to: string, minutes: string, what: string) => `${from} to ${to}  ${minutes}  ${what}`,
  as: {
    sampled: (number: string) => `sampled, ${number}`,
    sameAs: (number: string, why: string) => `the same as ${number}: ${why}`,
    away: (why: string) => `away from the lead area: ${why}`,
    unknown: 'not known',
  },
  awaited: 'result not in',
  sample: (number: string, quality: string) => `Sample ${number}: ${quality}`,
  ran: (from: string, to: string, tasks: string) => `On the worker ${from} to ${to}. ${tasks}.`,
  runs: (from: string, tasks: string) => `On the worker since ${from}, not stopped. ${tasks}.`,
  quality: { good: 'good', doubtful: 'doubtful', void: 'void', open: 'not finished' },
  noFigure: 'No figure.',
  share: 'What it adds to the 8-hour average, whatever its minutes',
  twa8: '8-hour average',
  protectiveTwa8: '8-hour average from the protective flows (this one judges)',
  shiftAverage: 'Average over the hours worked',
  allowable: 'What that average may reach in a shift of this length',
  standing: 'Standing',
  keeps: 'What keeps it from being settled',
  also: 'Also to know',
  times: (sentence: string, count: number) => (count > 1 ? `${sentence} (${count} times)` : sentence),
  own: 'our own derivation',
  practice: 'common practice, no source read',
  from: (source: string) => `from ${source}`,
  writtenAt: (paths: string) => `written at ${paths}`,
  name: (name: string): string | undefined => names[name],
} as const;
