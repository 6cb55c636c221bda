/** The written initial determination, and what stands against a negative one. Read by office, inspector, consultant. */
import type { DeterminationBlockKey } from '#findings/duties/determining/determination.ts';
import type { ResemblanceTerm } from '#findings/duties/groups/taskGroup.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import { formatDay, formatInWorking } from './quantity.ts';

/** One sentence for everything that keeps a negative determination from being written, or is told beside a positive one. */
export const blockSentences: Readonly<Record<DeterminationBlockKey, string>> = {
  noMeasurement: 'There is no measurement of this task group.',
  resultOwed: 'A result, or a part of the day, is still owed.',
  minutesUnknown: 'Some minutes of the day are unknown.',
  sampleDoubtful: 'A sample is doubtful or void.',
  notProvenBelow: 'The average is not proven to lie below the action level.',
  atOrAboveActionLevel: 'The average is at or above the action level.',
  irregularDay: 'It was not a regular day.',
  notAskedWhetherRegular: 'It is not said whether it was a regular day.',
  wallDepositOpen: 'Whether the deposit on the inner wall of the cassette is in the result is open.',
  unlike: 'The work is unlike that of the earlier measurement.',
  resemblanceNotAsked: 'Whether the work closely resembles that of the earlier measurement is not answered.',
  tooOld: 'The earlier measurement is too old to be relied on.',
  notOwnData: "The earlier measurement is not the employer's own.",
  accuracyNotStated: 'The accuracy of the method is not stated.',
  notFullShift: 'The samples do not represent a full shift.',
  changeNoted: 'Something changed since the measurement.',
  changesNotAsked: 'It was not asked what has changed since the measurement.',
  takingIn: 'A file of another device is only half taken in.',
  entriesMissing: 'Entries of another device are missing here.',
  ruleNotHeld: 'The rule that governs here is not held complete.',
  highestNotMeasured: 'Those who are believed most exposed were not measured.',
  statesDiffer: 'The day was worked in two states with different limits.',
};

const terms: Readonly<Record<ResemblanceTerm, string>> = {
  processes: 'Processes',
  material: 'Type of material',
  controls: 'Control methods',
  practices: 'Work practices',
  environment: 'Environmental conditions',
};

const from: Readonly<Record<Measurement['from'], string>> = {
  sampled: 'this firm, sampled',
  consultant: 'a consultant, reported',
  ownEarlier: 'this firm, earlier, reported',
  inspector: 'an inspector, reported',
  otherEmployer: 'another employer, reported',
  other: 'somebody else, reported',
};

export const en = {
  title: { negative: 'Negative initial determination', positive: 'Positive initial determination' },
  lead: (site: string, day: string) => `Lead in the air at ${site}, determined on ${formatDay(day, 'en')}`,
  documentTitle: (title: string, site: string, day: string) => `${title}, ${site}, ${day}`,
  says: {
    negative: (actionLevel: string) =>
      `By the measurements below, no employee at this task is exposed at or above the action level, ${actionLevel} as an 8-hour average, without regard to respirators.`,
    positive: (actionLevel: string) =>
      `Employees at this task may be exposed at or above the action level, ${actionLevel} as an 8-hour average, without regard to respirators. Monitoring representative of each of them follows.`,
  },
  actionLevelUnknown: 'whose figure is not held here',
  limit: (limit: number) => formatInWorking(limit, 'µg/m³'),
  about: 'What it is about',
  site: 'Worksite',
  location: 'Location within the worksite',
  date: 'Date of determination',
  tasks: 'Tasks',
  job: 'Job classification',
  jobNone: 'none stated',
  setting: 'Work was done',
  settings: { indoors: 'indoors', outdoors: 'outdoors' },
  measurements: 'Measurements',
  measurementsNone: 'No measurement stands behind it.',
  columns: {
    day: 'Day',
    worker: 'Worker',
    from: 'Measured by',
    samples: 'Samples',
    minutes: 'Sampled',
    average: '8-hour average, µg/m³',
    regular: 'Regular day',
  },
  from,
  report: (numbers: string) => `report ${numbers}`,
  noWorker: 'not in the book',
  regular: { yes: 'yes', no: 'no', notSaid: 'not said' },
  average: 'not known',
  relied: 'Why the earlier measurements may be relied on',
  reliedNotNeeded: 'Every measurement above was made in the work that this determination is about.',
  reliedOn: (measuredOn: string | null, reliedOn: string, ageDays: number | null) =>
    `Measured on ${measuredOn === null ? 'a day that is not in the book' : formatDay(measuredOn, 'en')}, relied on from ${formatDay(reliedOn, 'en')}${ageDays === null ? '' : `: ${ageDays} days old that day`}. Compared with the work now:`,
  terms,
  alike: { alike: 'closely alike', unlike: 'unlike', notKnown: 'not known' },
  ownFirm: { label: "The employer's own monitoring", yes: 'yes', no: 'no', notStated: 'not stated' },
  information: 'Other information that it rests on',
  observations: 'Information, observations, calculations',
  earlier: 'Earlier measurements of air',
  complaints: 'Complaints that employees attributed to lead',
  none: 'none',
  monitored: 'Employees who were monitored',
  standsFor: 'Employees for whom the measurements stand',
  standsForNone: 'Those who were monitored, and nobody else.',
  people: { name: 'Name', identifier: "Employee's number", job: 'Job classification', employer: 'Employer' },
  ownEmployer: 'this firm',
  noJob: 'none stated',
  against: 'What stands against a negative determination',
  againstNote:
    'A doubt does not stand against a positive determination; it is told so that nobody takes the figures for more.',
  blockOf: (block: string, day: string | null) => (day === null ? block : `${formatDay(day, 'en')}: ${block}`),
  cautions: 'Before it is relied on',
  cautionLines: {
    negative: [
      'It holds for this work as it is. With new equipment, processes, controls or people, or a new task, monitoring follows again.',
      'It is carried to another job only with an earlier measurement not older than the rule allows, under closely like conditions.',
    ],
    positive: ['What is presumed for the tasks stands until measurements show otherwise.'],
  },
  cautionAlways:
    'The current text of the rule, state and local rules, and whoever is licensed or certified for this decide.',
  basis: (document: string) => `Written under ${document}, paragraphs (d)(3) to (d)(5).`,
  written: 'Written by',
};
