/**
 * Facts -> one record. Pure, and independent of the order in which facts arrived: they are sorted here, by recorded and then id.
 * Facts of other records may not be among them; unknown ones may.
 */
import type { AnyRecord } from './book.ts';
import type { StoredFact } from './canonical.ts';

/** Change when any fold case changes: derived records of another edition are dropped and rebuilt. */
export const foldEdition = 1;

/** Null while the facts do not yet tell what the record is (its first fact is missing), or when its kind is unknown here. */
export function foldRecord(key: string, facts: readonly StoredFact[]): AnyRecord | null {
  void key;
  void facts;
  return null;
}
