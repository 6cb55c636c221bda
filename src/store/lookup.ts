/**
 * What a decision reads, inside its transaction: by index while the derived rows are complete, else folded from the journal itself,
 * so that a rebuild or a full disk never lets a pump be started twice.
 */
import type { AnyRecord, BoxRecord, DayPlanRecord, SampleRecord } from '#records/book.ts';
import type { BookDatabase, DerivedRow, JournalRow } from './database.ts';
import { derivedRow } from './folding.ts';
import { numberLink } from './rows.ts';

export interface Lookup {
  readonly record: (key: string) => Promise<AnyRecord | null>;
  readonly linked: (link: string) => Promise<readonly DerivedRow[]>;
  /** Sample numbers in use under a prefix, or reserved by a label: at least the highest of them. */
  readonly numbersUnder: (prefix: string) => Promise<readonly string[]>;
}

/** Numbers that these rows bear or reserve. */
export const numbersOf = (rows: readonly DerivedRow[]): string[] =>
  rows.flatMap((row) => {
    if (row.kind === 'dayPlan') return (row.record as DayPlanRecord).labels.map(({ sampleNumber }) => sampleNumber);
    return row.kind === 'sample' ? [(row.record as SampleRecord).sampleNumber] : [];
  });

export const byIndex = (db: BookDatabase): Lookup => ({
  record: async (key) => (await db.records.get(key))?.record ?? null,
  linked: async (link) => db.records.where('links').equals(link).toArray(),
  numbersUnder: async (prefix) => {
    const from = numberLink(prefix);
    const highest = await db.records.where('links').between(from, `${from}\uffff`).last();
    return highest === undefined ? [] : numbersOf([highest]);
  },
});

/** Facts by each record they are about. */
export function factsByKey(rows: Iterable<JournalRow>): ReadonlyMap<string, JournalRow[]> {
  const found = new Map<string, JournalRow[]>();
  for (const row of rows) {
    for (const key of row.about) {
      const facts = found.get(key);
      if (facts === undefined) found.set(key, [row]);
      else facts.push(row);
    }
  }
  return found;
}

/** Every derived row of a journal, without a table. */
export function derivedRows(journal: Iterable<JournalRow>): ReadonlyMap<string, DerivedRow> {
  const rows = new Map<string, DerivedRow>();
  for (const [key, facts] of factsByKey(journal)) {
    const row = derivedRow(key, facts);
    if (row !== null) rows.set(key, row);
  }
  return rows;
}

export async function fromJournal(db: BookDatabase): Promise<Lookup> {
  const rows = derivedRows(await db.journal.toArray());
  const all = [...rows.values()];
  return {
    record: async (key) => rows.get(key)?.record ?? null,
    linked: async (link) => all.filter((row) => row.links.includes(link)),
    numbersUnder: async (prefix) => numbersOf(all).filter((number) => number.startsWith(prefix)),
  };
}

export const samplesOf = (rows: readonly DerivedRow[]): SampleRecord[] =>
  rows.flatMap((row) => (row.kind === 'sample' ? [row.record as SampleRecord] : []));

export const dayPlansOf = (rows: readonly DerivedRow[]): DayPlanRecord[] =>
  rows.flatMap((row) => (row.kind === 'dayPlan' ? [row.record as DayPlanRecord] : []));

export const boxesOf = (rows: readonly DerivedRow[]): BoxRecord[] =>
  rows.flatMap((row) => (row.kind === 'box' ? [row.record as BoxRecord] : []));
