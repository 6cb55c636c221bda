/** Why something cannot be made yet: a custody sheet, a day's finding. Keys and values; sentences stand in src/words/findings.ts. */
import type { Book, BoxRecord, SampleRecord } from '#records/book.ts';
import { keyOf } from '#records/common.ts';
import { blanksNeeded } from './blanks.ts';
import { checksOfSample } from './checks.ts';
import { findWorkday } from './workday.ts';

export type GapKey =
  | 'boxNotPacked'
  | 'siteMissing'
  | 'laboratoryMissing'
  | 'samplerMissing'
  | 'firmMissing'
  | 'sampleMissing'
  | 'sampleOpen'
  | 'sampleNotStarted'
  | 'numberTwice'
  | 'lotMissing'
  | 'blanksMissing'
  | 'blankLotMissing'
  | 'methodNotStated'
  | 'reportingLimitNotStated'
  | 'flowBeforeMissing'
  | 'flowAfterMissing'
  | 'notSealed'
  | 'notLabelled'
  | 'identifierMissing'
  | 'accreditationMissing'
  | 'addressMissing'
  | 'noSample'
  | 'hoursNotStated'
  | 'otherWorkNotAsked'
  | 'resultAwaited'
  | 'minutesUnknown'
  | 'regularNotSaid'
  | 'conditionsMissing';

export interface Gap {
  readonly key: GapKey;
  /** `stops`: it cannot be made; `open`: it can, and says what is missing. */
  readonly weight: 'stops' | 'open';
  readonly recordKey: string | null;
  readonly params: Readonly<Record<string, string | number>>;
}

const gap = (key: GapKey, weight: Gap['weight'], recordKey: string | null = null, params: Gap['params'] = {}): Gap => ({
  key,
  weight,
  recordKey,
  params,
});

/** The box's samples that the slice holds, in the order in which they were packed. */
export const samplesOfBox = (box: BoxRecord, book: Book): SampleRecord[] =>
  box.packed.sampleIds.flatMap((id) => book.samples.get(id) ?? []);

function headGaps(box: BoxRecord, book: Book): Gap[] {
  const { packed } = box;
  const laboratory = book.laboratories.get(packed.laboratoryId);
  const boxKey = keyOf('box', box.id);
  const checks: readonly (readonly [boolean, Gap])[] = [
    [book.book === null, gap('firmMissing', 'stops')],
    [!book.sites.has(packed.siteId), gap('siteMissing', 'stops', boxKey)],
    [laboratory === undefined, gap('laboratoryMissing', 'stops', boxKey)],
    [!book.people.has(packed.samplerId), gap('samplerMissing', 'stops', boxKey)],
    [packed.methodId === null, gap('methodNotStated', 'open', boxKey)],
    [packed.reportingLimitUg === null, gap('reportingLimitNotStated', 'open', boxKey)],
    [laboratory?.accreditation === null, gap('accreditationMissing', 'open', keyOf('laboratory', packed.laboratoryId))],
    [laboratory?.address === null, gap('addressMissing', 'open', keyOf('laboratory', packed.laboratoryId))],
  ];
  return checks.filter(([missing]) => missing).map(([, found]) => found);
}

function airGaps(sample: SampleRecord, box: BoxRecord, book: Book): Gap[] {
  const key = keyOf('sample', sample.id);
  const about = { sampleNumber: sample.sampleNumber };
  if (!sample.putOn) return [gap('sampleNotStarted', 'stops', key, about)];
  if (!sample.stopped) return [gap('sampleOpen', 'stops', key, about)];
  const { before, after } = checksOfSample(sample, book);
  const worker = sample.workerId === null ? undefined : book.people.get(sample.workerId);
  const found: Gap[] = [];
  if (!before) found.push(gap('flowBeforeMissing', 'open', key, about));
  if (!after) found.push(gap('flowAfterMissing', 'open', key, about));
  if (box.packed.workersShownAs === 'identifier' && !worker?.identifier)
    found.push(gap('identifierMissing', 'open', keyOf('person', sample.workerId ?? 'unknown'), about));
  return found;
}

function sampleGaps(sample: SampleRecord, box: BoxRecord, book: Book): Gap[] {
  const key = keyOf('sample', sample.id);
  const about = { sampleNumber: sample.sampleNumber };
  const found: Gap[] = sample.sampleKind === 'air' ? airGaps(sample, box, book) : [];
  if (!book.lots.has(sample.lotId)) found.push(gap('lotMissing', 'stops', key, about));
  if (!sample.sealed && sample.sampleKind === 'air') found.push(gap('notSealed', 'open', key, about));
  else if (sample.sealed && !sample.sealed.labelled) found.push(gap('notLabelled', 'open', key, about));
  return found;
}

function blankGaps(samples: readonly SampleRecord[], boxKey: string): Gap[] {
  const air = samples.filter(({ sampleKind }) => sampleKind === 'air');
  const blanks = samples.filter(({ sampleKind }) => sampleKind === 'blank');
  const { count } = blanksNeeded(air.length, 'tenPercent');
  const found: Gap[] = [];
  if (blanks.length < count)
    found.push(gap('blanksMissing', 'open', boxKey, { blanksCount: blanks.length, wantedCount: count }));
  const blankLots = new Set(blanks.map(({ lotId }) => lotId));
  if (blanks.length > 0 && air.some(({ lotId }) => !blankLots.has(lotId)))
    found.push(gap('blankLotMissing', 'open', boxKey));
  return found;
}

function twiceGaps(samples: readonly SampleRecord[]): Gap[] {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const { sampleNumber } of samples) (seen.has(sampleNumber) ? twice : seen).add(sampleNumber);
  return [...twice].map((sampleNumber) => gap('numberTwice', 'stops', null, { sampleNumber }));
}

/** What is missing for the custody sheet of a box. */
export function custodyGaps(boxId: string, book: Book): Gap[] {
  const box = book.boxes.get(boxId);
  if (!box) return [gap('boxNotPacked', 'stops')];
  const boxKey = keyOf('box', boxId);
  const samples = samplesOfBox(box, book);
  const missingCount = box.packed.sampleIds.length - samples.length;
  return [
    ...headGaps(box, book),
    ...(missingCount > 0 ? [gap('sampleMissing', 'stops', boxKey, { missingCount })] : []),
    ...twiceGaps(samples),
    ...samples.flatMap((sample) => sampleGaps(sample, box, book)),
    ...blankGaps(samples, boxKey),
  ];
}

const dayGapKeys = [
  'noSample',
  'hoursNotStated',
  'otherWorkNotAsked',
  'resultAwaited',
  'minutesUnknown',
  'regularNotSaid',
] as const;

/** What is missing for a worker's day. */
export function workdayGaps(workdayId: string, book: Book): Gap[] {
  const day = findWorkday(workdayId, book);
  const key = keyOf('workday', workdayId);
  const found = day.reasons.flatMap((why): Gap[] => {
    const known = dayGapKeys.find((one) => one === why.key);
    return known ? [gap(known, 'open', key, why.params)] : [];
  });
  const shifts = new Set(day.samples.map(({ sampleId }) => book.samples.get(sampleId)?.shiftId));
  for (const shiftId of shifts)
    if (shiftId !== undefined && !book.shifts.get(shiftId)?.conditions)
      found.push(gap('conditionsMissing', 'open', keyOf('shift', shiftId)));
  return found;
}
