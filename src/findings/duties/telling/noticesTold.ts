/** Who was told what, and when: which notices count for which worker, and whether they tell the results as they are now. */
import { dayOf } from '#core/calendar.ts';
import { sideOf } from '#core/comparison.ts';
import type { Estimate } from '#core/estimate.ts';
import type { Book, NoticeRecord } from '#records/book.ts';
import type { Measurement } from '../measuring/measurement.ts';

/** A statement of the PEL and of corrective action is asked for: also where bounds straddle the PEL (careful side). */
export const statementAsked = ({ atOrAbovePel }: Pick<Measurement, 'atOrAbovePel'>): boolean => atOrAbovePel !== 'no';

const endsOf = (estimate: Estimate): readonly number[] =>
  estimate.kind === 'exact'
    ? [estimate.value]
    : estimate.kind === 'atLeast'
      ? [estimate.lower]
      : [estimate.lower, estimate.upper];

/** The same figure, as far as limits are told apart. */
function isSameFigure(told: unknown, now: Estimate | null): boolean {
  if (told === null || now === null || typeof told !== 'object') return told === now;
  const was = told as Estimate;
  if (was.kind !== now.kind) return false;
  const then = endsOf(was);
  return endsOf(now).every((end, index) => typeof then[index] === 'number' && sideOf(then[index], end) === 0);
}

/** The values that it was made with hold the figure; a notice without them is judged by the results that it names alone. */
function tellsFigure({ issued }: NoticeRecord, now: Estimate | null): boolean {
  const values: { readonly twa8UgPerM3?: unknown } = issued.notice;
  return values.twa8UgPerM3 === undefined || isSameFigure(values.twa8UgPerM3, now);
}

/** The statement and the corrective action stand in it wherever they are asked for now. */
const tellsStatement = ({ issued }: NoticeRecord, measurement: Measurement): boolean =>
  !statementAsked(measurement) || (issued.pelStatement && (issued.correctiveAction ?? '').trim() !== '');

export interface Telling {
  readonly notice: NoticeRecord;
  /** Results that it names, and those that a result it names replaced. */
  readonly tells: ReadonlySet<string>;
  /** Everything that is to be told now stands in it. */
  readonly whole: boolean;
  /** By worker: the first day on which it was given or posted. */
  readonly toldOn: ReadonlyMap<string, string>;
}

/** By result: those of the same cassette that came before it. */
function replacedBy(measurement: Measurement, book: Book): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  for (const { sampleId } of measurement.finding?.samples ?? []) {
    const ids = book.samples.get(sampleId)?.results.map(({ factId }) => factId) ?? [];
    ids.forEach((id, index) => {
      found.set(id, ids.slice(0, index));
    });
  }
  return found;
}

/** Handed over, read aloud and refused count for the worker, posted for all it names; nobody counts whom it does not name. */
function toldOnOf({ issued, given }: NoticeRecord, zone: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const one of given) {
    const on = dayOf(one.at, zone);
    for (const workerId of one.workerId === null ? issued.workerIds : [one.workerId]) {
      const earlier = found.get(workerId);
      if (issued.workerIds.includes(workerId) && (earlier === undefined || on < earlier)) found.set(workerId, on);
    }
  }
  return found;
}

/** Without a site the day is counted in UTC: later than in the US, so that late is never called in time. */
const zoneOf = ({ siteId }: Measurement, book: Book): string => (siteId && book.sites.get(siteId)?.zone) || 'UTC';

/** The notices of a measurement as they count, in the order in which they were issued. */
export function tellingsOf(measurement: Measurement, notices: readonly NoticeRecord[], book: Book): readonly Telling[] {
  if (notices.length === 0) return [];
  const replaced = replacedBy(measurement, book);
  const zone = zoneOf(measurement, book);
  const inOrder = [...notices].sort((a, b) => (a.issued.at < b.issued.at ? -1 : a.issued.at > b.issued.at ? 1 : 0));
  return inOrder.map((notice) => {
    const tells = new Set(notice.issued.resultFactIds.flatMap((id) => [id, ...(replaced.get(id) ?? [])]));
    const whole =
      measurement.receipts.every(({ factId }) => tells.has(factId)) &&
      tellsFigure(notice, measurement.twa8UgPerM3) &&
      tellsStatement(notice, measurement);
    // what a newer version says of it may take it back: it counts for nobody until it is understood
    const toldOn = notice.notUnderstood.length > 0 ? new Map<string, string>() : toldOnOf(notice, zone);
    return { notice, tells, whole, toldOn };
  });
}
