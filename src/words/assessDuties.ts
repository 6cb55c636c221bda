/** What the command line says of duties. English only. */
import type { Governs } from '#reference/limits.ts';

const governs: Readonly<Record<Governs, (site: string, stateCode: string) => string>> = {
  federal: (site) => `${site}: the rule that governs is not held complete here.`,
  federalForPrivateFirms: (site) => `${site}: the rule that governs is not held complete here.`,
  statePlan: (site, stateCode) =>
    `${site}: ${stateCode} runs its own plan, and its rule is not held here. What it asks is for the state to say.`,
  statePlanPartlyHeld: (site, stateCode) =>
    `${site}: the limits of ${stateCode} are held, the rest of its rule is not. What it asks is for the state to say.`,
  unknownState: (site) => `${site}: the state is not known, so nobody can say whose rule governs.`,
  beforeHeldText: (site) => `${site}: its days lie before the text of the rule that is held.`,
};

export const en = {
  heading: (day: string) => `What follows from these days, as of ${day}`,
  notInFile: 'What was already done, told or written down is not in such a file: it is listed as still to do.',
  none: 'Nothing follows.',
  noList: 'No list of duties',
  governs: (key: Governs, site: string, stateCode: string) => governs[key](site, stateCode),
  forWhom: (workers: string) => `For ${workers}.`,
  cited: (title: string, paragraph: string) => `${title} ${paragraph}.`,
  fulfils: (what: string) => `Fulfilled by: ${what}`,
  lies: (question: string) => `Note: ${question}`,
  id: (id: string) => `Id: ${id}`,
  badToday: 'Wanted: --today=2026-11-25, a day of the calendar.',
} as const;
