/** Rows of the journal into one record. A row that cannot be read is left out aloud: nothing may be relaxed on its record. */
import type { AnyRecord } from '#records/book.ts';
import { readFact } from '#records/canonical.ts';
import { foldRecord } from '#records/fold.ts';
import type { DerivedRow, JournalRow } from './database.ts';
import { rowOf } from './rows.ts';

export const isReadable = (row: Pick<JournalRow, 'text'>): boolean => readFact(row.text).kind !== 'refused';

/** The record of a key; null while its first fact is missing. The journal itself stays as it is. */
export function foldRows(key: string, rows: readonly JournalRow[]): AnyRecord | null {
  try {
    return foldRecord(key, rows);
  } catch (error) {
    const readable = rows.filter(isReadable);
    if (readable.length === rows.length) throw error;
    const record = foldRecord(key, readable);
    const lost = rows.filter((row) => !readable.includes(row)).map(({ id }) => id);
    return record === null ? null : { ...record, notUnderstood: [...record.notUnderstood, ...lost] };
  }
}

/** The derived row of a key; null when there is nothing to show. */
export function derivedRow(key: string, rows: readonly JournalRow[]): DerivedRow | null {
  const record = foldRows(key, rows);
  return record === null ? null : rowOf(record);
}
