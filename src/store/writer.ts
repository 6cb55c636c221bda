/**
 * Who writes in this database: 60 random bits, drawn anew whenever a database is created, restored into or found emptied, and when it
 * went back in time behind our back; so no id is ever issued twice. With it the two digits that its sample numbers begin with.
 */
import { sequenceOf, writerOf } from '#records/chain.ts';
import { prefixOf, prefixOfNumber } from '#records/sampleNumber.ts';
import type { BookDatabase, JournalRow, Which } from './database.ts';
import { newWriter } from './device.ts';
import { heldMark } from './marks.ts';

export interface Writer {
  readonly writer: string;
  readonly prefix: string;
  readonly lastSequence: number;
}

/** Prefixes of sample numbers that other writers gave. */
export function prefixesOfOthers(rows: Iterable<Pick<JournalRow, 'id' | 'text'>>, own: string): ReadonlySet<string> {
  const taken = new Set<string>();
  for (const { id, text } of rows) {
    if (writerOf(id) === own || !text.includes('"sampleNumber"')) continue;
    const number = /"sampleNumber"\s*:\s*"(\d{4,10})"/.exec(text)?.[1];
    if (number !== undefined) taken.add(prefixOfNumber(number));
  }
  return taken;
}

/** Draws a writer and keeps it in meta: inside the caller's transaction, if there is one over journal and meta. */
export async function drawWriter(db: BookDatabase, journal?: readonly JournalRow[]): Promise<Writer> {
  const writer = newWriter();
  const prefix = prefixOf(writer, prefixesOfOthers(journal ?? (await db.journal.toArray()), writer));
  await db.meta.bulkPut([
    { key: 'writer', value: writer },
    { key: 'prefix', value: prefix },
  ]);
  return { writer, prefix, lastSequence: 0 };
}

/** The writer that goes on in this database, or a new one where anything says that it was copied or went back in time. */
export async function writerFor(which: Which, db: BookDatabase): Promise<Writer> {
  const [writerRow, prefixRow] = await db.meta.bulkGet(['writer', 'prefix']);
  const mark = heldMark(which);
  if (mark === null || writerRow === undefined || prefixRow === undefined) return drawWriter(db);
  if (mark.writer !== writerRow.value) return drawWriter(db);
  const writer = String(writerRow.value);
  const last = await db.journal.where('id').between(`${writer}.`, `${writer}/`).last();
  const lastSequence = last === undefined ? 0 : sequenceOf(last.id);
  return mark.lastSequence > lastSequence ? drawWriter(db) : { writer, prefix: String(prefixRow.value), lastSequence };
}
