/** What bills have paid for already. One with a box pays for what is in it, whenever and for whichever job it was written down. */
import type { Book, SpendingRecord } from '#records/book.ts';
import type { MoneyKind } from './moneyFinding.ts';
import { isWithin, type Time } from './moneyUnits.ts';

export interface Billed {
  readonly book: Book;
  readonly time: Time;
  /** Not struck, of every job. */
  readonly bills: readonly SpendingRecord[];
  /** Whether a thing of this site is of the job asked about. */
  readonly isHere: (siteId: string | null) => boolean;
}

/** Of the kind that is billed, what the box holds, oldest first; null: a box does not tell. */
function inBox({ boxId, spentFor }: SpendingRecord, { boxes, samples }: Book) {
  const box = boxes.get(boxId ?? '');
  if (!box) return null;
  if (spentFor === 'courier') return [{ siteId: box.packed.siteId, on: box.packedAt.slice(0, 10) }];
  if (spentFor !== 'analysis' && spentFor !== 'blank') return null;
  const kind = spentFor === 'blank' ? 'blank' : 'air';
  const held = box.packed.sampleIds.flatMap((id) => samples.get(id) ?? []).filter((one) => one.sampleKind === kind);
  return held.map(({ siteId, workOn: on }) => ({ siteId, on })).sort((a, b) => a.on.localeCompare(b.on));
}

/** How many a bill was for: as said, or by its box; null: nobody knows. */
export function countOf(bill: SpendingRecord, book: Book): number | null {
  if (bill.count !== null) return bill.count;
  return bill.spentFor === 'courier' ? 1 : (inBox(bill, book)?.length ?? null);
}

/** The job that a bill is of: said, or that of its box. */
export const siteOfBill = ({ siteId, boxId }: SpendingRecord, book: Book): string | null =>
  siteId ?? book.boxes.get(boxId ?? '')?.packed.siteId ?? null;

/** Those of one box together pay for each thing in it once. */
function ofBox(bills: readonly SpendingRecord[], { book, time, isHere }: Billed): number {
  const [first] = bills;
  const held = (first && inBox(first, book)) ?? [];
  const paidCount = bills.reduce((sum, bill) => sum + (countOf(bill, book) ?? 0), 0);
  return held.slice(0, paidCount).filter(({ siteId, on }) => isHere(siteId) && isWithin(on, time)).length;
}

/** How many of a kind are paid for, and how many bills of that time do not say for how many they were. */
export function billedOf(of: MoneyKind, billed: Billed): { readonly count: number; readonly withoutCount: number } {
  const { book, time, bills, isHere } = billed;
  const byBox = new Map<string, SpendingRecord[]>();
  const loose: SpendingRecord[] = [];
  for (const bill of bills) {
    if (bill.spentFor !== of) continue;
    if (inBox(bill, book)) byBox.set(bill.boxId ?? '', [...(byBox.get(bill.boxId ?? '') ?? []), bill]);
    else if (isWithin(bill.spentOn, time) && isHere(siteOfBill(bill, book))) loose.push(bill);
  }
  const counts = loose.map((bill) => countOf(bill, book));
  const ofBoxes = [...byBox.values()].reduce((sum, own) => sum + ofBox(own, billed), 0);
  return {
    count: counts.reduce<number>((sum, count) => sum + (count ?? 0), ofBoxes),
    withoutCount: counts.filter((count) => count === null).length,
  };
}
