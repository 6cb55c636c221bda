/** Facts that another device wrote, as they lie here after its file was taken in whole: journal and derived rows, nothing decided. */
import type { NewFact } from '#records/fact.ts';
import type { JournalRow } from '#store/database.ts';
import { derivedRow } from '#store/folding.ts';
import { theSession } from '#store/session.ts';
import type { Writer } from '../records/facts.ts';

export interface ForeignFact {
  readonly fact: NewFact;
  /** Overrides the envelope: unknown kinds and keys too. */
  readonly extra?: Readonly<Record<string, unknown>>;
}

/** A device that goes on writing: hand the same one in again for its later facts. Answers the ids. */
export async function arrive(writer: Writer, facts: readonly (NewFact | ForeignFact)[]): Promise<readonly string[]> {
  const { db } = theSession();
  const from = writer.entries.length;
  const ids = facts.map((one) => ('fact' in one ? writer.add(one.fact, one.extra) : writer.add(one)));
  const rows = writer.entries.slice(from).map(({ id, text, link }): JournalRow => {
    const { about } = JSON.parse(text) as { about: string[] };
    return { id, about, text, link };
  });
  await db.transaction('rw', db.journal, db.records, async () => {
    await db.journal.bulkAdd(rows);
    for (const key of new Set(rows.flatMap(({ about }) => about))) {
      const row = derivedRow(key, await db.journal.where('about').equals(key).toArray());
      if (row !== null) await db.records.put(row);
    }
  });
  return ids;
}
