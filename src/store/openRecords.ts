/**
 * What may have to be settled, found by index and never by reading the book over: records in dispute carry the link `unsettled`, equal
 * numbers are seen in the keys of the number links, missing entries and a file half taken in lie beside the book. Every function may
 * run inside a live query.
 */
import type { Book, BoxRecord } from '#records/book.ts';
import type { BookDatabase, DerivedRow } from './database.ts';
import { besideKeys, bookOf } from './slices.ts';

const last = '\uffff';

/** Keys that stand more than once in a sorted list. */
export function doubled(sorted: readonly string[]): readonly string[] {
  return [...new Set(sorted.filter((key, at) => key === sorted[at - 1]))];
}

/** Records that stand beside a disputed one and tell whose and where it is. */
function besides(rows: readonly DerivedRow[]): { readonly keys: readonly string[]; readonly links: readonly string[] } {
  const boxes = rows.filter((row) => row.kind === 'box').map((row) => row.record as BoxRecord);
  const named = boxes.flatMap(({ packed, conflicts }) => [
    ...packed.sampleIds,
    ...conflicts.flatMap(({ candidates }) => candidates.flatMap(({ value }) => (Array.isArray(value) ? value : []))),
  ]);
  return {
    keys: [...new Set(named.filter((id) => typeof id === 'string'))].map((id) => `sample:${id}`),
    links: rows.filter((row) => row.kind === 'workday').map((row) => row.key),
  };
}

/**
 * A slice of all records in dispute or with a shared number, with the registers. Boxes in it are not whole: whether a sheet differs is
 * asked of each box's own slice.
 */
export async function openRecords(db: BookDatabase): Promise<Book> {
  const unsettled = await db.records.where('links').equals('unsettled').toArray();
  const numbers = (await db.records.where('links').between('number:', `number:${last}`).keys()) as string[];
  const shared = doubled(numbers);
  const bearers =
    shared.length === 0
      ? []
      : await db.records
          .where('links')
          .anyOf([...shared])
          .toArray();
  const { keys, links } = besides(unsettled);
  const packed = (await db.records.bulkGet([...keys])).filter((row) => row !== undefined);
  const days =
    links.length === 0
      ? []
      : await db.records
          .where('links')
          .anyOf([...links])
          .toArray();
  const registers = await db.records.where('links').equals('register').toArray();
  const beside = await db.meta.bulkGet([...besideKeys]);
  return bookOf([...registers, ...packed, ...days, ...bearers, ...unsettled], beside);
}

/** How many records are in dispute and stretches of entries missing: cheap enough to be asked after every write. */
export async function openCount(db: BookDatabase): Promise<number> {
  const unsettledCount = await db.records.where('links').equals('unsettled').count();
  const beside = await db.meta.bulkGet([...besideKeys]);
  const books = await db.records.where('[kind+sort]').between(['book', ''], ['book', last]).toArray();
  return unsettledCount + (bookOf(books, beside).missing ?? []).length;
}

/** How many numbers stand on more than one cassette. Walks the keys of all numbers: for once, not after every write. */
export async function sharedNumberCount(db: BookDatabase): Promise<number> {
  return doubled((await db.records.where('links').between('number:', `number:${last}`).keys()) as string[]).length;
}

export interface BoxSlice {
  /** Boxes with a sheet, newest first. */
  readonly boxIds: readonly string[];
  /** Boxes in the slice, those without a sheet too. */
  readonly count: number;
  /** Hand this to the next call; null when there is nothing older. */
  readonly older: string | null;
}

/** Some boxes, newest first: those for which a sheet was issued may differ from it. */
export async function issuedBoxes(db: BookDatabase, limit: number, before: string | null): Promise<BoxSlice> {
  const rows = await db.records
    .where('[kind+sort]')
    .between(['box', ''], ['box', before ?? last], true, false)
    .reverse()
    .limit(limit)
    .toArray();
  const issued = rows.filter((row) => (row.record as BoxRecord).issues.length > 0);
  return {
    boxIds: issued.map((row) => row.record.id),
    count: rows.length,
    older: rows.length === limit ? (rows.at(-1)?.sort ?? null) : null,
  };
}

export const boxCount = async (db: BookDatabase): Promise<number> =>
  db.records.where('[kind+sort]').between(['box', ''], ['box', last]).count();
