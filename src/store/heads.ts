/** The head of each writer's chain: printed on papers that leave the firm, so that a later change of what stood before can be shown. */
import { sequenceOf, writerOf } from '#records/chain.ts';
import type { BookDatabase } from './database.ts';
import { theSession } from './session.ts';

export interface ChainHead {
  readonly factId: string;
  readonly link: string;
}

/** Last of a writer's facts in id order; ids of one writer sort by sequence. */
async function headOf(db: BookDatabase, writer: string): Promise<ChainHead | null> {
  const row = await db.journal.where('id').between(`${writer}.`, `${writer}.\uffff`).last();
  return row === undefined ? null : { factId: row.id, link: row.link };
}

/** One head a writer, in order of writers: this device's own and those taken in. Each is found by the index, none is read over. */
export async function chainHeads(): Promise<ChainHead[]> {
  const { db } = theSession();
  const heads: ChainHead[] = [];
  let after = '';
  for (;;) {
    const next = await db.journal.where('id').above(after).first();
    if (next === undefined) return heads;
    const writer = writerOf(next.id);
    const head = await headOf(db, writer);
    if (head === null || sequenceOf(head.factId) < 1) return heads;
    heads.push(head);
    after = `${writer}.\uffff`;
  }
}
