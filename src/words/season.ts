/** What to measure next: every task group in order of need, and the ways on. */
import type { NeedKind } from '#findings/season/need.ts';
import { formatDay, formatList } from './quantity.ts';

const count = (n: number, one: string, more: string): string => (n === 1 ? `1 ${one}` : `${n} ${more}`);

export interface NeedSaid {
  /** ISO day. */
  readonly dueOn: string | null;
  readonly overdue: boolean;
  /** Names. */
  readonly workers: readonly string[];
  readonly site: string | null;
}

const whom = ({ workers, site }: NeedSaid): string =>
  [workers.length === 0 ? null : formatList(workers), site === null ? null : `at ${site}`]
    .filter((part) => part !== null)
    .join(' ');

/** 'Not measured yet: Ana Ruiz at the library.' */
const withWhom = (start: string, said: NeedSaid): string => {
  const who = whom(said);
  return who === '' ? `${start}.` : `${start}: ${who}.`;
};

const byWhen = ({ dueOn, overdue }: NeedSaid): string => {
  if (dueOn === null) return '';
  return overdue ? `, overdue since ${formatDay(dueOn)}` : `, by ${formatDay(dueOn)}`;
};

const needs: Readonly<Record<NeedKind, (said: NeedSaid) => string>> = {
  neverMeasured: (said) => withWhom('Not measured yet', said),
  changed: (said) => withWhom(`Something changed at the job: measure again${byWhen(said)}`, said),
  again: (said) => withWhom(`Measured, and it proves nothing low yet: measure again${byWhen(said)}`, said),
  answer: (said) => withWhom('Measured; something is to be answered before it proves anything low', said),
  dueAgain: (said) => withWhom(`To be measured again${byWhen(said)}`, said),
  dueSoon: (said) => withWhom(`Due again soon${byWhen(said)}`, said),
  resultOwed: (said) => withWhom('A cassette is on its way; its result is owed', said),
  planned: (said) => withWhom('Nothing is due, and planned measurements are still to do', said),
  notMeasuredNoWork: (said) => withWhom('Not measured, and this work was not done lately', said),
  known: () => 'Measured; nothing is due now.',
};

export const en = {
  heading: 'What to measure next',
  looking: 'Looking through the book …',
  intro:
    'Each task group of this firm, in order of need. The list reads what the book holds. A plan, a prediction or a figure of others takes nothing off what is to do: only a valid measurement does.',
  empty: {
    heading: 'Begin here',
    first:
      'Nothing is known of the work ahead yet. Say first which tasks somebody will do: then it is told what is presumed, and whom to measure.',
    steps: [
      'Which tasks, indoors or outdoors, in which job classification',
      'Who does them, and how many',
      'On which days they are measured',
    ],
  },
  add: 'Plan a measurement',
  plan: 'Plan it',
  planAgain: 'Plan another one',
  group: 'What is known of it',
  byDate: 'Its results by date',
  aboutIt: (what: string, group: string) => `${what}: ${group}`,
  need: (kind: NeedKind, said: NeedSaid): string => needs[kind](said),
  alsoNeeded: 'Also:',
  someone: 'somebody not in the book',
  presumedStands: 'Until it is measured:',
  last: (worker: string | null, day: string, value: string) =>
    `Last measured on ${formatDay(day)}${worker === null ? '' : `, ${worker}`}: ${value}.`,
  valueUnknown: 'average not known yet',
  reliable: (untilOn: string) => `A job may rest on a measurement of it until ${formatDay(untilOn)} at the latest.`,
  reliablePast: (untilOn: string) => `The last one that a job could rest on was too old after ${formatDay(untilOn)}.`,
  due: (day: string, overdue: boolean) =>
    overdue ? `Another one has been due since ${formatDay(day)}.` : `Another one is due by ${formatDay(day)}.`,
  blockedHeading: 'Why nothing low is shown yet',
  ruleNotHeld: 'The rule that governs there is not held complete: figures are shown, and no dates are set.',
  openPlan: (open: number, all: number) =>
    open === 0
      ? `The plan is done: ${count(all, 'measurement', 'measurements')}`
      : `Open the plan: ${open} of ${count(all, 'measurement', 'measurements')} still to do`,
  plansHeading: 'Plans',
  plansNone: 'Nothing is planned yet.',
  planLine: (group: string, season: string | null) => (season === null ? group : `${group}, ${season}`),
  othersHeading: 'What others measured',
  othersProve:
    'These figures prove nothing about your work: the same task differs ten to a hundred times from job to job, and most are of half an hour. They take nothing off what is to do, and nobody can rest on them.',
  ways: {
    heading: 'For the season',
    tomorrow: 'Who wears what tomorrow',
    prove: 'Will this sample prove anything?',
    dayAhead: 'What would a day look like?',
    money: 'What measuring costs',
    gear: 'Pumps, meters, cassettes',
    byDate: 'Results by date',
    groups: 'Task groups',
  },
  quiet: 'What to measure next',
  quietTomorrow: 'Who wears what tomorrow',
  ready: 'Who wears what today',
  readyDetail: 'This day was made ready: ask again, then open it',
};

export type SeasonWords = typeof en;
