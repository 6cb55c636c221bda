/** The head of each writer's chain: printed on papers that leave the firm, so that a later change of what stood before can be shown. */
import { factIdOf, sequenceOf, writerOf } from '#records/chain.ts';
import type { BookDatabase } from './database.ts';
import { theSession } from './session.ts';

export interface ChainHead {
  readonly factId: string;
  readonly link: string;
}

/** All ids of a writer from one sequence to another, both included. */
export const idsOf = (db: BookDatabase, writer: string, fromCount: number, toCount: number) =>
  db.journal.where('id').between(factIdOf(writer, fromCount), factIdOf(writer, toCount), true, true);

/** Last of a writer's facts in id order; ids of one writer sort by sequence. */
async function headOf(db: BookDatabase, writer: string): Promise<ChainHead | null> {
  const row = await db.journal.where('id').between(`${writer}.`, `${writer}.\uffff`).last();
  return row === undefined ? null : { factId: row.id, link: row.link };
}

/** One head a writer, in order of writers. Each is found by the index, none is read over. */
export async function headsIn(db: BookDatabase): Promise<ChainHead[]> {
  const heads: ChainHead[] = [];
  let after = '';
  for (;;) {
    const next = await db.journal.where('id').above(after).first();
    if (next === undefined) return heads;
    const writer = writerOf(next.id);
    const head = await headOf(db, writer);
    if (head !== null && sequenceOf(head.factId) >= 1) heads.push(head);
    // A row whose key is no fact's id hides nothing of what comes after it.
    after = head === null ? next.id : `${writer}.\uffff`;
  }
}

/** This device's own head and those of the writers taken in. */
export const chainHeads = (): Promise<ChainHead[]> => headsIn(theSession().db);

/** Up to which sequence a writer is known to be held without a gap. Nothing is ever taken out of a journal, so this only grows. */
const whole = new WeakMap<BookDatabase, Map<string, number>>();

export const knownWhole = (db: BookDatabase, writer: string): number => whole.get(db)?.get(writer) ?? 0;

export function noteWhole(db: BookDatabase, writer: string, toCount: number): void {
  const known = whole.get(db) ?? new Map<string, number>();
  known.set(writer, Math.max(toCount, known.get(writer) ?? 0));
  whole.set(db, known);
}

/** The highest sequence up to which none is missing, found by counting ids in halves: no row is read. */
async function wholeTo(db: BookDatabase, writer: string, lastCount: number): Promise<number> {
  let low = Math.min(knownWhole(db, writer), lastCount);
  let high = lastCount;
  let middle = high;
  while (low < high) {
    const isWhole = (await idsOf(db, writer, low + 1, middle).count()) === middle - low;
    if (isWhole) low = middle;
    else high = middle - 1;
    middle = Math.ceil((low + high) / 2);
  }
  noteWhole(db, writer, low);
  return low;
}

/** Up to where each of these writers is held from its first entry on without a gap; a writer whose first entry is missing has no such head. */
export async function wholeHeads(db: BookDatabase, heads: readonly ChainHead[]): Promise<ChainHead[]> {
  const found: ChainHead[] = [];
  for (const head of heads) {
    const writer = writerOf(head.factId);
    const toCount = await wholeTo(db, writer, sequenceOf(head.factId));
    const row = toCount === 0 ? undefined : await db.journal.get(factIdOf(writer, toCount));
    if (row !== undefined) found.push({ factId: row.id, link: row.link });
  }
  return found;
}
