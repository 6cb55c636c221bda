/** Every fact about some records, as written: what their story is told from. And which device wrote what. */
import { useLiveQuery } from 'dexie-react-hooks';
import { useSyncExternalStore } from 'react';
import type { Book, NoticeRecord, RelianceRecord } from '#records/book.ts';
import type { StoredFact } from '#records/canonical.ts';
import type { BookDatabase } from '../database.ts';
import { boxBook, sampleBook, shiftBook, workdayBook } from '../reading.ts';
import { onBookState, openSession } from '../session.ts';
import { bookOf } from '../slices.ts';

/** Facts about any of the keys, each once, by writer and sequence. By index; nothing is left out, whatever it says. */
export async function factsAboutKeys(db: BookDatabase, keys: readonly string[]): Promise<readonly StoredFact[]> {
  if (keys.length === 0) return [];
  const rows = await db.journal
    .where('about')
    .anyOf([...keys])
    .distinct()
    .toArray();
  return rows.map(({ id, text }) => ({ id, text })).sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** `undefined` while the answer is on its way. */
export function useFactsAbout(keys: readonly string[]): readonly StoredFact[] | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  const asked = keys.join(' ');
  // The answer to an earlier question stays until the next one is there: it is told by what it answers.
  const answer = useLiveQuery(async () => {
    if (session === null) return { asked, facts: [] };
    return { asked, facts: await factsAboutKeys(session.db, asked === '' ? [] : asked.split(' ')) };
  }, [session, asked]);
  return answer?.asked === asked ? answer.facts : undefined;
}

export interface Devices {
  /** The writer of this device now. */
  readonly here: string;
  /** Names of other devices, by writer; those without a name are absent. */
  readonly names: ReadonlyMap<string, string>;
}

export async function devicesIn(db: BookDatabase, here: string): Promise<Devices> {
  const rows = ((await db.meta.get('partners'))?.value ?? []) as readonly {
    writer: string;
    deviceName: string | null;
  }[];
  return {
    here,
    names: new Map(
      rows.flatMap(({ writer, deviceName }) => (deviceName === null ? [] : [[writer, deviceName] as const])),
    ),
  };
}

export function useDevices(): Devices | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(
    () => (session === null ? { here: '', names: new Map<string, string>() } : devicesIn(session.db, session.writer)),
    [session],
  );
}

/** The slice in which a record stands: its shift, day or box with all registers; else the registers and the record alone. */
export function recordBook(db: BookDatabase, key: string): Promise<Book | null> {
  const [kind, id] = [key.slice(0, key.indexOf(':')), key.slice(key.indexOf(':') + 1)];
  switch (kind) {
    case 'sample':
      return sampleBook(db, id);
    case 'shift':
      return shiftBook(db, id);
    case 'workday':
      return workdayBook(db, id);
    case 'box':
      return boxBook(db, id);
    default:
      return besideRegisters(db, key);
  }
}

async function besideRegisters(db: BookDatabase, key: string): Promise<Book> {
  const rows = await db.records.where('links').equals('register').toArray();
  const row = await db.records.get(key);
  const { issued, measurementId } = (row?.record ?? {}) as Partial<NoticeRecord & RelianceRecord>;
  const reported = await db.records.get(`reported:${issued?.measurementId ?? measurementId ?? ''}`);
  return bookOf([...rows, row, reported].filter((each) => each !== undefined));
}

/** A slice that names what the facts about a record speak of, also when the record itself is not complete here. */
export function useRecordBook(key: string): Book | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  const around = useLiveQuery(() => (session === null ? undefined : recordBook(session.db, key)), [session, key]);
  const alone = useLiveQuery(() => (session === null ? undefined : besideRegisters(session.db, key)), [session, key]);
  return around === undefined ? undefined : (around ?? alone);
}
