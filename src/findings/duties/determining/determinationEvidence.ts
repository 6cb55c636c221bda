/** What keeps one measurement from carrying a negative initial determination, 29 CFR 1926.62(d)(3) and (5), each reason by its key. */
import { addMonths } from '#core/calendar.ts';
import { compareWithLimit } from '#core/comparison.ts';
import type { Book } from '#records/book.ts';
import { limitSetOn } from '#reference/limits.ts';
import type { Reason, ReasonKey } from '../../reason.ts';
import { recordDoubts } from '../../recordDoubts.ts';
import type { Measurement } from '../measuring/measurement.ts';
import type { DeterminationBlock, DeterminationBlockKey } from './determination.ts';

const keyOfReason: Partial<Record<ReasonKey, DeterminationBlockKey>> = {
  minutesUnknown: 'minutesUnknown',
  resultAwaited: 'resultOwed',
  wallDepositCouldMatter: 'wallDepositOpen',
  notRegular: 'irregularDay',
  regularNotSaid: 'notAskedWhetherRegular',
  takingIn: 'takingIn',
  entriesMissing: 'entriesMissing',
  statesDiffer: 'statesDiffer',
  stateRuleNotHeld: 'ruleNotHeld',
  stateNotKnown: 'ruleNotHeld',
  reportedNotFullShift: 'notFullShift',
  reportedAccuracyNotStated: 'accuracyNotStated',
  reportedNotOwnFirm: 'notOwnData',
};

export const block = (
  key: DeterminationBlockKey,
  measurementId: string | null,
  because: readonly string[] = [],
  params: DeterminationBlock['params'] = {},
): DeterminationBlock => ({ key, measurementId, params, because });

/** At or above the action level, or it may be: a finite upper bound there counts, and the known lower end does. */
export const isHigh = ({ band, twa8UgPerM3, limits }: Measurement): boolean =>
  band === 'actionLevelToPel' ||
  band === 'abovePel' ||
  (twa8UgPerM3 !== null && compareWithLimit(twa8UgPerM3, limits.set.actionLevel).crossed === 'yes');

/** Known, bounded, below the action level. It may prove nothing all the same. */
const isLowFigure = (measurement: Measurement): boolean =>
  !isHigh(measurement) &&
  measurement.twa8UgPerM3 !== null &&
  compareWithLimit(measurement.twa8UgPerM3, measurement.limits.set.actionLevel).crossed === 'no';

const onlyOf = (blocks: readonly DeterminationBlock[], keys: readonly DeterminationBlockKey[]): boolean =>
  blocks.length > 0 && blocks.every(({ key }) => keys.includes(key));

/** Low, and all that stands against it is that the day was not the regular one. */
export const isLowOnIrregularDay = (measurement: Measurement, blocks: readonly DeterminationBlock[]): boolean =>
  isLowFigure(measurement) && onlyOf(blocks, ['irregularDay']);

/** Low, and said not to be the firm's own: an inspector's, another employer's. Not asked is not said. */
export const isLowOfOthers = (measurement: Measurement, blocks: readonly DeterminationBlock[]): boolean =>
  isLowFigure(measurement) &&
  onlyOf(blocks, ['notOwnData', 'accuracyNotStated', 'notFullShift']) &&
  blocks.some(({ key, params }) => key === 'notOwnData' && params.said === 'notOurs');

function ofReason({ key, params, because }: Reason, measurementId: string): DeterminationBlock {
  const own = keyOfReason[key];
  return own
    ? block(own, measurementId, because, params)
    : block('sampleDoubtful', measurementId, because, { ...params, reason: key });
}

function findingReasons({ finding, blocks }: Measurement): readonly Reason[] {
  if (!finding) return blocks;
  const atLimit = finding.standings.find(({ which }) => which === 'actionLevel')?.why ?? [];
  const told = finding.reasons.filter(({ key }) => keyOfReason[key] !== undefined);
  return [...blocks, ...finding.blocksBelow, ...atLimit, ...told];
}

function figureBlocks(measurement: Measurement): DeterminationBlock[] {
  const { id, twa8UgPerM3, limits, because } = measurement;
  if (twa8UgPerM3 === null) return [];
  const { crossed } = compareWithLimit(twa8UgPerM3, limits.set.actionLevel);
  const params = { limitUgPerM3: limits.set.actionLevel.value };
  if (crossed === 'yes') return [block('atOrAboveActionLevel', id, because, params)];
  return crossed === 'unresolved' ? [block('notProvenBelow', id, because, params)] : [];
}

function sampledBlocks(measurement: Measurement): DeterminationBlock[] {
  const { id, finding, because } = measurement;
  if (!finding) return [];
  const found: DeterminationBlock[] = [];
  if (finding.unknownMin > 0) found.push(block('minutesUnknown', id, because, { unknownMin: finding.unknownMin }));
  if (finding.regular === null) found.push(block('notAskedWhetherRegular', id, because));
  if (finding.regular === 'no') found.push(block('irregularDay', id, because));
  return found;
}

/** A measurement that was reported to us has no flow readings: what it rests on was asked, and anything but a yes blocks. */
function reportedBlocks(measurement: Measurement, book: Book): DeterminationBlock[] {
  if (measurement.finding) return [];
  const { id, from, because } = measurement;
  const record = book.reported.get(id);
  if (!record) return [block('notOwnData', id, because)];
  const found = recordDoubts(record).map((one) => ofReason(one, id));
  const notOurs = record.ownFirm === 'no' || from === 'inspector' || from === 'otherEmployer';
  if (notOurs || record.ownFirm !== 'yes')
    found.push(block('notOwnData', id, because, { from, said: notOurs ? 'notOurs' : 'notAsked' }));
  if (record.accuracy !== 'yes') found.push(block('accuracyNotStated', id, because));
  if (record.fullShift !== 'yes') found.push(block('notFullShift', id, because));
  return found;
}

/** The months of (d)(3)(iii); where the state's own rule is not held, the federal ones, and `ruleNotHeld` blocks anyway. */
export function historicalMonths({ limits, workOn }: Measurement): number {
  const duties = limits.set.duties ?? limitSetOn(workOn, '').set.duties;
  if (!duties) throw new Error('no rule on earlier data is held');
  return duties.historical.months.value;
}

/** Obtained within the past twelve months on the day on which it is relied on? */
export function ageBlocks(measurement: Measurement, reliedOn: string): DeterminationBlock[] {
  const monthsCount = historicalMonths(measurement);
  const until = addMonths(measurement.workOn, monthsCount);
  if (until >= reliedOn) return [];
  const { id, because, workOn } = measurement;
  return [block('tooOld', id, because, { workOn, reliedOn, monthsCount })];
}

const nameOf = ({ key, measurementId, params }: DeterminationBlock): string =>
  `${key} ${measurementId} ${params.reason ?? ''}${params.ofSampleNumber ?? ''}${params.term ?? ''}${params.on ?? ''}`;

/** Each matter once. The general ones say more where they came from a reason, so the first of a name stands. */
export function once(blocks: readonly DeterminationBlock[]): readonly DeterminationBlock[] {
  const found = new Map<string, DeterminationBlock>();
  for (const one of blocks) if (!found.has(nameOf(one))) found.set(nameOf(one), one);
  return [...found.values()];
}

/** Of a day that we sampled the measurement tells all; the same object gives the same blocks. */
const heldBlocks = new WeakMap<Measurement, readonly DeterminationBlock[]>();

/** Everything against it but its age and whom it stands for. Empty only where it proves that the day was below the action level. */
export function evidenceBlocks(measurement: Measurement, book: Book): readonly DeterminationBlock[] {
  if (!measurement.finding) return freshBlocks(measurement, book);
  const held = heldBlocks.get(measurement) ?? freshBlocks(measurement, book);
  heldBlocks.set(measurement, held);
  return held;
}

function freshBlocks(measurement: Measurement, book: Book): readonly DeterminationBlock[] {
  const { id, limits, because } = measurement;
  const found = [
    ...reportedBlocks(measurement, book),
    ...findingReasons(measurement).map((one) => ofReason(one, id)),
    ...sampledBlocks(measurement),
    ...figureBlocks(measurement),
  ];
  if (measurement.resultOwed) found.push(block('resultOwed', id, because));
  if (!limits.heldComplete || measurement.finding?.ruleHeld === false) found.push(block('ruleNotHeld', id, because));
  // whatever else keeps it from proving anything has no key of its own, and blocks all the same
  if (found.length === 0 && (!measurement.provesBelowActionLevel || isHigh(measurement)))
    found.push(block('notProvenBelow', id, because));
  return once(found);
}
