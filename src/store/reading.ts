/** Questions to the derived tables, each answered by an index. Every function may run inside a live query. */
import type { AnyRecord, Book, BoxRecord, SampleRecord, ShiftRecord, WorkdayRecord } from '#records/book.ts';
import type { RecordKind } from '#records/common.ts';
import type { BookDatabase, DerivedRow } from './database.ts';
import { numberLink } from './rows.ts';
import { besideKeys, bookOf, ofKind } from './slices.ts';

/** Sorts after every sort key and every id. */
const last = '\uffff';

const linked = (db: BookDatabase, link: string): Promise<DerivedRow[]> =>
  db.records.where('links').equals(link).toArray() as unknown as Promise<DerivedRow[]>;

async function manyLinked(db: BookDatabase, links: Iterable<string>): Promise<DerivedRow[]> {
  const answers = await Promise.all([...new Set(links)].map((link) => linked(db, link)));
  return answers.flat();
}

async function byKeys(db: BookDatabase, keys: Iterable<string>): Promise<DerivedRow[]> {
  const rows = await db.records.bulkGet([...new Set(keys)]);
  return rows.filter((row) => row !== undefined);
}

const samplesIn = (rows: readonly DerivedRow[]): SampleRecord[] => [...ofKind(rows, 'sample').values()];

const workdayKeys = (samples: readonly SampleRecord[]): string[] =>
  samples.flatMap((sample) => (sample.workdayId === null ? [] : [`workday:${sample.workdayId}`]));

const shiftLinks = (samples: readonly SampleRecord[]): string[] => samples.map((sample) => `shift:${sample.shiftId}`);

export const registerRows = (db: BookDatabase): Promise<DerivedRow[]> => linked(db, 'register');

/** A shift with its flow checks, samples, workdays and all registers. null when there is no such shift. */
export async function shiftBook(db: BookDatabase, shiftId: string): Promise<Book | null> {
  const rows = await linked(db, `shift:${shiftId}`);
  if (!rows.some((row) => row.kind === 'shift')) return null;
  return bookOf([...(await registerRows(db)), ...rows, ...(await byKeys(db, workdayKeys(samplesIn(rows))))]);
}

/** Links of what may speak against these samples from elsewhere: boxes that hold them, and cassettes with their numbers. */
const speakingAgainst = (samples: readonly SampleRecord[]): string[] =>
  samples.flatMap(({ id, sampleNumber }) => [`sample:${id}`, numberLink(sampleNumber)]);

/** Keys of all that lies in these boxes. */
const inBoxes = (rows: readonly DerivedRow[]): string[] =>
  [...ofKind(rows, 'box').values()].flatMap(({ packed }) => packed.sampleIds.map((id) => `sample:${id}`));

/**
 * Everything that stood around these samples: their shifts whole, the workdays of their workers, the registers, and whatever may speak
 * against them. Its questions stand here one after the other and not in a function of their own: an await one deeper leaves the zone in
 * which a live query notices what was asked.
 */
async function bookAround(
  db: BookDatabase,
  samples: readonly SampleRecord[],
  more: readonly DerivedRow[],
): Promise<Book> {
  const rows = await manyLinked(db, [...shiftLinks(samples), ...speakingAgainst(samples)]);
  const boxed = await byKeys(db, inBoxes(rows));
  const all = [...rows, ...more, ...boxed];
  const workdays = await byKeys(db, workdayKeys(samplesIn(all)));
  const beside = await db.meta.bulkGet([...besideKeys]);
  return bookOf([...(await registerRows(db)), ...all, ...workdays], beside);
}

/** The shift that a sample stands in, with the boxes that hold the sample. */
export async function sampleBook(db: BookDatabase, sampleId: string): Promise<Book | null> {
  const rows = await byKeys(db, [`sample:${sampleId}`]);
  if (rows.length === 0) return null;
  return bookAround(db, samplesIn(rows), rows);
}

/** A worker's day: every sample of it, also of a second site, with the shifts they stand in. null when nothing is known of it. */
export async function workdayBook(db: BookDatabase, workdayId: string): Promise<Book | null> {
  const rows = await linked(db, `workday:${workdayId}`);
  return rows.length === 0 ? null : bookAround(db, samplesIn(rows), rows);
}

/** Decided here: a site where nobody was noted on its last five days is not asked further back. */
const earlierShifts = 5;

const isRoster = (row: DerivedRow): boolean =>
  row.kind === 'workday' && ((row.record as WorkdayRecord).worked ?? []).length > 0;

/**
 * A shift with everyone who worked there, the registers, and the last earlier day of the same site that has a roster, for *same as
 * yesterday*. null when there is no such shift. The ids of shifts sort by site and day.
 */
export async function rosterBook(db: BookDatabase, shiftId: string): Promise<Book | null> {
  const rows = await linked(db, `shift:${shiftId}`);
  if (!rows.some((row) => row.kind === 'shift')) return null;
  const more = await byKeys(db, workdayKeys(samplesIn(rows)));
  const earlier = await db.records
    .where('key')
    .between(`shift:${shiftId.slice(0, 13)}`, `shift:${shiftId}`, true, false)
    .reverse()
    .limit(earlierShifts)
    .toArray();
  const answers = await Promise.all(earlier.map((row) => linked(db, row.key)));
  const before = answers.find((each) => each.some(isRoster)) ?? [];
  const registers = await registerRows(db);
  return bookOf([...registers, ...before, ...rows, ...more]);
}

/** Everything of one person: days, samples with their shifts whole, notices, what was reported and asked. null when not in the book. */
export async function personBook(db: BookDatabase, personId: string): Promise<Book | null> {
  const people = await byKeys(db, [`person:${personId}`]);
  if (people.length === 0) return null;
  const rows = await linked(db, `worker:${personId}`);
  return bookAround(db, samplesIn(rows), rows);
}

/** A box with its samples and the shifts they were taken in. */
export async function boxBook(db: BookDatabase, boxId: string): Promise<Book | null> {
  const [row] = await byKeys(db, [`box:${boxId}`]);
  if (row === undefined) return null;
  const samples = await byKeys(
    db,
    (row.record as BoxRecord).packed.sampleIds.map((id) => `sample:${id}`),
  );
  return bookAround(db, samplesIn(samples), [row, ...samples]);
}

/** Newest first, at most `limit`, older than the sort key `before` when given. */
async function newest(db: BookDatabase, kind: RecordKind, limit: number, before: string | null): Promise<DerivedRow[]> {
  return db.records
    .where('[kind+sort]')
    .between([kind, ''], [kind, before ?? last], true, false)
    .reverse()
    .limit(limit)
    .toArray();
}

export interface SamplePage {
  readonly samples: readonly SampleRecord[];
  /** Hand this to the next call; null when there is nothing older. */
  readonly older: string | null;
  readonly total: number;
}

/** Every sample there is, void ones too, newest first, a page at a time. */
export async function samplePage(db: BookDatabase, limit: number, before: string | null): Promise<SamplePage> {
  const rows = await newest(db, 'sample', limit, before);
  const total = await sampleCount(db);
  const older = rows.length === limit ? (rows.at(-1)?.sort ?? null) : null;
  return { samples: rows.map((row) => row.record as SampleRecord), older, total };
}

export const sampleCount = (db: BookDatabase): Promise<number> =>
  db.records.where('[kind+sort]').between(['sample', ''], ['sample', last]).count() as unknown as Promise<number>;

export const newestShifts = async (db: BookDatabase, limit: number): Promise<ShiftRecord[]> =>
  (await newest(db, 'shift', limit, null)).map((row) => row.record as ShiftRecord);

/** The engine counts in 32 bits; a larger number is refused. */
const mostRows = 2 ** 31;

export const boxes = async (db: BookDatabase): Promise<BoxRecord[]> =>
  (await newest(db, 'box', mostRows, null)).map((row) => row.record as BoxRecord);

/** Samples and blanks without a result, oldest first. */
export async function awaitingResults(db: BookDatabase): Promise<SampleRecord[]> {
  const rows = await linked(db, 'awaiting');
  return samplesIn(rows.sort((a, b) => (a.sort < b.sort ? -1 : 1)));
}

export const oneRecord = async (db: BookDatabase, key: string): Promise<AnyRecord | null> =>
  (await db.records.get(key))?.record ?? null;
