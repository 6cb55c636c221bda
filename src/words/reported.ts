/** Measurements that others made, or that were made before this book began: keyed in by the office from a report. */
import type { FactBody } from '#records/fact.ts';
import { formatDay, formatList, formatQuantity } from './quantity.ts';

type Body = FactBody<'measurementReported.v1'>;
export type ReportedFrom = Body['from'];
export type Stated = Body['fullShift'];

export const fromKeys: readonly ReportedFrom[] = ['consultant', 'ownEarlier', 'inspector', 'otherEmployer', 'other'];

export const en = {
  heading: 'Measurements reported to us',
  intro:
    'A consultant’s, last year’s, an inspector’s: they count for duties and notices like our own, and are shown as without flow readings of our own.',
  none: 'None has been written down yet.',
  add: 'Write one down',
  addHeading: 'Write down a reported measurement',
  list: 'Newest first',
  mark: 'Without flow readings of our own',
  line: (worker: string, tasks: readonly string[], day: string) =>
    `${worker}: ${formatList(tasks)}, ${formatDay(day, 'en', 'short')} ${day.slice(0, 4)}`,
  value: (average: Body['average']) =>
    average.kind === 'lessThan'
      ? `less than ${formatQuantity(average.twa8UgPerM3, 'µg/m³')}`
      : formatQuantity(average.twa8UgPerM3, 'µg/m³'),
  detail: (from: ReportedFrom, name: string, value: string) =>
    `${value} over 8 hours, ${fromNames[from]} (${name}); without flow readings of our own`,
  notInBook: 'A worker who is not in the book',
  fields: {
    from: 'Whose measurement is it?',
    fromName: 'Name of who measured',
    reportNumber: 'Number of the report, if it has one',
    worker: 'Which worker was measured',
    site: 'At which site',
    siteOther: 'Another place, or not named',
    setting: 'Indoors or outdoors',
    workOn: 'Day of the work',
    receivedOn: 'Day on which the firm had the report',
    receivedHint: 'The days for telling the workers count from it',
    tasks: 'What did the worker do?',
    tasksHint: 'As the report says it. The task with the most lead decides what is presumed.',
    job: 'Job classification',
    jobNone: 'Not named',
    kind: 'What the report says of the average',
    average: 'Lead in the air, average over 8 hours',
    averageHint: 'As the report states it, in micrograms per cubic metre, without regard to a respirator',
    workedHours: 'Hours worked that day, if the report says',
    fullShift: 'Do the samples stand for a full shift?',
    ownFirm: 'Our own workers, in our own work?',
    accuracy: 'Does the report state an accuracy within 25 % at 95 % confidence?',
    remark: 'Anything else',
    why: 'Why is it changed?',
  },
  from: {
    consultant: 'A consultant’s',
    ownEarlier: 'Our own, from before this book',
    inspector: 'An inspector’s',
    otherEmployer: 'Another employer’s',
    other: 'Somebody else’s',
  } satisfies Record<ReportedFrom, string>,
  settings: { indoors: 'Indoors', outdoors: 'Outdoors' },
  kinds: { measured: 'A figure', lessThan: 'Less than a figure' },
  stated: { yes: 'Yes', no: 'No', notStated: 'Not stated' } satisfies Record<Stated, string>,
  errors: {
    taskMissing: 'Choose at least one task',
    zero: 'No report can say zero. Choose “less than a figure” and write the figure.',
    receivedBefore: 'The report cannot have come before the day of the work. Look at both days.',
    whyMissing: 'Say in a few words why it is changed',
    nothingChanged: 'Nothing is different from what stands in the book. Change something, or go back.',
  },
  save: 'Save the measurement',
  correctHeading: 'Put a reported measurement right',
  correctIntro:
    'What stood here stays to be seen, struck through, with the reason. A new figure asks for a new notice.',
  correct: 'Save the correction',
  gone: 'This measurement is not in the book on this device.',
  story: 'The story of this measurement',
};

const fromNames: Readonly<Record<ReportedFrom, string>> = {
  consultant: 'a consultant’s',
  ownEarlier: 'our own from before this book',
  inspector: 'an inspector’s',
  otherEmployer: 'another employer’s',
  other: 'somebody else’s',
};

export type ReportedWords = typeof en;
