/**
 * What goes out of the book as one file and what comes in: the shapes that making, looking and taking share with the screens. Types
 * only, so that a page can name them without loading what makes them.
 */
import type { BothChanged } from '#records/bothSides.ts';
import type { Happened } from '#records/fact.ts';
import type { Gap } from '#records/merge.ts';

export type { BothChanged } from '#records/bothSides.ts';

/** Another device of the same book, known from a file of its that was taken in here. */
export interface Partner {
  readonly writer: string;
  /** What it calls itself; null when it has no name. */
  readonly deviceName: string | null;
  /** When its last file was made, by its clock. */
  readonly lastFileAt: string;
  /** Entries here that it did not hold then. */
  readonly lacksCount: number;
  /** Entries that it held and this device does not. */
  readonly aheadCount: number;
}

export interface HandOverWish {
  /** `lacking`: what the partner did not hold when it made its last file. Without a partner: everything. */
  readonly part: 'everything' | 'lacking';
  readonly partner: string | null;
  /** null: not sealed. */
  readonly passphrase: string | null;
  /** Version of the app, for the header. */
  readonly writtenBy: string;
  /** More papers for readers without the app, such as the data dictionary. */
  readonly papers: readonly { readonly name: string; readonly text: string }[];
  /** Goes on with the papers and pictures that an earlier file had no room for: its `filesLeftOut.from`. */
  readonly filesFrom?: string;
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
}

export interface Progress {
  readonly step: 'reading' | 'packing' | 'sealing' | 'opening' | 'comparing' | 'taking' | 'lists';
  readonly done: number;
  readonly total: number;
}

/** A file ready to go; build it before the button is enabled. */
export interface HandOver {
  readonly blob: Blob;
  /** Without names of firm or persons. */
  readonly name: string;
  readonly part: 'everything' | 'lacking';
  readonly partner: string | null;
  readonly sealed: boolean;
  readonly factsCount: number;
  readonly filesCount: number;
  /** Papers and pictures that would have made it larger than any device takes in: a second file holds them. Absent: none. */
  readonly filesLeftOut?: { readonly count: number; readonly from: string };
  /** Entries in the whole book when it was made. */
  readonly bookFactsCount: number;
}

export type LookRefusal =
  | 'notABackup'
  | 'damaged'
  | 'tooLarge'
  | 'tooManyEntries'
  | 'newerFormat'
  | 'otherBook'
  | 'practiceIntoReal'
  | 'realIntoPractice'
  /** Only what another device lacked: an empty device needs the whole book, or a custody sheet. */
  | 'partOnly'
  /** Sealed: the passphrase does not open it. */
  | 'wrongPassphrase'
  /** Sealed in a way that would take more memory than a phone has (work factor above 18), or not by passphrase. */
  | 'sealNotOurs'
  /** A custody sheet of a version that attached the sheet alone: nothing of the record can be rebuilt from it. */
  | 'sheetOnly'
  /** A custody sheet that was locked or saved anew by another program, or is damaged: what lies in it cannot be read. */
  | 'notAsIssued'
  | 'stopped';

export interface Preview {
  readonly kind: 'preview';
  readonly fileName: string;
  readonly bookId: string;
  readonly firmName: string;
  readonly practice: boolean;
  /** The device that made it; null in files of the first version and in papers. */
  readonly from: { readonly writer: string; readonly deviceName: string | null; readonly madeAt: string } | null;
  readonly part: 'everything' | 'lacking' | 'paper';
  readonly factsCount: number;
  /** Facts that this device does not hold yet, and how many of each kind (`unknown` for a newer version's). */
  readonly newCount: number;
  readonly newByKind: Readonly<Record<string, number>>;
  /** The first and last moment of what is new; null when nothing is. */
  readonly newBetween: { readonly from: Happened; readonly to: Happened } | null;
  readonly sameCount: number;
  /** Ids that stand on other bytes here: refused, never merged. */
  readonly forks: readonly string[];
  readonly bothChanged: readonly BothChanged[];
  /** Samples void on one side with a result on the other: the void judges until a person says. */
  readonly voidAgainstResult: readonly string[];
  /** Sample numbers that would stand on more than one cassette. */
  readonly sharedNumbers: readonly string[];
  /** Sequences that would still be missing after taking in. */
  readonly gaps: readonly Gap[];
  readonly brokenCount: number;
  readonly unreadableCount: number;
  /** New facts of a newer version: carried; their records are doubtful where they must be understood. */
  readonly newerCount: number;
  readonly filesCount: number;
  /** Of these, what is not here yet. */
  readonly newFilesCount: number;
  /** Papers and pictures whose bytes are not what their name says: left out. */
  readonly filesDamagedCount: number;
  /** Papers and pictures that the new facts name and that are neither here nor in the file. */
  readonly filesMissingCount: number;
  /** Only part of the file could be read and is shown here. */
  readonly salvaged: boolean;
}

export type Looked =
  | Preview
  /** Ask for the passphrase and look again. */
  | { readonly kind: 'sealed' }
  /** `intactCount`: facts that could still be read from a damaged file with `salvage`. */
  | { readonly kind: 'refused'; readonly why: LookRefusal; readonly intactCount: number };

export interface LookOptions {
  readonly passphrase?: string;
  /** Shows what is left of a damaged file. */
  readonly salvage?: boolean;
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
}

/** A file that was begun and is not whole: while it stands nothing may be relaxed. Kept in the book's meta table. */
export interface TakeInMark {
  readonly fileName: string;
  readonly startedAt: string;
  readonly doneCount: number;
  readonly totalCount: number;
  /** Hash over the ids and links to take in: tells the same file when it is chosen again. */
  readonly of: string;
}
