/**
 * What a person has to settle after two devices came together: a short list, each with what judges meanwhile. Nothing in it is settled
 * by itself, and until it is, the careful side stands.
 */
import type { AnyRecord, Book, BoxRecord, Conflict, MissingEntries, SampleRecord } from '#records/book.ts';
import { type SameNumber, sameNumber } from '#records/sampleNumber.ts';
import { lastIssue, recordHashOf, type SheetDifference, sheetDiffers } from './sheetDiffers.ts';

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

const byId = <T extends { readonly id: string }>(records: ReadonlyMap<string, T>): T[] =>
  [...records.values()].sort((a, b) => (a.id < b.id ? -1 : 1));

function everyRecord(book: Book): readonly AnyRecord[] {
  const { sites, people, jobClassifications, pumps, meters, lots, laboratories } = book;
  const { shifts, flowChecks, samples, workdays, boxes, plans, dayPlans, spendings } = book;
  const days = [samples, workdays, flowChecks, shifts, boxes, dayPlans, plans, spendings];
  const maps = [...days, sites, people, jobClassifications, pumps, meters, lots, laboratories];
  return [...(book.book ? [book.book] : []), ...maps.flatMap((map) => byId<AnyRecord>(map))];
}

/** A correction of one fact about two records is one matter: told once. */
function conflictMatters(book: Book): readonly ConflictMatter[] {
  const found = new Map<string, ConflictMatter>();
  for (const record of everyRecord(book))
    for (const conflict of record.conflicts) {
      const { factId, path, standingValue = null, judges = 'careful' } = conflict;
      const key = `conflict ${factId} ${path}`;
      const known = found.get(key);
      found.set(key, {
        kind: 'conflict',
        key,
        recordKey: known?.recordKey ?? record.key,
        recordKeys: [...(known?.recordKeys ?? []), record.key],
        conflict,
        standing: standingValue,
        judges,
      });
    }
  return [...found.values()];
}

function voidMatter({ id, key, sampleNumber, voided, voidAgainstResult, results }: SampleRecord): VoidMatter[] {
  if (voided === null || voidAgainstResult !== true) return [];
  return [
    {
      kind: 'voidAgainstResult',
      key: `void ${voided.factId}`,
      recordKeys: [key],
      sampleId: id,
      sampleNumber,
      voidFactId: voided.factId,
      voidWhy: voided.why,
      resultFactIds: results.map(({ factId }) => factId),
      judges: 'void',
    },
  ];
}

const numberMatter = ({ sampleNumber, sampleIds }: SameNumber): SameNumberMatter => ({
  kind: 'sameNumber',
  key: `number ${sampleNumber}`,
  recordKeys: sampleIds.map((id) => `sample:${id}`),
  sampleNumber,
  sampleIds,
  judges: 'doubt',
});

const hasReason = (why: string | null): boolean => why !== null && why.trim() !== '';

/** Null when the sheet says what the record says, or when a person left this very difference so, with a reason. */
export function sheetMatter(box: BoxRecord, book: Book): SheetMatter | null {
  const revision = lastIssue(box)?.revision;
  const recordHash = recordHashOf(box.id, book);
  if (revision === undefined || recordHash === null) return null;
  const isKept = (box.keptDifferences ?? []).some(
    (kept) => kept.revision === revision && kept.recordHash === recordHash && hasReason(kept.why),
  );
  const differences = isKept ? [] : sheetDiffers(box.id, book);
  if (differences.length === 0) return null;
  const key = `sheet ${box.id} ${revision} ${recordHash}`;
  return {
    kind: 'sheetDiffers',
    key,
    recordKeys: [box.key],
    boxId: box.id,
    revision,
    differences,
    recordHash,
    judges: 'record',
  };
}

const missingMatter = (missing: MissingEntries, book: Book): MissingMatter => ({
  kind: 'missingEntries',
  key: `missing ${missing.writer} ${missing.fromCount} ${missing.toCount}`,
  recordKeys: book.book ? [book.book.key] : [],
  missing,
  judges: 'doubt',
});

/** In the order: conflicts, voids, numbers, sheets, missing entries; each by record. What is not in the slice is not known. */
export function openMatters(book: Book): readonly OpenMatter[] {
  const samples = byId(book.samples);
  return [
    ...conflictMatters(book),
    ...samples.flatMap(voidMatter),
    ...sameNumber(samples).map(numberMatter),
    ...byId(book.boxes).flatMap((box) => sheetMatter(box, book) ?? []),
    ...(book.missing ?? []).map((missing) => missingMatter(missing, book)),
  ];
}
