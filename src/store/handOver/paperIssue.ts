/**
 * The act of issuing came after the bytes of its PDF were made, so it is not among what the PDF carries. A book that was rebuilt from a
 * custody sheet gets that act from the sheet itself; when the act of the lost phone arrives after all, the fold shows one issue.
 */
import { offsetMinAt } from '#core/calendar.ts';
import type { BoxRecord } from '#records/book.ts';
import { readHeader } from '#records/bookLines.ts';
import { canonicalJson, readFact } from '#records/canonical.ts';
import { factIdOf } from '#records/chain.ts';
import { type CustodySheet, custodySheet, isAbsent } from '#records/custodySheet.ts';
import type { NewFact } from '#records/fact.ts';
import { fitted } from '#records/fitting.ts';
import { derivedRow } from '../folding.ts';
import { newFact } from '../newFact.ts';
import { theSession } from '../session.ts';
import { type Written, write } from '../write.ts';
import { readPaper } from './fromPaper.ts';

/** Where the fact says it comes from; read by people, and never by code. */
export const fromPaperText = 'custody sheet PDF';

function factOf(sheet: CustodySheet, paper: 'letter' | 'a4', pdfHash: string): NewFact {
  const { boxId, revision, editions, heads, issuedInstant, site, why } = sheet;
  const happened = {
    at: issuedInstant,
    zone: site.zone,
    offsetMin: offsetMinAt(issuedInstant, site.zone),
    entry: 'typed',
    from: fromPaperText,
  } as const;
  const body = { boxId, revision, paper, sheet, pdfHash, editions, heads };
  return newFact('custodySheetIssued.v1', body, { happened, by: null, why: isAbsent(why) ? null : String(why) });
}

/** A sheet that was changed inside its PDF may hold what no journal takes: keys that poison prototypes, depths without end. */
function isCarried(fact: NewFact): boolean {
  const id = factIdOf('0'.repeat(12), 1);
  const recorded = '2026-01-01T00:00:00.000Z-0000';
  try {
    return readFact(canonicalJson({ id, ...fact, recorded })).kind === 'known';
  } catch {
    return false;
  }
}

/**
 * Writes the issue of the sheet whose PDF is kept under `pdfHash`, after the PDF's record was taken in. `known`: an issue of that
 * revision stands already. `none`: the sheet in it is not one, or is not of this box. Nothing else of the book is touched.
 */
export async function issueFromPaper(pdfHash: string): Promise<'written' | 'known' | 'none' | Written> {
  const { db } = theSession();
  const file = await db.files.get(pdfHash);
  if (file === undefined) return 'none';
  const read = await readPaper(new Blob([file.bytes as Uint8Array<ArrayBuffer>]));
  if (read.kind !== 'paper') return 'none';
  const head = readHeader(read.text.split('\n', 1)[0] ?? '');
  const of = 'header' in head ? head.header.sheet : undefined;
  const sheet = fitted(custodySheet, read.sheet);
  if (of === undefined || !sheet.success) return 'none';
  const { boxId, revision } = sheet.data;
  if (of.boxId !== boxId || of.revision !== revision) return 'none';
  // From the journal: after a large take-in the derived rows may still be on their way.
  const key = `box:${boxId}`;
  const row = derivedRow(key, await db.journal.where('about').equals(key).toArray());
  if (row === null) return 'none';
  const box = row.record as BoxRecord;
  // The same revision or a later one: the book knows of this sheet, or of what replaced it.
  if (box.issues.some((issue) => Number(issue.revision) >= Number(revision))) return 'known';
  const fact = factOf(sheet.data, of.paper, pdfHash);
  if (!isCarried(fact)) return 'none';
  const outcome = await write([fact]);
  return outcome.kind === 'written' ? 'written' : outcome;
}
