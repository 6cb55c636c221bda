/**
 * The tables. `journal` is the book: facts as they were written, never rewritten, never migrated. `records` is derived and disposable.
 * Every transaction is strict: the browser flushes to disk before it says complete.
 */
import Dexie, { type Table } from 'dexie';
import type { AnyRecord } from '#records/book.ts';
import type { RecordKind } from '#records/common.ts';

export type Which = 'book' | 'practice';

/** One fact: `text` is its one line of JSON, byte for byte; the other columns are copies for the indexes. */
export interface JournalRow {
  readonly id: string;
  readonly about: readonly string[];
  readonly text: string;
  /** H(previous link of this writer + H(text)) */
  readonly link: string;
}

/** One derived record. `links` are the questions it answers to: `shift:<id>`, `running`, `awaiting`, `register` and so on. */
export interface DerivedRow {
  readonly key: string;
  readonly kind: RecordKind;
  readonly sort: string;
  readonly links: readonly string[];
  readonly record: AnyRecord;
}

export interface DraftRow {
  readonly key: string;
  readonly value: unknown;
  readonly savedAt: string;
}

/** Bytes kept by their SHA-256: the PDFs that left the firm. */
export interface FileRow {
  readonly hash: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

export interface MetaRow {
  readonly key: string;
  readonly value: unknown;
}

export const databaseNames: Readonly<Record<Which, string>> = {
  book: 'fullshift-book',
  practice: 'fullshift-practice',
};

/** Every shipped version stays listed here for ever; a shipped line is never edited. */
export const databaseVersion = 1;

export class BookDatabase extends Dexie {
  readonly journal!: Table<JournalRow, string>;
  readonly records!: Table<DerivedRow, string>;
  readonly drafts!: Table<DraftRow, string>;
  readonly files!: Table<FileRow, string>;
  readonly meta!: Table<MetaRow, string>;

  constructor(name: string) {
    super(name, { chromeTransactionDurability: 'strict', cache: 'disabled' });
    this.version(1).stores({
      journal: 'id, *about',
      records: 'key, [kind+sort], *links',
      drafts: 'key',
      files: 'hash',
      meta: 'key',
    });
  }

  /**
   * Opens, and answers only with its tables: where the connection is lost between the opening and its first transaction, Dexie takes it for
   * an old browser's whim and goes on without them, and the next question would look like a bug of ours. Once more then; a second time
   * it is a lost connection.
   */
  async openWhole(): Promise<this> {
    for (const isLast of [false, true]) {
      await this.open();
      if ((this.meta as { core?: unknown }).core !== undefined) return this;
      this.close();
      if (isLast) break;
    }
    throw new Dexie.InvalidStateError('opened without its tables');
  }

  /** A newer version of the app has been here. Dexie opens such data without complaint, so the engine's own number is asked. */
  isNewer(): boolean {
    return this.isOpen() && Math.floor(this.backendDB().version / 10) > databaseVersion;
  }
}
