/** What a worker's day leaves open: hours, other work, minutes, results, and what its samples leave open. */
import type { Book, WorkdayRecord } from '#records/book.ts';
import { bookDoubts, isOfBook } from './bookDoubts.ts';
import { type Reason, reason } from './reason.ts';
import { recordDoubts } from './recordDoubts.ts';
import type { SampleFinding } from './sample.ts';

type OtherWork = 'callOut' | 'secondSite' | 'secondEmployer';

/** A call-out and a second site show as a piece with its place each; an employer as a piece with its employer. */
function withoutHours(day: WorkdayRecord, otherWork: NonNullable<WorkdayRecord['otherWork']>): OtherWork[] {
  const pieces = day.pieces ?? [];
  const placedCount = pieces.filter(({ place, employer }) => place !== null && employer === null).length;
  const placed = (['callOut', 'secondSite'] as const).filter((which) => otherWork[which] === 'yes').slice(placedCount);
  const hired = otherWork.secondEmployer === 'yes' && pieces.every(({ employer }) => employer === null);
  return hired ? [...placed, 'secondEmployer'] : placed;
}

/** The roster knows of a second place, no cassette was worn there, and the hours know of none. */
function onRosterElsewhere({ worked = [], pieces }: WorkdayRecord, sampledShifts: ReadonlySet<string>): boolean {
  const elsewhere = worked.some(({ shiftId }) => !sampledShifts.has(shiftId));
  return elsewhere && sampledShifts.size > 0 && (pieces ?? []).every(({ place }) => place === null);
}

function otherWorkReasons(day: WorkdayRecord, sampledShifts: ReadonlySet<string>): Reason[] {
  const { otherWork } = day;
  if (!otherWork) return [reason('otherWorkNotAsked', day.factIds)];
  if (otherWork.secondSite !== 'yes' && onRosterElsewhere(day, sampledShifts))
    return [reason('otherWorkWithoutHours', day.factIds, { which: 'secondSite' })];
  return withoutHours(day, otherWork).map((which) => reason('otherWorkWithoutHours', day.factIds, { which }));
}

function regularReasons({ regular, factIds }: WorkdayRecord): Reason[] {
  if (!regular) return [reason('regularNotSaid', factIds)];
  return regular.regular === 'yes' ? [] : [reason('notRegular', [regular.factId], { why: regular.reason ?? '' })];
}

/** A sample that was prepared and never put on says nothing of the day, unless the laboratory found something on it. */
const counts = ({ run, mass }: SampleFinding): boolean =>
  run.sampledMin > 0 || run.unsampledMin > 0 || run.running || mass !== null;

/** A reason of a sample, with its number, so that a day with two says which. Doubts of the whole book are the day's own. */
export const ofSample = (sample: SampleFinding): Reason[] =>
  sample.reasons
    .filter((one) => !isOfBook(one))
    .map((one) => ({ ...one, params: { ...one.params, ofSampleNumber: sample.sampleNumber } }));

const sampledShiftsOf = ({ id }: WorkdayRecord, { samples }: Book): ReadonlySet<string> =>
  new Set([...samples.values()].flatMap(({ workdayId, shiftId }) => (workdayId === id ? [shiftId] : [])));

export function dayReasons(
  day: WorkdayRecord,
  samples: readonly SampleFinding[],
  minutes: { readonly unknownMin: number; readonly awaitedMin: number },
  book: Book,
): Reason[] {
  const found: Reason[] = [...bookDoubts(day.workOn, book)];
  const used = samples.filter(counts);
  if (used.length === 0) found.push(reason('noSample', day.factIds));
  if (!day.pieces) found.push(reason('hoursNotStated', day.factIds));
  found.push(...otherWorkReasons(day, sampledShiftsOf(day, book)), ...regularReasons(day), ...recordDoubts(day));
  if (minutes.awaitedMin > 0) found.push(reason('resultAwaited', [], { awaitedMin: minutes.awaitedMin }));
  if (minutes.unknownMin > 0) found.push(reason('minutesUnknown', [], { unknownMin: minutes.unknownMin }));
  for (const sample of used) found.push(...ofSample(sample));
  return found;
}
