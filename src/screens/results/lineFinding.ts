/** What a line amounts to before it is written: the sample's finding as if the result were in. */

import { findSample, type SampleFinding } from '#findings/sample.ts';
import { fieldReader } from '#parts/fieldReader.ts';
import type { Book } from '#records/book.ts';
import { en as partsWords } from '#words/parts.ts';
import { type ResultBody, readReport, readRow } from './readResults.ts';
import type { ReportText, RowText } from './resultsDraft.ts';

/** Stands for the head of the report until it is filled in. */
const unstated = {
  reportNumber: '-',
  laboratoryId: null,
  accreditation: null,
  methodId: null,
  receivedOn: '2000-01-01',
  reportedOn: null,
  analysedOn: null,
  blankCorrected: 'notStated',
  wallDeposit: 'notStated',
  saeFraction: null,
} as const;

/** null while the line cannot be read. */
export function lineFinding(
  sampleId: string,
  book: Book,
  report: ReportText,
  row: RowText,
  today: string,
): SampleFinding | null {
  const body = readRow(fieldReader(partsWords), row);
  const sample = book.samples.get(sampleId);
  if (body === null || sample === undefined) return null;
  const head = readReport(fieldReader(partsWords), report, today) ?? { ...unstated, methodId: report.methodId || null };
  const result: ResultBody = { ...head, ...body, sampleId };
  const factId = sample.factIds[0] ?? '';
  const samples = new Map(book.samples).set(sampleId, { ...sample, results: [{ ...result, factId }] });
  return findSample(sampleId, { ...book, samples });
}
