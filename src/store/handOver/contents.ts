/** What a preview stands on, kept apart from what pages see. */
import type { MissingEntries } from '#records/book.ts';
import type { BookHeader } from '#records/fileFormat.ts';
import type { SameNumber } from '#records/sampleNumber.ts';
import type { JournalRow, Which } from '../database.ts';
import type { Session } from '../session.ts';
import type { Numbered } from './comparing.ts';
import type { HeldElsewhere, TakeIns } from './elsewhere.ts';
import type { Preview } from './handOver.ts';
import type { StoredFile } from './source.ts';

export interface Contents {
  readonly which: Which;
  readonly header: BookHeader;
  /** Tells the same file when it is chosen again. */
  readonly of: string;
  /** What is new here, in the order of writer and sequence. */
  readonly rows: readonly JournalRow[];
  readonly rowsByKey: ReadonlyMap<string, readonly JournalRow[]>;
  readonly numbered: readonly Numbered[];
  /** Papers and pictures that are not here. */
  readonly files: readonly StoredFile[];
  /** All sound ones in the file. */
  readonly paperHashes: readonly string[];
  /** Named by new facts, and neither here nor in the file. */
  readonly lackedFiles: readonly string[];
  readonly shared: readonly SameNumber[];
  /** What will be missing when all of it is taken in. */
  readonly missing: readonly MissingEntries[];
  /** Up to where others are known to hold each writer, this file's header included. */
  readonly elsewhere: readonly HeldElsewhere[];
  /** `takeIns` of the book when the file was looked into. */
  readonly takeIns: TakeIns;
  /** The session it was compared with; null for a restore. */
  readonly against: Session | null;
}

export const contents = new WeakMap<Preview, Contents>();
