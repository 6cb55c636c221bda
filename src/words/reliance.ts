/** Relying on an earlier measurement for a new job: five comparisons, each answered by a person, and what follows. */
import type { DeterminationBlockKey } from '#findings/duties/determining/determination.ts';
import type { ResemblanceTerm } from '#findings/duties/groups/taskGroup.ts';
import { type ConditionKey, conditionKeys, en as conditions } from './conditions.ts';
import { formatDay, formatList } from './quantity.ts';

export type Alike = 'alike' | 'unlike' | 'notKnown';
type Params = Readonly<Record<string, string | number>>;

const terms: Readonly<Record<ResemblanceTerm, string>> = {
  processes: 'The work itself: tasks and tools',
  material: 'The paint',
  controls: 'Dust collection, containment, air',
  practices: 'The way of working: wet or dry',
  environment: 'Weather, and how much was worked on',
};

const termIn = (term: string | number | undefined): string =>
  term !== undefined && term in terms ? terms[term as ResemblanceTerm] : 'Job classification';

/** Why an earlier measurement may not be relied on; each sentence says what would mend it, where anything would. */
const blocks: Readonly<Record<DeterminationBlockKey, (params: Params) => string>> = {
  noMeasurement: () => 'The earlier measurement is not in this book.',
  resultOwed: () => 'Its result, or a part of its day, is still owed.',
  minutesUnknown: () => 'Some minutes of its day are unknown. Say on its day what they were, if anybody knows.',
  sampleDoubtful: () => 'A sample of that day is doubtful or void.',
  notProvenBelow: () => 'It does not prove that the air was below the action level.',
  atOrAboveActionLevel: () => 'It was at or above the action level: it relieves of nothing.',
  irregularDay: () => 'That was not a regular day.',
  notAskedWhetherRegular: () => 'Nobody said whether that was a regular day. Say it on its day.',
  wallDepositOpen: () =>
    'Whether the deposit on the inner wall of the cassette is in the result is open. Ask the laboratory.',
  unlike: ({ term }) => `Not alike: ${termIn(term)}.`,
  resemblanceNotAsked: ({ term }) => `Not known whether alike: ${termIn(term)}.`,
  tooOld: () => 'It is older than twelve months on the day of this job.',
  notOwnData: () => 'It is not this firm’s own measuring.',
  accuracyNotStated: () => 'Its report does not state the accuracy that the rule asks for.',
  notFullShift: () => 'It does not stand for a full shift.',
  changeNoted: () => 'Something is new at this job.',
  changesNotAsked: () => 'Nobody answered yet what is new at this job.',
  takingIn: () => 'A file is half taken in. Take it in whole first.',
  entriesMissing: () => 'Entries of another device are missing here. Take in its file first.',
  ruleNotHeld: () => 'The rule that governs here is not held complete.',
  highestNotMeasured: () => 'Those who are believed most exposed were not measured.',
  statesDiffer: () => 'That day was worked in two states with different limits.',
};

const days = (count: number): string => (count === 1 ? '1 day' : `${count} days`);

export const en = {
  heading: 'Rely on an earlier measurement',
  noShift: 'This shift is not in the book on this device.',
  intro:
    'The firm’s own measurement of the past twelve months may stand for this job where both days closely resemble each other in five respects. A person answers each; what is not known does not count as alike.',
  noRoster: 'First say who works here today and at what: a measurement of the same work is looked for.',
  toRoster: 'Who works here today',
  group: 'For which work of today',
  groupLabel: (tasks: readonly string[], job: string | null) =>
    job === null ? formatList(tasks) : `${formatList(tasks)} (${job})`,
  pick: 'Which earlier measurement',
  none: 'There is no earlier measurement of this work in the book.',
  toReported: 'Write down a measurement that was reported to us',
  measured: (worker: string, day: string) => `${worker}, ${formatDay(day)}`,
  someone: 'A worker who is not in the book',
  age: (ageDays: number, untilOn: string | null, value: string) =>
    [
      ageDays === 0 ? 'measured this same day' : `${days(ageDays)} old on the day of this job`,
      untilOn === null ? null : `may be relied on until ${formatDay(untilOn)} at the latest`,
      value,
    ]
      .filter((part) => part !== null)
      .join('; '),
  valueUnknown: 'average not known yet',
  sample: 'sampled by us',
  reported: 'reported to us, without flow readings of our own',
  terms,
  thenNow: (then: string, now: string) => `Then: ${then}. Today: ${now}.`,
  suggests: {
    alike: 'By what was written down: alike.',
    unlike: 'By what was written down: not alike.',
    notKnown: 'What was written down does not tell.',
  } satisfies Record<Alike, string>,
  answers: { alike: 'Alike', unlike: 'Not alike', notKnown: 'Not known' } satisfies Record<Alike, string>,
  notWrittenDown: 'not written down',
  value: (name: string, value: string): string => {
    const key = conditionKeys.find((each) => each === name);
    if (key === undefined) return value;
    return (
      (conditions.options[key] as Readonly<Record<string, string>>)[value]
        ?.toLowerCase()
        .replace('hepa', 'HEPA')
        .replace(/^more$/, 'more than a room') ?? value
    );
  },
  label: (name: string): string =>
    conditionKeys.includes(name as ConditionKey) ? conditions.labels[name as ConditionKey].toLowerCase() : 'tasks',
  ownFirm: 'Was it this firm’s own measuring?',
  ownFirmAnswers: { yes: 'Yes', no: 'No', notStated: 'Not stated' },
  result: 'What follows',
  resultOpen: 'Pick a measurement and answer, and it is said here whether it may be relied on.',
  valid: (untilOn: string | null) =>
    untilOn === null
      ? 'By these answers it may be relied on for this job.'
      : `By these answers it may be relied on for this job. For jobs that begin after ${formatDay(untilOn)} it may not.`,
  validNote: 'Keep to the way of working that was compared. A change asks for measuring again.',
  invalid: 'By these answers it may not be relied on for this job:',
  blocks,
  defers: 'The current text of the rule and the state plan decide.',
  save: 'Save: this job rests on it',
  saveAnyway: 'Save the comparison as it stands',
  saved: 'Compared for this job already',
  savedLine: (worker: string, day: string, valid: boolean) =>
    valid ? `${worker}, ${formatDay(day)}: may be relied on` : `${worker}, ${formatDay(day)}: may not be relied on`,
};

export type RelianceWords = typeof en;
