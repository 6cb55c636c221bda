/** The whole book in one file that can be read without this app, and the way back. Taking in is a union by fact id. */

export interface Backup {
  readonly blob: Blob;
  /** Without names of firm or persons. */
  readonly name: string;
  readonly factsCount: number;
}

export type BackupRefusal =
  | 'notABackup'
  | 'damaged'
  | 'tooLarge'
  | 'tooManyEntries'
  | 'newerFormat'
  | 'otherBook'
  | 'practiceIntoReal'
  | 'realIntoPractice';

export interface BackupPreview {
  readonly kind: 'preview';
  readonly bookId: string;
  readonly firmName: string;
  readonly practice: boolean;
  readonly factsCount: number;
  /** Facts that this device does not hold yet. */
  readonly newCount: number;
  /** Facts held here already, byte for byte the same. */
  readonly sameCount: number;
  /** Fact ids with other bytes than here, or a broken chain: refused, never merged. */
  readonly forks: readonly string[];
  readonly unreadableCount: number;
  /** Sample numbers that would stand on two samples. */
  readonly sharedNumbers: readonly string[];
}

export type ReadBackup = BackupPreview | { readonly kind: 'refused'; readonly why: BackupRefusal };

export type TakenIn =
  | { readonly kind: 'takenIn'; readonly newCount: number; readonly sharedNumbers: readonly string[] }
  | { readonly kind: 'refused'; readonly why: BackupRefusal | 'forks' }
  | { readonly kind: 'failed'; readonly why: 'quota' | 'lost' | 'newer' | 'evicted' | 'unknown' };

export async function makeBackup(): Promise<Backup> {
  throw new Error('not yet');
}

/** Looks into a file and says what it holds against the open book, or against an empty device. Changes nothing. */
export async function readBackup(file: Blob): Promise<ReadBackup> {
  void file;
  return { kind: 'refused', why: 'notABackup' };
}

/** Takes in what `readBackup` showed: into the open book, or as a restore where none is. */
export async function takeIn(preview: BackupPreview): Promise<TakenIn> {
  void preview;
  return { kind: 'failed', why: 'unknown' };
}

/** The backup left the device: shared, saved or downloaded. */
export async function noteBackupHandedOut(backup: Backup): Promise<void> {
  void backup;
}
