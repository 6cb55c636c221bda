/** Conditions of the day: what a later job is compared with. */
import type { FactBody } from '#records/fact.ts';

type Conditions = FactBody<'conditionsNoted.v1'>;
export type ConditionKey =
  | 'tool'
  | 'method'
  | 'dustCollection'
  | 'containment'
  | 'ventilation'
  | 'weather'
  | 'paintLead'
  | 'area';
type Options = { readonly [K in ConditionKey]: Readonly<Record<Conditions[K], string>> };

export const conditionKeys: readonly ConditionKey[] = [
  'tool',
  'method',
  'dustCollection',
  'containment',
  'ventilation',
  'weather',
  'paintLead',
  'area',
];

const options: Options = {
  tool: {
    hand: 'Hand tools',
    power: 'Power tools',
    heat: 'Heat gun',
    blast: 'Blasting',
    torch: 'Torch',
    other: 'Other',
  },
  method: { wet: 'Wet', dry: 'Dry', mixed: 'Both' },
  dustCollection: { none: 'None', shroud: 'Shroud', shroudHepa: 'Shroud and HEPA' },
  containment: { none: 'None', partial: 'Partly closed', full: 'Closed' },
  ventilation: { still: 'Still air', natural: 'Open to wind', exhaust: 'Exhaust fan' },
  weather: { indoors: 'Indoors', dryCalm: 'Dry, calm', dryWindy: 'Dry, windy', damp: 'Damp', rain: 'Rain' },
  paintLead: { tested: 'Tested', presumed: 'Presumed', notKnown: 'Not known' },
  area: { small: 'Less than a room', room: 'About a room', large: 'More' },
};

export const en = {
  heading: 'Conditions of the day',
  hint: 'Most of the day, as it was. A later job is compared by these.',
  labels: {
    tool: 'Tool',
    method: 'Wet or dry',
    dustCollection: 'Dust collected at the tool',
    containment: 'Containment',
    ventilation: 'Air in the work area',
    weather: 'Weather',
    paintLead: 'Lead in the paint',
    area: 'How much was worked on',
  } satisfies Record<ConditionKey, string>,
  options,
  same: (day: string) => `The same as on ${day}`,
  missing: (label: string) => `Choose: ${label}`,
  remark: 'Anything else',
  save: 'Save the conditions',
  saveAgain: 'Save them anew',
  noShift: 'This shift is not in the book on this device.',
};

export type ConditionsWords = typeof en;
