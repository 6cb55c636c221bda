/**
 * The whole book in one file that can be read without this app. Looking into a file is in looking.ts, taking it in is in taking.ts.
 */
import { wallTimeOf } from '#core/calendar.ts';
import { readFact } from '#records/canonical.ts';
import { link, noLink, sequenceOf, writerOf } from '#records/chain.ts';
import { writeBookText } from '#records/fileFormat.ts';
import type { FileRow, JournalRow } from '../database.ts';
import { deviceZone, now, nowMs } from '../device.ts';
import { theSession } from '../session.ts';
import { type Packed, pack } from './packing.ts';
import { backupReadme } from './readme.ts';

export interface Backup {
  readonly blob: Blob;
  /** Without names of firm or persons. */
  readonly name: string;
  readonly factsCount: number;
}

export interface BackupOptions {
  /** Version of the app, for the header. */
  readonly writtenBy?: string;
  /** More papers for readers without the app, such as the data dictionary. */
  readonly papers?: readonly { readonly name: string; readonly text: string }[];
}

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Sound rows in order, and those that would make the whole text unreadable: not a fact, or a link that does not follow. */
function sorted(rows: readonly JournalRow[]): { sound: JournalRow[]; unsound: JournalRow[] } {
  const sound: JournalRow[] = [];
  const unsound: JournalRow[] = [];
  for (const row of rows) {
    const last = sound.at(-1);
    const follows =
      last !== undefined && writerOf(last.id) === writerOf(row.id) && sequenceOf(row.id) === sequenceOf(last.id) + 1;
    const previous = follows ? last.link : sequenceOf(row.id) === 1 ? noLink : null;
    const broken = previous !== null && row.link !== link(previous, row.text);
    (broken || readFact(row.text).kind === 'refused' ? unsound : sound).push(row);
  }
  return { sound, unsound };
}

const packedFile = ({ hash, type, bytes }: FileRow): Packed => ({
  name: `files/${hash}.${type === 'application/pdf' ? 'pdf' : 'bin'}`,
  bytes,
  stored: true,
});

const paper = (name: string, text: string): Packed => ({ name, bytes: utf8(text), stored: false });

/** Reads the book in one transaction and packs it. Rejects with what the database throws. */
export async function makeBackup({ writtenBy = 'fullshift', papers = [] }: BackupOptions = {}): Promise<Backup> {
  const { db, bookId, which } = theSession();
  const [rows, files] = await db.transaction('r', db.journal, db.files, async () => {
    const journal = await db.journal.orderBy('id').toArray();
    return [journal, await db.files.toArray()] as const;
  });
  const { sound, unsound } = sorted(rows);
  const text = writeBookText({ bookId, practice: which === 'practice', writtenBy }, sound);
  const entries = [
    paper('README.txt', backupReadme),
    paper('book.txt', text),
    ...papers.map(({ name, text }) => paper(`dictionary.${name}`, text)),
    ...(unsound.length === 0
      ? []
      : [paper('unreadable.txt', unsound.map((row) => `${row.link} ${row.id} ${row.text}\n`).join(''))]),
    ...files.map(packedFile),
  ];
  const { day, time } = wallTimeOf(now(), deviceZone());
  const name = `fullshift-${which === 'practice' ? 'EXAMPLE' : 'book'}-${day}-${time.replace(':', '')}.zip`;
  return { blob: await pack(entries, nowMs()), name, factsCount: rows.length };
}

/** The backup left the device: shared, saved or downloaded. */
export async function noteBackupHandedOut(backup: Backup): Promise<void> {
  await theSession().db.meta.put({ key: 'lastBackup', value: { at: now(), factsCount: backup.factsCount } });
}
