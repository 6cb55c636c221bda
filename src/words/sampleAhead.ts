/** What to know of a sample before it is taken, one sentence for each reason of findings/season/sampleAhead. */
import type { AheadReason, AheadReasonKey } from '#findings/season/sampleAhead.ts';
import { formatInWorking, formatMinutes, formatQuantity } from './quantity.ts';

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
    `The minutes planned do not do. To come under ${level(p)} it takes ${formatMinutes(num(p, 'neededMin'))} sampled in all.`,
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
    `At ${formatInWorking(num(p, 'dustMgPerM3'), 'mg/m³')} of dust the filter is full early: change the cassette after ${formatMinutes(num(p, 'changeAfterMin'))}. That makes ${cassettes(num(p, 'cassettesCount'))}, and the day stays open up to ${level(p, 'boundUgPerM3')}. A look at the filter decides, not this sum.`,
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

/** One sentence for each thing to know of the plan. */
export const aheadReasonText = ({ key, params }: AheadReason): string => reasons[key](params);
