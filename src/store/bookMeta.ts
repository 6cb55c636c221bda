/** What stands beside the book on this device: who holds it, the last backup, what the browser promised. */
import type { BookRecord, PersonRecord } from '#records/book.ts';
import type { BookDatabase } from './database.ts';
import type { Holder } from './holder.ts';
import { sampleCount } from './reading.ts';

export interface BookMeta {
  readonly book: BookRecord | null;
  readonly practice: boolean;
  readonly holderPersonId: string | null;
  readonly holderAskedAt: string | null;
  readonly holderName: string | null;
  readonly lastBackupAt: string | null;
  /** The browser's answer to "do not evict this"; null before it was asked, or where it does not say. */
  readonly persisted: boolean | null;
  /** Samples whose pump is on a worker now. */
  readonly runningCount: number;
}

interface BackupMark {
  readonly at: string;
  readonly factsCount: number;
}

export async function bookMeta(db: BookDatabase): Promise<BookMeta> {
  const [bookRows, holderRow, backupRow, persistedRow, running] = await Promise.all([
    db.records.where('[kind+sort]').between(['book', ''], ['book', '\uffff']).limit(1).toArray(),
    db.meta.get('holder'),
    db.meta.get('lastBackup'),
    db.meta.get('persisted'),
    db.records.where('links').equals('running').count(),
  ]);
  const book = (bookRows[0]?.record as BookRecord | undefined) ?? null;
  const held = holderRow?.value as Holder | undefined;
  const backup = backupRow?.value as BackupMark | undefined;
  const person = held === undefined ? undefined : await db.records.get(`person:${held.personId}`);
  return {
    book,
    practice: book?.practice ?? false,
    holderPersonId: held?.personId ?? null,
    holderAskedAt: held?.askedAt ?? null,
    holderName: (person?.record as PersonRecord | undefined)?.name ?? null,
    lastBackupAt: backup?.at ?? null,
    persisted: (persistedRow?.value as boolean | null | undefined) ?? null,
    runningCount: running,
  };
}

/** Counts over the whole book. The engine walks every entry for them, so they are asked for only where they are shown. */
export interface BookCounts {
  /** Facts written since the last backup was handed out. */
  readonly factsSinceBackup: number;
  readonly sampleCount: number;
}

export async function bookCounts(db: BookDatabase): Promise<BookCounts> {
  const [backupRow, samples, facts] = await Promise.all([
    db.meta.get('lastBackup'),
    sampleCount(db),
    db.journal.count(),
  ]);
  const backup = backupRow?.value as BackupMark | undefined;
  return { factsSinceBackup: facts - (backup?.factsCount ?? 0), sampleCount: samples };
}
