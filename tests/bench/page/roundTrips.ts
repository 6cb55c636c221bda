/**
 * Written, backed up, wiped, restored, again and again, pictures too: each time the book comes back as it was, byte for byte, with a new
 * writer.
 */
import Dexie from 'dexie';
import { databaseNames } from '#store/database.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { closeBook, openBooks } from '#store/opening.ts';
import { keepPhoto, preparePhoto } from '#store/photos.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { makeBackup } from '#tests/store/handOvers.ts';
import { entry, library, openingFacts, sampleOf } from '#tests/store/scenario.ts';
import { seededRandom } from '#tests/store/seeded.ts';

interface Held {
  readonly journal: string;
  readonly records: string;
  /** Of each paper and picture its name and the hash of its bytes as they are, by the browser's own SHA-256. */
  readonly files: string;
}

async function held(): Promise<Held> {
  const { db } = theSession();
  const journal = await db.journal.orderBy('id').toArray();
  const records = await db.records.orderBy('key').toArray();
  const lines = journal.map(({ id, about, text, link }) => `${id} ${link} ${about.join(' ')} ${text}`);
  const files: string[] = [];
  for (const { hash, type, bytes } of await db.files.orderBy('hash').toArray()) {
    const digest = await crypto.subtle.digest('SHA-256', bytes as Uint8Array<ArrayBuffer>);
    files.push(`${hash} ${type} ${new Uint8Array(digest).join(' ')}`);
  }
  return { journal: lines.join('\n'), records: JSON.stringify(records), files: files.join('\n') };
}

/** A picture as a camera would hand it over: drawn, written by the browser, then made small and kept as the page does it. */
async function takePicture(between: (low: number, high: number) => number, sampleId: string): Promise<void> {
  const [widthPx, heightPx] = [between(60, 2600), between(60, 1400)];
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  const drawing = canvas.getContext('2d');
  for (let at = 0; at < 60; at += 1) {
    if (drawing === null) throw new Error('this browser draws nothing');
    drawing.fillStyle = `rgb(${between(0, 255)} ${between(0, 255)} ${between(0, 255)})`;
    drawing.fillRect(between(0, widthPx), between(0, heightPx), between(1, 400), between(1, 400));
  }
  const photo = await preparePhoto(await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 }));
  if (photo.kind !== 'photo') throw new Error(`a drawn picture is ${photo.why}`);
  const kept = await keepPhoto(`sample:${sampleId}`, 'label', photo, entry());
  if (kept.kind !== 'written') throw new Error(JSON.stringify(kept));
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
  for (let count = between(0, 3); count > 0; count -= 1) await takePicture(between, sample.sampleId);
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
    for (const part of ['journal', 'records', 'files'] as const)
      if (after[part] !== before[part]) throw new Error(`round ${done}: ${part} came back changed`);
    if (theSession().writer === writer) throw new Error(`round ${done}: the writer goes on under its old name`);
  }
  if ((await theSession().db.files.count()) === 0) throw new Error('no picture was taken in any round');
  return count;
}
