/** What the field record of one sample leaves open: fitting, looks, mishaps, clock, numbers. */
import type { Book, LotRecord, RecordBase, SampleRecord } from '#records/book.ts';
import { bookDoubts } from './bookDoubts.ts';
import { isHotWork } from './fittingPoints.ts';
import { daysOfSample, doubtsOn, hasDoubts } from './gear/doubtsOf.ts';
import { type Reason, reason } from './reason.ts';
import { recordDoubts } from './recordDoubts.ts';

/** The points of the fitting that a figure stands on. Inside the helmet only matters for hot work. */
const points = [
  'breathingZone',
  'outsideRespirator',
  'inletDown',
  'plugsOff',
  'running',
  'tubingSecured',
  'pumpSecured',
] as const;

function fittingReasons(sample: SampleRecord): Reason[] {
  const { fitting } = sample;
  if (!fitting) return [reason('fittingNotRecorded', sample.factIds.slice(0, 1))];
  const because = sample.factIds.slice(0, 1);
  const found: Reason[] = [];
  for (const point of points) if (!fitting.points[point]) found.push(reason('fittingPointMissed', because, { point }));
  if (!isHotWork(sample.taskIds)) return found;
  const { insideHelmet } = fitting.points;
  if (insideHelmet === null) found.push(reason('helmetNotStated', because));
  else if (!insideHelmet) found.push(reason('fittingPointMissed', because, { point: 'insideHelmet' }));
  return found;
}

function eventReasons(sample: SampleRecord): Reason[] {
  const found: Reason[] = [];
  for (const { mishap, factId } of sample.mishaps) found.push(reason('mishap', [factId], { mishap }));
  for (const { factId, fault } of sample.faults) {
    found.push(reason('pumpFaulted', [factId], { fault }));
    if (fault === 'flowDropped') found.push(reason('flowDroppedOnTheWay', [factId]));
  }
  for (const look of sample.looks) {
    if (!look.running) found.push(reason('lookedNotRunning', [look.factId]));
    if (!look.inPlace) found.push(reason('lookedNotInPlace', [look.factId]));
  }
  for (const { factId, kind } of sample.clockDoubts)
    found.push(reason(kind === 'setBack' ? 'clockSetBack' : 'clockOutOfOrder', [factId]));
  return found;
}

function mediaReasons(sample: SampleRecord, book: Book): Reason[] {
  const lot = book.lots.get(sample.lotId);
  const found: Reason[] = [...lotConflicts(lot)];
  if (lot?.expiresOn && lot.expiresOn < sample.workOn)
    found.push(reason('lotExpired', lot.factIds, { expiresOn: lot.expiresOn }));
  if (sample.stopped && !sample.sealed) found.push(reason('notSealed', [sample.stopped.factId]));
  for (const other of book.samples.values())
    if (other.id !== sample.id && other.sampleNumber === sample.sampleNumber) {
      found.push(
        reason('numberTwice', [...sample.factIds.slice(0, 1), ...other.factIds.slice(0, 1)], {
          sampleNumber: sample.sampleNumber,
        }),
      );
      break;
    }
  return found;
}

/** The pump and the lot, where they were found bad; the flow meter is the flow check's. */
function gearReasons(sample: SampleRecord, book: Book): Reason[] {
  const pump = book.pumps.get(sample.pumpId ?? '');
  const lot = book.lots.get(sample.lotId);
  if (!hasDoubts(pump) && !hasDoubts(lot)) return [];
  const { fromOn, toOn } = daysOfSample(sample, book);
  return [...doubtsOn(pump, fromOn, toOn), ...doubtsOn(lot, fromOn, toOn)];
}

/** Corrections of the lot that contradict each other; whose it is, and what is said of doubts about it, bear on no figure by themselves. */
const lotConflicts = (lot: LotRecord | undefined): readonly Reason[] =>
  recordDoubts({
    conflicts: (lot?.conflicts ?? []).filter(({ path }) => !/^\/(held$|doubts\/)/.test(path)),
    notUnderstood: [],
  });

/** Two devices packed it, each into a box of its own: which sheet, which blanks and which method go with it, nobody knows. */
function boxReasons(sample: SampleRecord, book: Book): Reason[] {
  const boxes = [...book.boxes.values()].filter(({ packed }) => packed.sampleIds.includes(sample.id));
  if (boxes.length < 2) return [];
  const because = boxes.map(({ packedFactId }) => packedFactId);
  return [reason('inTwoBoxes', because, { boxesCount: boxes.length })];
}

/** One pump is on one worker at a time; two records that say otherwise came from two hands or from typed times. */
function pumpReasons(sample: SampleRecord, book: Book): Reason[] {
  const { putOn, stopped, pumpId } = sample;
  if (!putOn || pumpId === null) return [];
  for (const other of book.samples.values()) {
    if (other.id === sample.id || other.pumpId !== pumpId || !other.putOn || other.voided) continue;
    const apart = (stopped && stopped.at <= other.putOn.at) || (other.stopped && other.stopped.at <= putOn.at);
    if (!apart)
      return [reason('pumpOnAnother', [putOn.factId, other.putOn.factId], { otherNumber: other.sampleNumber })];
  }
  return [];
}

/** Facts of a newer version about what the sample stands in: nobody here knows what they take back. */
function aroundReasons(sample: SampleRecord, book: Book): Reason[] {
  const { shiftId, siteId, lotId, pumpId, workerId } = sample;
  const found: Reason[] = [];
  const see = (record: Pick<RecordBase, 'notUnderstood'> | null | undefined): void => {
    if (record && record.notUnderstood.length > 0) found.push(reason('notUnderstood', record.notUnderstood));
  };
  see(book.book);
  see(book.shifts.get(shiftId));
  see(book.sites.get(siteId));
  see(book.lots.get(lotId));
  if (pumpId !== null) see(book.pumps.get(pumpId));
  if (workerId !== null) see(book.people.get(workerId));
  for (const box of book.boxes.values()) if (box.packed.sampleIds.includes(sample.id)) see(box);
  return found;
}

/** A void needs no reason to count; without one it says so. With a result that nobody judged who knew both, it says that too. */
function voidReasons({ voided, voidAgainstResult, results }: SampleRecord): Reason[] {
  if (!voided) return [];
  const found = [reason('voided', [voided.factId], { why: voided.why ?? '' })];
  const because = [voided.factId, ...results.map(({ factId }) => factId)];
  return voidAgainstResult === true ? [...found, reason('voidAgainstResult', because)] : found;
}

export function fieldReasons(sample: SampleRecord, book: Book): Reason[] {
  if (sample.sampleKind === 'blank')
    return [
      ...voidReasons(sample),
      ...mediaReasons(sample, book),
      ...gearReasons(sample, book),
      ...boxReasons(sample, book),
      ...recordDoubts(sample),
      ...aroundReasons(sample, book),
      ...bookDoubts(sample.workOn, book),
    ];
  const open: Reason[] = [];
  if (!sample.putOn) open.push(reason('notPutOn', sample.factIds.slice(0, 1)));
  else if (!sample.stopped) open.push(reason('stillRunning', [sample.putOn.factId]));
  return [
    ...voidReasons(sample),
    ...open,
    ...(sample.putOn ? fittingReasons(sample) : []),
    ...eventReasons(sample),
    ...pumpReasons(sample, book),
    ...mediaReasons(sample, book),
    ...gearReasons(sample, book),
    ...boxReasons(sample, book),
    ...recordDoubts(sample),
    ...aroundReasons(sample, book),
    ...bookDoubts(sample.workOn, book),
  ];
}
