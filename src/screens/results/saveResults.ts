/** Reads the whole form, then writes one result after the other, each by itself: what is written is safe whatever comes after it. */
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import type { SampleRecord } from '#records/book.ts';
import { happenedNow } from '#store/device.ts';
import { samplesNumbered } from '#store/hooks/useSamplesNumbered.ts';
import { newFact } from '#store/newFact.ts';
import { write } from '#store/write.ts';
import { en as partsWords } from '#words/parts.ts';
import { en as words } from '#words/results.ts';
import { notWritten } from '#words/saving.ts';
import { type ResultBody, readNumber, readReport, readRow } from './readResults.ts';
import { chooserName, fieldName, isBlankRow, type ResultsDraft, type RowText } from './resultsDraft.ts';

export interface ReadyRow {
  readonly row: RowText;
  readonly sample: SampleRecord;
  readonly body: ResultBody;
}

export type Ready =
  | { readonly kind: 'ready'; readonly rows: readonly ReadyRow[] }
  | { readonly kind: 'errors'; readonly errors: readonly FieldError[] };

async function sampleOf(read: FieldReader, row: RowText, number: string | null): Promise<SampleRecord | null> {
  if (number === null) return null;
  const found = await samplesNumbered(number);
  const field = fieldName(row, 'number');
  if (found.length === 0) return read.add(field, words.numberUnknown(number));
  if (found.length === 1) return found[0] ?? null;
  return found.find(({ id }) => id === row.sampleId) ?? read.add(chooserName(row), words.numberShared(number));
}

export async function readAll(draft: ResultsDraft, today: string): Promise<Ready> {
  const read = fieldReader(partsWords);
  const report = readReport(read, draft.report, today);
  const rows = draft.rows.filter((row) => !isBlankRow(row));
  if (rows.length === 0) read.add(draft.rows[0] ? fieldName(draft.rows[0], 'number') : null, words.rows.nothing);
  const ready: ReadyRow[] = [];
  const seen = new Set<string>();
  for (const row of rows) {
    const number = readNumber(read, row);
    const sample = await sampleOf(read, row, number);
    // Two lines with one number are right when they are two cassettes.
    const line = sample?.id ?? number;
    if (number !== null && line !== null && seen.has(line))
      read.add(fieldName(row, 'number'), words.numberTwice(number));
    if (line !== null) seen.add(line);
    const body = readRow(read, row);
    if (report && sample && body) ready.push({ row, sample, body: { ...report, ...body, sampleId: sample.id } });
  }
  return read.errors.length > 0 ? { kind: 'errors', errors: read.errors } : { kind: 'ready', rows: ready };
}

/** null when the result is written; else why not, at the line. */
export async function writeRow(
  { row, sample, body }: ReadyRow,
  zone: string,
  by: string | null,
): Promise<FieldError[] | null> {
  const written = await write([newFact('resultReceived.v1', body, { happened: happenedNow(zone), by })]);
  if (written.kind === 'written') return null;
  return notWritten(written).map(({ field, text }) => ({
    field: field ?? (written.kind === 'refused' ? fieldName(row, 'number') : null),
    text: `${sample.sampleNumber}: ${text}`,
  }));
}
