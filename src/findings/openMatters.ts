/**
 * What a person has to settle after two devices came together: a short list, each with what judges meanwhile. Nothing in it is settled
 * by itself, and until it is, the careful side stands.
 */
import type { Book, Conflict, MissingEntries } from '#records/book.ts';
import type { SheetDifference } from './sheetDiffers.ts';

interface Matter {
  /** Stable while the same things are in dispute: names the line of a list, and a draft. */
  readonly key: string;
  /** Keys of the records in dispute (`sample:…`). */
  readonly recordKeys: readonly string[];
}

/** Two values of one thing, stated or corrected without knowledge of each other. */
export interface ConflictMatter extends Matter {
  readonly kind: 'conflict';
  readonly recordKey: string;
  readonly conflict: Conflict;
  /** The value that judges meanwhile. */
  readonly standing: unknown;
  /** `careful`: the more careful of them stands. `first`: no direction is known, so what was said first stands. */
  readonly judges: 'careful' | 'first';
}

/** Void, with a result that nobody who knew both has judged. */
export interface VoidMatter extends Matter {
  readonly kind: 'voidAgainstResult';
  readonly sampleId: string;
  readonly sampleNumber: string;
  readonly voidFactId: string;
  readonly voidWhy: string | null;
  /** Facts of the results, newest last. */
  readonly resultFactIds: readonly string[];
  /** The void judges: a high figure counts as at least so much, a low one proves nothing. */
  readonly judges: 'void';
}

/** One number on two cassettes. Settled when one of them gets another number by a correction. */
export interface SameNumberMatter extends Matter {
  readonly kind: 'sameNumber';
  readonly sampleNumber: string;
  readonly sampleIds: readonly string[];
  /** Neither proves anything low. */
  readonly judges: 'doubt';
}

/** The sheet last issued says other than the record, and nobody left it so. */
export interface SheetMatter extends Matter {
  readonly kind: 'sheetDiffers';
  readonly boxId: string;
  readonly revision: string;
  readonly differences: readonly SheetDifference[];
  /** Of what a sheet would say now: goes into `sheetDifferenceKept.v1`. */
  readonly recordHash: string;
  /** The record judges, not the sheet. */
  readonly judges: 'record';
}

/** Entries of another device that are not here. Settled when they come, or when a person says that they never will. */
export interface MissingMatter extends Matter {
  readonly kind: 'missingEntries';
  readonly missing: MissingEntries;
  /** Days up to `untilOn` prove nothing low. */
  readonly judges: 'doubt';
}

export type OpenMatter = ConflictMatter | VoidMatter | SameNumberMatter | SheetMatter | MissingMatter;

/** In the order: conflicts, voids, numbers, sheets, missing entries; each by record. What is not in the slice is not known. */
export function openMatters(_book: Book): readonly OpenMatter[] {
  return [];
}
