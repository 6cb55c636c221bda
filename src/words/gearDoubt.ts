/** Gear that was found bad: saying so, what rests on it, the one decision that settles it, and the sentence wherever it is touched. */
import type { DoubtEffect } from '#findings/gear/doubtsOf.ts';
import type { GearDoubt } from '#records/book.ts';
import { type GearKind, gearName } from './gearScreen.ts';
import { formatDay, formatQuantity } from './quantity.ts';

type Decision = NonNullable<GearDoubt['settled']>['decision'];

const count = (n: number, one: string, many: string): string => (n === 1 ? `1 ${one}` : `${n} ${many}`);

/** 'not settled', or what was decided. */
const standing: Readonly<Record<DoubtEffect, string>> = {
  open: 'not settled',
  noEffect: 'settled: it had no effect',
  asFound: 'settled: both bounds judge',
  staysDoubtful: 'settled: stays doubtful',
};

/** 'rests on flow meter ROTA-7, found bad on 12 March 2026 (not settled)': within a line of several parts. */
export const restsWithin = (gear: GearKind, name: string, { foundOn }: GearDoubt, effect: DoubtEffect): string =>
  `rests on ${gearName(gear, name)}, found bad on ${formatDay(foundOn)} (${standing[effect]})`;

/** 'Rests on flow meter ROTA-7, found bad on 12 March 2026; not settled.' */
export const restsOn = (gear: GearKind, name: string, { foundOn }: GearDoubt, effect: DoubtEffect): string =>
  `Rests on ${gearName(gear, name)}, found bad on ${formatDay(foundOn)}; ${standing[effect]}.`;

export const en = {
  restsHeading: 'Rests on gear that was found bad',
  paperStays: 'It stays as it was handed out.',
  action: 'Found bad',
  heading: (name: string) => `${name} was found bad`,
  follows:
    'Every sample that rests on it in this time proves nothing low from now on, until somebody decides with a reason. What is high stays high, and nothing that is due falls away. Papers that were handed out stay as they are and say on their pages what they rest on. No figure is worked out anew by this.',
  what: 'What was found?',
  whatHint: 'Such as: reads 8 % high against the soap film; filters of the lot were torn',
  foundOn: 'Found on',
  fromOn: 'Doubtful from',
  fromHint: 'As a rule the day of its last good check. Empty means: ever since it was entered in the book',
  untilOn: 'Doubtful until',
  untilHint: 'Empty means: it goes on, a flow meter until a newer certificate',
  turned: 'The last day lies before the first. Look at both days again',
  fromAfterFound: 'It is doubtful from a day after it was found. Look at both days again',
  save: 'Save that it was found bad',
  doubtsHeading: 'Found bad',
  line: (found: string, day: string) => `${found}, found on ${formatDay(day)}`,
  standing,
  open: (found: string, day: string) =>
    `Found bad on ${formatDay(day)}: ${found}. Nobody has decided yet what follows.`,
  toDoubt: 'See what rests on it and decide',
  page: {
    heading: (name: string) => `What rests on ${name}`,
    gone: 'This is not in the book. It may come with a file of another device.',
    found: (found: string, day: string) => `Found on ${formatDay(day)}: ${found}`,
    span: (from: string | null, until: string | null) =>
      `Doubtful ${from === null ? 'ever since it was entered in the book' : `from ${formatDay(from)}`}${until === null ? ', without a last day' : ` until ${formatDay(until)}`}`,
    nothing: 'Nothing in the book rests on it in this time.',
    countsHeading: 'What rests on it',
    counts: {
      samples: (n: number) => count(n, 'sample', 'samples'),
      workdays: (n: number) => count(n, "worker's day", "workers' days"),
      measurements: (n: number) => count(n, 'measurement', 'measurements'),
      noticesOwed: (n: number) => count(n, 'notice to be given', 'notices to be given'),
      noticesIssued: (n: number) => count(n, 'notice made', 'notices made'),
      determinations: (n: number) => count(n, 'determination', 'determinations'),
      determinationsNotWritten: (n: number) =>
        count(n, 'determination not written yet', 'determinations not written yet'),
      reliances: (n: number) => count(n, 'job that relies on one', 'jobs that rely on one'),
      duties: (n: number) =>
        count(n, 'thing that the rule asks, done or to do', 'things that the rule asks, done or to do'),
      exposureRecords: (n: number) => count(n, 'exposure record', 'exposure records'),
      custodySheets: (n: number) => count(n, 'custody sheet', 'custody sheets'),
    },
    revision: (revision: string) => `revision ${revision}; it stays as it was handed out`,
    toGear: (name: string) => `Back to ${name}`,
    more: (n: number) => `and ${n} more`,
    settledAs: (decision: Decision, why: string | null) =>
      `${{ noEffect: 'Decided: it had no effect', asFound: 'Decided: both bounds judge', staysDoubtful: 'Decided: it stays doubtful' }[decision]}, because ${why ?? 'no reason was written, so it does not count'}.`,
    factor: (trueOverRead: number) => `True flow over the flow that it read: ${formatQuantity(trueOverRead, '')}`,
    differ:
      'Two decisions were made without knowledge of each other, and they differ. The more careful one stands until somebody decides anew.',
    decideHeading: 'The decision',
    again: 'Decide anew',
    which: 'What follows from it?',
    choices: {
      noEffect: {
        label: 'It had no effect',
        hint: 'It was shown that nothing that rests on it is wrong. What it held back counts again.',
      },
      asFound: {
        label: 'Correct it by what was found',
        hint: 'The flow then lies between what was read and the true flow. Both bounds judge.',
      },
      staysDoubtful: {
        label: 'It stays doubtful',
        hint: 'What rests on it proves nothing low. Without a last day that goes on: of a flow meter until a newer certificate, of a pump or lot for good, so take it out of use. Measure again where a low figure is needed.',
      },
    },
    trueOverRead: 'True flow over the flow that it read',
    trueOverReadHint: 'Such as 0.92 for a meter that read 1.00 where the true flow was 0.92',
    why: 'Why? What shows it?',
    whyHint: 'The reason stays with the entry, in the story of the record',
    whyMissing: 'Say in a few words what shows it',
    whyLabel: 'The reason',
    save: 'Save the decision',
    saved: 'The decision is saved.',
  },
  will: {
    heading: 'What this decision will change',
    looking: 'Working out what it will change',
    nothing: 'Nothing that is shown or due changes by it.',
    lowAgain: (n: number) => `${count(n, 'measurement proves', 'measurements prove')} again that a day was low.`,
    lowNoMore: (n: number) => `${count(n, 'measurement proves', 'measurements prove')} no longer that a day was low.`,
    figures: (n: number) => `${count(n, 'figure changes', 'figures change')} to bounds or back.`,
    higher: (n: number) =>
      `${count(n, 'measurement', 'measurements')} may then have been higher than it stood: a new notice may be due.`,
    duties: (come: number, go: number) =>
      [
        ...(go === 0 ? [] : [`${count(go, 'thing to do falls', 'things to do fall')} away.`]),
        ...(come === 0 ? [] : [`${count(come, 'thing to do comes', 'things to do come')} new.`]),
      ].join(' '),
    papers:
      'Papers that were handed out stay as they are; a paper that then differs from the record says so on its page.',
  },
};
