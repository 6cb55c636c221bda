/** The page that asks, before a sample is taken, what it could show: its fields, its answers and its pictures. */

import type { Term } from '#core/formula.ts';
import type { Unit } from '#core/units.ts';
import type { ToComeBelow } from '#findings/season/aheadFinding.ts';
import { formatEstimateNumber, formatInWorking, formatMinutes, formatNumber } from './quantity.ts';

/** As the rule or the method writes it: no digit that only pads. */
const plain = (value: number, unit: Unit): string => formatNumber(value, unit, { digits: 'working' });
const micrograms = (value: number): string => formatInWorking(value, 'µg/m³');
const cassettes = (count: number): string => (count === 1 ? '1 cassette' : `${count} cassettes`);

export interface AnswerSaid {
  readonly couldShow: ToComeBelow['couldShow'];
  readonly levelUgPerM3: number;
  readonly minutesNeededMin: number | null;
  readonly cassettesCount: number;
}

const answers: Readonly<Record<ToComeBelow['couldShow'], (said: AnswerSaid) => string>> = {
  yes: ({ levelUgPerM3 }) =>
    `Yes, it could: if every cassette comes back below the reporting limit, the day stays below ${micrograms(levelUgPerM3)}.`,
  withOtherMinutes: ({ levelUgPerM3, minutesNeededMin }) =>
    `Not as planned. With ${minutesNeededMin === null ? 'other minutes' : formatMinutes(minutesNeededMin)} sampled it could stay below ${micrograms(levelUgPerM3)}.`,
  no: ({ levelUgPerM3, cassettesCount }) =>
    `No. With ${cassettes(cassettesCount)} no time of this shift brings the day below ${micrograms(levelUgPerM3)}, even if nothing is found.`,
};

const levelAnswers: Readonly<Record<ToComeBelow['couldShow'], string>> = {
  yes: 'could be shown',
  withOtherMinutes: 'only with other minutes',
  no: 'could not be shown',
};

export const en = {
  heading: 'Will this sample prove anything?',
  intro:
    'Asked before the sample is taken. What follows says what it could show at best. It proves nothing and takes nothing off what is to do.',
  fields: {
    rule: 'Whose limits?',
    rules: { federal: 'The federal rule for construction', california: "California's rule for construction" },
    method: 'Method of the laboratory',
    methodOther: 'Another one, or not known',
    limit: 'Reporting limit of the laboratory, for one cassette',
    limitHint: 'Ask the laboratory. It stands on its price list or on an earlier report.',
    flow: 'Flow of the pump',
    shift: 'Work in the day',
    shiftHint: '8 hours are 480 minutes, 10 hours are 600.',
    sampled: 'Minutes sampled, if not the whole day',
    cassettes: 'Cassettes, one after the other',
    share: 'Share of the action level to stay below',
    shareHint:
      '100 % asks for just below the action level. Less leaves room for what the pump and the laboratory may be off.',
    dust: 'Dust in the air, as a guess',
    dustHint: 'All dust, not lead alone. May stay empty; then nothing is said of how long a filter lasts.',
    charge: 'Hours a charge of the pump lasts',
    chargeHint: 'May stay empty.',
    sampledTooLong: 'Minutes sampled: they cannot be more than the work in the day',
  },
  action: 'Work it out',
  answerHeading: 'What it could show',
  waiting: 'The answer stands here once the reporting limit is filled in.',
  answer: (said: AnswerSaid): string => answers[said.couldShow](said),
  notLikeThis: 'Not like this. The figures would do, but taken so it would prove nothing low.',
  blocked: 'What stands against a sample taken like this:',
  bound: {
    label: 'The most that the day could then be',
    note: 'the 8-hour average, if every cassette comes back below the reporting limit',
    restNote:
      'the 8-hour average, if every cassette comes back below the reporting limit and the minutes not sampled are like the others',
  },
  minutes: {
    label: 'Minutes needed',
    note: (level: number): string => `to come below ${micrograms(level)}`,
    never: 'none suffice',
    neverNote: (level: number, cassettesCount: number): string =>
      `The shift is too short to come below ${micrograms(level)} with ${cassettes(cassettesCount)}.`,
  },
  /** 'less than 5.00' for a limit that must be below, 'more than 2.60' for a flow that must be above. */
  needs: {
    heading: 'What would do it over the whole shift',
    limit: 'Reporting limit needed',
    flow: 'Flow needed',
    less: (term: Term): string => `less than ${formatNumber(numberOf(term), term.unit, {}, 'down')}`,
    more: (term: Term): string => `more than ${formatNumber(numberOf(term), term.unit, {}, 'up')}`,
    flowNotAllowed: 'more than the method allows',
    flowAllowed: 'within what the method allows',
    flowNotStated: 'the method states no flow here',
  },
  levels: {
    heading: 'Level by level',
    share: (share: string, level: number): string => `${share} of the action level, ${micrograms(level)}`,
    actionLevel: (level: number): string => `The action level, ${micrograms(level)}`,
    pel: (level: number): string => `The PEL, ${micrograms(level)}`,
    california: (share: string, level: number): string =>
      `The same share of California's action level (${share}), ${micrograms(level)}`,
    stands: levelAnswers,
    minutes: (min: number): string => `${formatMinutes(min)} needed`,
  },
  volume: {
    label: 'Air through one cassette',
    range: (low: number | null, high: number | null): string =>
      low !== null && high !== null
        ? `The method allows ${plain(low, 'L')} to ${formatInWorking(high, 'L')}.`
        : low !== null
          ? `The method asks for at least ${formatInWorking(low, 'L')}.`
          : high !== null
            ? `The method allows up to ${formatInWorking(high, 'L')}.`
            : '',
    stands: { inside: 'Within the method.', below: 'Too little for the method.', above: 'Too much for the method.' },
    notStated: 'No volume range of this method is held here.',
    forAverage: (low: number | null, high: number | null): string =>
      `For an average over the shift it recommends ${[low, high]
        .filter((each) => each !== null)
        .map((each) => plain(each, 'L'))
        .join(' to ')} L.`,
    fromMemory: 'This figure was not checked against the method.',
    leastSeen: 'Least this cassette tells from nothing',
    leastSeenNote: 'over its own minutes',
  },
  loading: {
    label: 'One filter lasts',
    change: (min: number, count: number): string =>
      `Change the cassette after ${formatMinutes(min)} at the latest: that makes ${cassettes(count)}.`,
    lasts: 'It lasts as long as it is planned to be on.',
    bound: (bound: Term): string =>
      `With so many the day could be up to ${formatEstimateNumber(bound.estimate, 'µg/m³')} µg/m³.`,
    limit: (mg: number): string => `The method allows ${formatInWorking(mg, 'mg')} of dust on a filter.`,
    guess: 'The dust is a guess. Look at the filter during the day.',
  },
  charge: {
    label: 'Charge needed',
    enough: {
      yes: 'The charge lasts.',
      no: 'The charge does not last.',
      notSaid: 'Nobody said how long a charge lasts.',
    },
  },
  alsoHeading: 'To keep in mind',
  always: {
    splittingCostsProof:
      'Splitting a day among more cassettes costs proof: each may hold up to its reporting limit, and they add up.',
    moreSensitiveMethod: 'A short sample of one task draws little air. It may need a method that finds less.',
  },
  picture: {
    bound: 'The bound against the minutes sampled',
    boundDescription: (top: number): string =>
      `For 1 to 4 cassettes, each below the reporting limit. Each line falls as more minutes are sampled. Shown up to ${micrograms(top)}.`,
    minutes: 'Minutes sampled, min',
    upTo: 'Day at most, µg/m³',
    cassettes,
    shareName: (level: number): string => `your share ${plain(level, 'µg/m³')}`,
    actionLevel: (level: number): string => `action level ${plain(level, 'µg/m³')}`,
    pel: (level: number): string => `PEL ${plain(level, 'µg/m³')}`,
    table: 'The same as a table',
    minutesColumn: 'Minutes',
    above: '–',
    load: 'Dust on one filter against its minutes',
    loadDescription: (mg: number): string =>
      `It rises with time, towards the ${formatInWorking(mg, 'mg')} that the method allows.`,
    loadMinutes: 'Minutes of one cassette, min',
    loadUp: 'Dust on the filter, mg',
    loadName: 'dust',
    loadLimit: (mg: number): string => `method ${plain(mg, 'mg')}`,
    loadColumn: 'Dust, mg',
  },
} as const;

function numberOf({ estimate }: Term): number {
  return estimate.kind === 'exact' ? estimate.value : estimate.lower;
}
