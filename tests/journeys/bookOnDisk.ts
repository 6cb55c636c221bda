/** The book as it lies on the disk, read without the app, and whether it is whole: chain, ids, derived rows. Node's own SHA-256 judges. */
import { createHash } from 'node:crypto';
import type { Page } from '@playwright/test';

export interface JournalRow {
  readonly id: string;
  readonly about: readonly string[];
  readonly text: string;
  readonly link: string;
}

interface DerivedRow {
  readonly key: string;
  readonly record: { readonly id: string; readonly factIds: readonly string[]; readonly preparedAt?: string };
}

export interface BookOnDisk {
  readonly journal: readonly JournalRow[];
  readonly records: readonly DerivedRow[];
  readonly drafts: readonly { readonly key: string; readonly value: unknown }[];
}

/** `page` stands on any page of the app's address. Creates nothing: an absent database answers null. */
export function readDisk(page: Page, database: string): Promise<BookOnDisk | null> {
  return page.evaluate(async (name) => {
    if (!(await indexedDB.databases()).some((each) => each.name === name)) return null;
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const asked = indexedDB.open(name);
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
    const transaction = db.transaction(['journal', 'records', 'drafts'], 'readonly');
    const all = <T>(store: string): Promise<T> =>
      new Promise((resolve, reject) => {
        const asked = transaction.objectStore(store).getAll();
        asked.onsuccess = () => resolve(asked.result as T);
        asked.onerror = () => reject(asked.error);
      });
    const [journal, records, drafts] = await Promise.all([
      all<BookOnDisk['journal']>('journal'),
      all<BookOnDisk['records']>('records'),
      all<BookOnDisk['drafts']>('drafts'),
    ]);
    db.close();
    return { journal, records, drafts };
  }, database);
}

const sha256 = (text: string): string => createHash('sha256').update(text, 'utf8').digest('hex');

interface Link {
  readonly sequence: number;
  readonly link: string;
}

function tornAt({ id, about, text, link }: JournalRow, last: Link, sequence: number): string[] {
  const told = JSON.parse(text) as { id: string; about: string[] };
  return [
    ...(sequence === last.sequence + 1 ? [] : [`${id} follows ${last.sequence}`]),
    ...(link === sha256(last.link + sha256(text)) ? [] : [`the link of ${id} does not follow`]),
    ...(told.id === id && told.about.join(' ') === about.join(' ') ? [] : [`${id} is not what it says`]),
  ];
}

/** What is torn; empty for a whole book. Each writer counts from 1 without a hole, and each link follows from the one before. */
export function tornIn({ journal, records }: Pick<BookOnDisk, 'journal' | 'records'>): string[] {
  const torn: string[] = [];
  const lastByWriter = new Map<string, Link>();
  const idsByKey = new Map<string, string[]>();
  for (const row of journal) {
    const [writer = '', number = ''] = row.id.split('.');
    const sequence = Number(number);
    torn.push(...tornAt(row, lastByWriter.get(writer) ?? { sequence: 0, link: '' }, sequence));
    lastByWriter.set(writer, { sequence, link: row.link });
    for (const key of row.about) idsByKey.set(key, [...(idsByKey.get(key) ?? []), row.id]);
  }
  for (const { key, record } of records) {
    const expected = [...(idsByKey.get(key) ?? [])].sort().join(' ');
    if ([...record.factIds].sort().join(' ') !== expected) torn.push(`the record ${key} names other facts`);
    idsByKey.delete(key);
  }
  for (const key of idsByKey.keys()) torn.push(`no record of ${key}`);
  return torn;
}

/** Id of the cassette that was prepared last. */
export const newestSample = ({ records }: BookOnDisk): string =>
  records
    .filter(({ key }) => key.startsWith('sample:'))
    .reduce((newest, { record }) => ((record.preparedAt ?? '') > (newest.preparedAt ?? '') ? record : newest), {
      id: '',
    } as Pick<DerivedRow['record'], 'id' | 'preparedAt'>).id;

export const writersOf = ({ journal }: Pick<BookOnDisk, 'journal'>): string[] => [
  ...new Set(journal.map(({ id }) => id.slice(0, id.indexOf('.')))),
];
