/** Will this sample prove anything? Said before it is taken: what it could show, what it would take for more, and that it proves nothing. */
import type { AheadReasonKey, RangeOfMethod, ToComeBelow } from '#findings/season/sampleAhead.ts';
import { formatMinutes, formatQuantity } from './quantity.ts';

type Params = Readonly<Record<string, number | string>>;

const num = (params: Params, name: string): number => Number(params[name] ?? 0);
const level = (params: Params, name = 'levelUgPerM3'): string => formatQuantity(num(params, name), 'µg/m³');
const cassettes = (n: number): string => (n === 1 ? '1 cassette' : `${n} cassettes`);

/** 'from 200.0 L to 1500.0 L'; an end that the method does not state is left out. */
function ends(params: Params, suffix: 'L' | 'LPerMin'): string {
  const unit = suffix === 'L' ? 'L' : 'L/min';
  const part = (word: string, name: string): string[] =>
    params[name] === undefined ? [] : [`${word} ${formatQuantity(num(params, name), unit)}`];
  return [...part('from', `from${suffix}`), ...part('to', `to${suffix}`)].join(' ');
}

const reasons: Readonly<Record<AheadReasonKey, (params: Params) => string>> = {
  noTimeSuffices: (p) =>
    `No time suffices. Even with the whole shift sampled, cassettes that all come back below the reporting limit leave the day open up to ${level(p, 'wholeUgPerM3')}, which is not under ${level(p)}. The laboratory would have to report from less than ${formatQuantity(num(p, 'reportingLimitUg'), 'µg')}, or the flow would have to be higher.`,
  otherMinutes: (p) =>
    `As planned the day stays open up to ${level(p, 'boundUgPerM3')}. To come under ${level(p)} it takes ${formatMinutes(num(p, 'neededMin'))} sampled in all.`,
  splittingCostsProof: (p) =>
    `Splitting the day costs proof: each cassette brings its own reporting limit. ${cassettes(num(p, 'cassettesCount'))} leave the day open up to ${level(p, 'allUgPerM3')}; one alone up to ${level(p, 'oneUgPerM3')}.`,
  restUnsampled: (p) =>
    `${formatMinutes(num(p, 'restMin'))} of the shift are not sampled. The bound holds only if somebody can say, with a reason, that they were like the rest; otherwise the day is at least, and proves nothing low.`,
  moreSensitiveMethod: (p) =>
    `A cassette of ${formatQuantity(num(p, 'volumeL'), 'L')} tells nothing under ${level(p, 'seenUgPerM3')}, which lies above ${level(p)}. Short samples of a task may need a more sensitive method: ask the laboratory for graphite furnace or ICP.`,
  methodNotKnown: () =>
    'No method is chosen: its flow, volume and load are not looked at. Ask the laboratory which one it uses.',
  flowOutsideMethod: (p) =>
    `The flow of ${formatQuantity(num(p, 'flowLPerMin'), 'L/min')} lies outside what the method allows (${ends(p, 'LPerMin')}): such a sample proves nothing low.`,
  flowNotStatedByMethod: () => 'What was read of this method states no range of flow.',
  volumeBelowMethod: (p) =>
    `One cassette draws ${formatQuantity(num(p, 'volumeL'), 'L')}, less than the method allows (${ends(p, 'L')}): such a sample proves nothing low.`,
  volumeAboveMethod: (p) =>
    `One cassette draws ${formatQuantity(num(p, 'volumeL'), 'L')}, more than the method allows (${ends(p, 'L')}): such a sample proves nothing low. A second cassette or a lower flow helps.`,
  volumeNotStatedByMethod: () => 'What was read of this method states no range of volume for lead.',
  limitBelowDetection: (p) =>
    `The method finds nothing under ${formatQuantity(num(p, 'detectionUg'), 'µg')}: a reporting limit of ${formatQuantity(num(p, 'reportingLimitUg'), 'µg')} is not to be had with it.`,
  longerThanMethod: (p) =>
    `One cassette would be on for ${formatMinutes(num(p, 'cassetteMin'))}; the method speaks of up to ${formatMinutes(num(p, 'hours') * 60)}.`,
  changeCassette: (p) =>
    `At ${formatQuantity(num(p, 'dustMgPerM3'), 'mg/m³')} of dust the filter is full early: change the cassette after ${formatMinutes(num(p, 'changeAfterMin'))}. That makes ${cassettes(num(p, 'cassettesCount'))}, and the day stays open up to ${level(p, 'boundUgPerM3')}. A look at the filter decides, not this sum.`,
  dustNotSaid: () =>
    'Nobody said how dusty it will be: how long one filter lasts is not known. Look at the filter through the shift.',
  loadNotStatedByMethod: () => 'What was read of this method states no load that a filter may carry.',
  chargeTooShort: (p) =>
    `The pump has to run ${formatMinutes(num(p, 'neededHours') * 60)}, and its charge is said to last ${formatMinutes(num(p, 'saidHours') * 60)}: have a second pump ready.`,
  chargeNotSaid: (p) =>
    `The pump has to run ${formatMinutes(num(p, 'neededHours') * 60)}, and the flow checks besides. How long its charge lasts was not said.`,
  californiaAsksMore: (p) =>
    p.neededMin === undefined
      ? `In California the action level is far lower. To come under ${level(p)} with ${cassettes(num(p, 'cassettesCount'))}, no time suffices: the laboratory would have to report from less than ${formatQuantity(num(p, 'reportingLimitUg'), 'µg')}.`
      : `In California the action level is far lower. To come under ${level(p)} it takes ${formatMinutes(num(p, 'neededMin'))} sampled in all.`,
};

const couldShow: Readonly<Record<ToComeBelow['couldShow'], string>> = {
  yes: 'as planned it could come under',
  withOtherMinutes: 'with other minutes it could come under',
  no: 'it cannot come under, however long it runs',
};

const stands: Readonly<Record<RangeOfMethod['stands'], string>> = {
  inside: 'inside',
  below: 'less than the method allows',
  above: 'more than the method allows',
};

export const en = {
  heading: 'Will this sample prove anything?',
  intro:
    'Before it is taken: what the day could be at most if every cassette comes back below the reporting limit. These are sums about a plan. They prove nothing and end no duty.',
  fields: {
    method: 'Method of the laboratory',
    noMethod: 'Not known yet',
    reportingLimit: 'Reporting limit of the laboratory',
    flow: 'Flow',
    shift: 'Minutes of work in the day',
    sampled: 'Minutes sampled, all cassettes together',
    sampledHint: 'Blank: the whole shift',
    cassettes: 'Cassettes, one after the other',
    share: 'Share of the action level to come under',
    shares: { '1': 'the action level itself', '0.5': 'half of it', '0.25': 'a quarter of it', '0.1': 'a tenth of it' },
    dust: 'Dust in the air, a guess',
    dustHint: 'Blank: nobody knows',
    charge: 'Hours that a charge of this pump lasts',
    chargeHint: 'As its owner says, or as it was tried out; blank: not known',
    where: 'Whose limits',
  },
  notAboveZero: (field: string) => `${field}: give a number above zero.`,
  bound: 'The day would be at most',
  boundIf: 'if all cassettes come back below the reporting limit',
  dayBound: 'With every minute of the shift sampled',
  boundOfOne: 'With one cassette alone',
  leastSeen: 'What one cassette can tell from nothing, over its own minutes',
  volume: 'Air through one cassette',
  volumeRange: 'Volume that the method allows',
  twaVolumeRange: 'Volume recommended for an average over the shift',
  flowRange: 'Flow that the method allows',
  range: (low: string | null, high: string | null, how: RangeOfMethod['stands']) =>
    `${[low === null ? null : `from ${low}`, high === null ? null : `to ${high}`].filter((one) => one !== null).join(' ')}: ${stands[how]}`,
  levels: {
    heading: 'What it would take',
    share: 'The chosen share of the action level',
    actionLevel: 'Action level',
    pel: 'Permissible exposure limit',
    california: 'The same share of California’s action level',
    columns: {
      level: 'To come under',
      how: 'As planned',
      minutes: 'Minutes sampled, at least',
      oneMinutes: 'With one cassette',
      reportingLimit: 'Or report from less than',
      flow: 'Or a flow over',
    },
    couldShow,
    noTime: 'no time suffices',
    flowNotAllowed: (flow: string) => `${flow}, which the method does not allow`,
  },
  loading: {
    heading: 'How long one filter lasts',
    minutes: 'Minutes until it is full, at this dust',
    change: (minutes: string) => `Change the cassette after ${minutes}.`,
    lasts: 'It lasts as long as it is planned to be on.',
    cassettes: (n: number) => `${cassettes(n)} in all`,
    most: 'Dust that a filter may carry',
  },
  charge: (hours: string) => `The pump runs ${hours}.`,
  enough: {
    yes: 'Its charge is said to last longer.',
    no: 'Its charge is said not to last so long.',
    notSaid: 'How long its charge lasts was not said.',
  },
  reasonsHeading: 'What to know about it',
  reason: (key: AheadReasonKey, params: Params) => reasons[key](params),
  blocked: 'Taken like this it would prove nothing low, whatever comes back.',
  chart: {
    bound: 'What the day could be at most, by minutes sampled',
    boundDescription: (shift: string) =>
      `Four lines for one to four cassettes over a shift of ${shift}. More minutes bring each line down; more cassettes bring it up.`,
    load: 'Dust on one filter, by minutes',
    minutes: 'Minutes sampled',
    atMost: 'At most, µg/m³',
    dust: 'Dust, mg',
    line: (n: number) => cassettes(n),
    actionLevel: 'Action level',
    pel: 'PEL',
    planned: 'As planned',
    full: 'Full',
    tableMinutes: 'Minutes',
  },
  derived: 'Our own arithmetic, not a citation',
};

export type SampleAheadWords = typeof en;
