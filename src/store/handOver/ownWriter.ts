/** What a file does to the writer of this device: its sample numbers step aside, or it is another one from here on. */
import { sequenceOf, writerOf } from '#records/chain.ts';
import { prefixOf } from '#records/sampleNumber.ts';
import { setHeldMark } from '../marks.ts';
import type { Session } from '../session.ts';
import { drawWriter, prefixesOfOthers, type Writer } from '../writer.ts';
import type { Contents } from './contents.ts';

/** Where another writer of the book gives numbers under our two digits, we step on. In the caller's transaction. */
async function stepOnPrefix(session: Session, { numbered }: Contents): Promise<void> {
  const { db, writer } = session;
  const rows = numbered.map(({ row }) => row);
  if (!prefixesOfOthers(rows, writer).has(session.prefix)) return;
  const taken = prefixesOfOthers([...rows, ...(await db.journal.toArray())], writer);
  session.prefix = prefixOf(writer, taken);
  await db.meta.put({ key: 'prefix', value: session.prefix });
}

/**
 * Others hold entries of our own writer that we never wrote: a copy of this device writes as it does, or this one went back in time. From
 * here on we write as another, so that no id is given twice. null: nothing of the kind. In the caller's transaction.
 */
export async function writerAfter(session: Session, found: Contents): Promise<Writer | null> {
  const { db, writer } = session;
  const told = found.elsewhere.find((one) => one.writer === writer)?.toCount ?? 0;
  const arriving = found.rows.some(({ id }) => writerOf(id) === writer);
  const last = told === 0 ? undefined : await db.journal.where('id').between(`${writer}.`, `${writer}/`).last();
  if (arriving || told > (last === undefined ? 0 : sequenceOf(last.id))) return drawWriter(db);
  await stepOnPrefix(session, found);
  return null;
}

/** After the transaction is complete. */
export function goOnAs(session: Session, drawn: Writer): void {
  Object.assign(session, drawn);
  const { which, bookId, writer, lastSequence } = session;
  setHeldMark(which, { bookId, writer, lastSequence });
}
