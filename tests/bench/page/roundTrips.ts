/** Written, backed up, wiped, restored, again and again: each time the book comes back as it was, byte for byte, with a new writer. */
import Dexie from 'dexie';
import { databaseNames } from '#store/database.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { closeBook, openBooks } from '#store/opening.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { makeBackup } from '#tests/store/handOvers.ts';
import { entry, library, openingFacts, sampleOf } from '#tests/store/scenario.ts';
import { seededRandom } from '#tests/store/seeded.ts';

interface Held {
  readonly journal: string;
  readonly records: string;
}

async function held(): Promise<Held> {
  const { db } = theSession();
  const journal = await db.journal.orderBy('id').toArray();
  const records = await db.records.orderBy('key').toArray();
  const lines = journal.map(({ id, about, text, link }) => `${id} ${link} ${about.join(' ')} ${text}`);
  return { journal: lines.join('\n'), records: JSON.stringify(records) };
}

/** What a crew writes between two backups: a cassette prepared, put on, looked at a few times, stopped, sealed. */
async function work(between: (low: number, high: number) => number): Promise<void> {
  const day = library();
  const sample = sampleOf(day);
  const acts = [sample.prepared, sample.putOn, ...Array.from({ length: between(0, 4) }, () => sample.lookedAt)];
  if (between(0, 1) === 1) acts.push(sample.stopped);
  const written = [await write(openingFacts(day))];
  for (const act of acts) written.push(await write([act(entry())]));
  const refused = written.find(({ kind }) => kind !== 'written');
  if (refused !== undefined) throw new Error(JSON.stringify(refused));
}

async function wipe(which: 'forgotten' | 'evicted'): Promise<void> {
  await closeBook();
  await Dexie.delete(databaseNames.book);
  // Evicted: the browser has emptied the database, and its small storage remembers that a book was held.
  if (which === 'forgotten') localStorage.clear();
  await openBooks();
  const { kind } = bookState();
  if (kind !== (which === 'forgotten' ? 'none' : 'evicted')) throw new Error(`wiped, and the book is ${kind}`);
}

/** How many came back whole; throws at the first that did not. A book must be open. */
export async function roundTrips(count: number, seed: number): Promise<number> {
  const { between, pick } = seededRandom(seed);
  for (let done = 0; done < count; done += 1) {
    // Not every time: the book stays small enough for so many rounds.
    if (done % 5 === 0) await work(between);
    const before = await held();
    const { writer } = theSession();
    const { blob } = await makeBackup();
    await wipe(pick(['forgotten', 'evicted'] as const));
    const read = await lookInto(new File([blob], 'backup.zip'));
    if (read.kind !== 'preview') throw new Error(`round ${done}: the backup is refused, ${JSON.stringify(read)}`);
    const taken = await takeIn(read);
    if (taken.kind !== 'takenIn') throw new Error(`round ${done}: not taken in, ${taken.kind}`);
    const after = await held();
    if (after.journal !== before.journal) throw new Error(`round ${done}: the journal came back changed`);
    if (after.records !== before.records) throw new Error(`round ${done}: the records came back changed`);
    if (theSession().writer === writer) throw new Error(`round ${done}: the writer goes on under its old name`);
  }
  return count;
}
