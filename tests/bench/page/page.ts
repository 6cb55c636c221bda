/** The app's own store on an empty page, at the app's address: for filling a book quickly, and for driving two tabs at once. */
import { addDays, addMinutes, dayOf, instantToEpochMs } from '#core/calendar.ts';
import type { SampleRecord } from '#records/book.ts';
import { now } from '#store/device.ts';
import { newBook, openBooks } from '#store/opening.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { generateBook } from '#tests/store/generateBook.ts';
import { entry, library, openingFacts, sampleOf } from '#tests/store/scenario.ts';
import { seedDatabase } from '#tests/store/seedDatabase.ts';
import { boxFact } from './boxFact.ts';
import { roundTrips } from './roundTrips.ts';
import { timeAppends } from './timeAppends.ts';
import { addPictures, timeBackup } from './timeBackup.ts';
import { timeTakeIn } from './timeTakeIn.ts';

/** The newest shift is today's and its pumps have been on for a while, however early in the day this runs. */
function firstInstant(samples: number): string {
  const instant = now();
  const midnight = instantToEpochMs(`${dayOf(instant, 'UTC')}T00:00:00.000Z`);
  const minutes = Math.floor((instantToEpochMs(instant) - midnight) / 60_000);
  const opened = addMinutes(instant, -Math.min(180, Math.max(0, minutes - 1)));
  return `${addDays(dayOf(opened, 'UTC'), -Math.ceil(samples / 4))}${opened.slice(10)}`;
}

const page = {
  /** A book of so many samples, as a backup taken in would leave it. */
  async seed(samples: number): Promise<number> {
    const book = generateBook({ samples, seed: 20261125, startsAt: firstInstant(samples) });
    await seedDatabase(book);
    return book.rows.length;
  },
  /** Packs boxes of `each` sealed cassettes; their ids. */
  async pack(boxes: number, each: number): Promise<string[]> {
    await openBooks();
    const { db } = theSession();
    const rows = await db.records.where('[kind+sort]').between(['sample', ''], ['sample', '\uffff']).toArray();
    const sealed = rows.map(({ record }) => record as SampleRecord).filter((sample) => sample.sealed !== null);
    const ids: string[] = [];
    for (let box = 0; box < boxes; box += 1) {
      const fact = await boxFact(db, sealed.slice(box * each, (box + 1) * each));
      const written = await write([fact]);
      if (written.kind !== 'written') throw new Error(JSON.stringify(written));
      ids.push(fact.body.boxId);
    }
    return ids;
  },
  /** A new book with so many prepared cassettes; their ids. */
  async begin(samples: number): Promise<string[]> {
    await openBooks();
    const begun = await newBook({ firmName: 'Old Sash & Steel', practice: false });
    if (begun.kind !== 'written') throw new Error(JSON.stringify(begun));
    const day = library();
    const prepared = Array.from({ length: samples }, () => sampleOf(day));
    const written = await write([...openingFacts(day), ...prepared.map((sample) => sample.prepared(entry()))]);
    if (written.kind !== 'written') throw new Error(JSON.stringify(written));
    return prepared.map(({ sampleId }) => sampleId);
  },
  open: openBooks,
  /** `count` remarks, one write each, around the samples; how many were written. */
  async remark(name: string, count: number, sampleIds: readonly string[]): Promise<number> {
    let writtenCount = 0;
    for (let index = 0; index < count; index += 1) {
      const sample = sampleOf({} as never, sampleIds[index % sampleIds.length]);
      const outcome = await write([sample.remark(`${name} ${index}`)(entry())]);
      if (outcome.kind === 'written') writtenCount += 1;
    }
    return writtenCount;
  },
  timeAppends,
  timeTakeIn,
  addPictures,
  timeBackup,
  roundTrips,
};
export type StorePage = typeof page;

(globalThis as unknown as { storePage: StorePage }).storePage = page;
