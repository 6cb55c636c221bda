/** What is to be told of a plan: keys with their values; the sentences stand in src/words/sampleAhead.ts. */
import { sideOf } from '#core/comparison.ts';
import type { Method } from '#reference/methods.ts';
import type { AheadReason, AheadReasonKey, RangeOfMethod, SampleAhead } from './aheadFinding.ts';
import { highestOf } from './aheadLevels.ts';

type Found = Omit<SampleAhead, 'reasons' | 'blocks' | 'curves'>;

/** Each leaves a sample doubtful when it is taken so (src/findings/reason.ts), or asks of the method what it cannot find. */
const blocking: ReadonlySet<AheadReasonKey> = new Set([
  'flowOutsideMethod',
  'volumeBelowMethod',
  'volumeAboveMethod',
  'changeCassette',
  'limitBelowDetection',
]);

export const blocksOf = (reasons: readonly AheadReason[]): readonly AheadReasonKey[] =>
  reasons.flatMap(({ key }) => (blocking.has(key) ? [key] : []));

const reason = (key: AheadReasonKey, params: AheadReason['params'] = {}): AheadReason => ({ key, params });

function ofProof({ input, share, bound, dayBound, boundOfOne, sampledMin }: Found): AheadReason[] {
  const { cassettesCount, shiftMin } = input;
  const found: AheadReason[] = [];
  const level = { levelUgPerM3: share.levelUgPerM3, boundUgPerM3: highestOf(bound) };
  if (sideOf(highestOf(dayBound), share.levelUgPerM3) >= 0)
    found.push(
      reason('noTimeSuffices', {
        ...level,
        wholeUgPerM3: highestOf(dayBound),
        reportingLimitUg: highestOf(share.reportingLimitNeeded),
      }),
    );
  if (share.couldShow === 'withOtherMinutes')
    found.push(reason('otherMinutes', { ...level, neededMin: share.minutesNeededMin ?? shiftMin }));
  if (cassettesCount > 1) {
    const one = highestOf(boundOfOne);
    found.push(reason('splittingCostsProof', { cassettesCount, oneUgPerM3: one, allUgPerM3: highestOf(bound) }));
  }
  if (sampledMin < shiftMin) found.push(reason('restUnsampled', { restMin: shiftMin - sampledMin }));
  return found;
}

/** A short sample of a task: what it can tell from nothing lies above the action level (reference, methods A9). */
function ofShortSample({ input, leastSeen, volume }: Found): AheadReason[] {
  const seenUgPerM3 = highestOf(leastSeen);
  if (sideOf(seenUgPerM3, input.actionLevelUgPerM3) <= 0) return [];
  return [
    reason('moreSensitiveMethod', { seenUgPerM3, volumeL: highestOf(volume), levelUgPerM3: input.actionLevelUgPerM3 }),
  ];
}

const ends = ({ low, high }: RangeOfMethod, suffix: 'L' | 'LPerMin'): AheadReason['params'] => ({
  ...(low === null ? {} : { [`from${suffix}`]: low }),
  ...(high === null ? {} : { [`to${suffix}`]: high }),
});

function ofMethod(found: Found, method: Method | undefined): AheadReason[] {
  if (!method) return [reason('methodNotKnown')];
  const { input, volumeRange, flowRange, volume, sampledMin } = found;
  const reasons: AheadReason[] = [];
  const volumeL = highestOf(volume);
  if (!volumeRange) reasons.push(reason('volumeNotStatedByMethod'));
  else if (volumeRange.stands !== 'inside') {
    const key = volumeRange.stands === 'below' ? 'volumeBelowMethod' : 'volumeAboveMethod';
    reasons.push(reason(key, { volumeL, ...ends(volumeRange, 'L') }));
  }
  if (!flowRange) reasons.push(reason('flowNotStatedByMethod'));
  else if (flowRange.stands !== 'inside')
    reasons.push(reason('flowOutsideMethod', { flowLPerMin: input.flowLPerMin, ...ends(flowRange, 'LPerMin') }));
  const detection = method.detectionLimit?.value;
  if (detection !== undefined && input.reportingLimitUg < detection)
    reasons.push(reason('limitBelowDetection', { reportingLimitUg: input.reportingLimitUg, detectionUg: detection }));
  const hours = method.upToHours?.value;
  const cassetteMin = sampledMin / input.cassettesCount;
  if (hours !== undefined && cassetteMin > hours * 60) reasons.push(reason('longerThanMethod', { cassetteMin, hours }));
  return reasons;
}

function ofFilter({ input, loading }: Found, method: Method | undefined): AheadReason[] {
  if (input.dustMgPerM3 === null) return [reason('dustNotSaid')];
  if (!loading) return method ? [reason('loadNotStatedByMethod')] : [];
  if (loading.changeAfterMin === null) return [];
  const { changeAfterMin, cassettesCount, dustMgPerM3, bound } = loading;
  return [reason('changeCassette', { changeAfterMin, cassettesCount, dustMgPerM3, boundUgPerM3: highestOf(bound) })];
}

function ofCharge({ charge }: Found): AheadReason[] {
  const { enough, neededHours, saidHours } = charge;
  if (enough === 'yes') return [];
  return [
    enough === 'no'
      ? reason('chargeTooShort', { neededHours, saidHours: saidHours ?? 0 })
      : reason('chargeNotSaid', { neededHours }),
  ];
}

function ofCalifornia({ california, share, input }: Found): AheadReason[] {
  const { levelUgPerM3, couldShow, minutesNeededMin, reportingLimitNeeded } = california;
  if (sideOf(levelUgPerM3, share.levelUgPerM3) >= 0 || couldShow === 'yes') return [];
  return [
    reason('californiaAsksMore', {
      levelUgPerM3,
      reportingLimitUg: highestOf(reportingLimitNeeded),
      cassettesCount: input.cassettesCount,
      ...(minutesNeededMin === null ? {} : { neededMin: minutesNeededMin }),
    }),
  ];
}

/** In the order in which they matter. */
export const aheadReasons = (found: Found, method: Method | undefined): readonly AheadReason[] => [
  ...ofProof(found),
  ...ofShortSample(found),
  ...ofMethod(found, method),
  ...ofFilter(found, method),
  ...ofCharge(found),
  ...ofCalifornia(found),
];
