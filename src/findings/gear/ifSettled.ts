/**
 * What a decision about a doubt would change, found before it is taken: the same findings over the same book with that decision in it.
 * Nothing of this is written down.
 */
import { lowerOf, upperOf } from '#core/estimate.ts';
import type { Book, GearDoubt } from '#records/book.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import { findDuties } from '../duties/findDuties.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import type { GearRecord } from './doubtsOf.ts';

export interface Decision {
  readonly decision: NonNullable<GearDoubt['settled']>['decision'];
  /** With `asFound`: true flow over the flow that the meter read. */
  readonly trueOverRead: number | null;
}

/** Ids of measurements and of open duties that would stand otherwise than now. */
export interface IfSettled {
  readonly lowAgainIds: readonly string[];
  readonly lowNoMoreIds: readonly string[];
  readonly figureIds: readonly string[];
  /** Their upper bound would be higher than it stands now. */
  readonly higherIds: readonly string[];
  readonly dutiesComeIds: readonly string[];
  readonly dutiesGoIds: readonly string[];
}

type Doubted = Pick<GearDoubt, 'gear' | 'gearId' | 'doubtId'>;

function decided<R extends GearRecord>(
  records: ReadonlyMap<string, R>,
  { gearId, doubtId }: Doubted,
  { decision, trueOverRead }: Decision,
  onDay: string,
): ReadonlyMap<string, R> {
  const record = records.get(gearId);
  if (!record) return records;
  const settled = { decision, trueOverRead, why: decision, factId: '', onDay };
  const doubts = (record.doubts ?? []).map((one) => (one.doubtId === doubtId ? { ...one, settled } : one));
  // in its own place: the order of a list is part of what a book says
  return new Map([...records].map(([id, one]) => [id, id === gearId ? { ...one, doubts } : one] as const));
}

function bookIf(doubt: Doubted, decision: Decision, book: Book, onDay: string): Book {
  if (doubt.gear === 'pump') return { ...book, pumps: decided(book.pumps, doubt, decision, onDay) };
  if (doubt.gear === 'meter') return { ...book, meters: decided(book.meters, doubt, decision, onDay) };
  return { ...book, lots: decided(book.lots, doubt, decision, onDay) };
}

/** How much a measurement proves low: neither, not above the PEL, below the action level too. */
const provesLow = ({ provesNotAbovePel, provesBelowActionLevel }: Measurement): number =>
  Number(provesNotAbovePel) + Number(provesBelowActionLevel);

const openIds = ({ duties }: DutiesOfBook): readonly string[] =>
  duties.filter(({ done }) => done === null).map(({ id }) => id);

const without = (ids: readonly string[], others: readonly string[]): readonly string[] => {
  const known = new Set(others);
  return ids.filter((id) => !known.has(id));
};

/** `duties`: what follows from the book as it is. */
export function ifSettled(doubt: Doubted, decision: Decision, book: Book, duties: DutiesOfBook): IfSettled {
  const ifSo = findDuties(bookIf(doubt, decision, book, duties.today), duties.today, duties);
  const pairs = [...duties.measurements.values()].flatMap((now) => {
    const one = ifSo.measurements.get(now.id);
    return one === undefined || one === now ? [] : [{ now, one }];
  });
  const idsWhere = (differs: (now: Measurement, one: Measurement) => boolean): readonly string[] =>
    pairs.filter((pair) => differs(pair.now, pair.one)).map(({ now }) => now.id);
  const upper = ({ twa8UgPerM3 }: Measurement): number => (twa8UgPerM3 === null ? 0 : upperOf(twa8UgPerM3));
  const lower = ({ twa8UgPerM3 }: Measurement): number => (twa8UgPerM3 === null ? 0 : lowerOf(twa8UgPerM3));
  return {
    lowAgainIds: idsWhere((now, one) => provesLow(one) > provesLow(now)),
    lowNoMoreIds: idsWhere((now, one) => provesLow(one) < provesLow(now)),
    figureIds: idsWhere((now, one) => upper(one) !== upper(now) || lower(one) !== lower(now)),
    higherIds: idsWhere((now, one) => upper(one) > upper(now)),
    dutiesComeIds: without(openIds(ifSo), openIds(duties)),
    dutiesGoIds: without(openIds(duties), openIds(ifSo)),
  };
}
