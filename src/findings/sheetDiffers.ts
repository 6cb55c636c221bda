/** Does the sheet that was last issued for a box still say what the record says? If not: raise its revision. */
import type { Book, BoxRecord } from '#records/book.ts';
import { canonicalJson } from '#records/canonical.ts';
import { factHash } from '#records/chain.ts';
import { custodySheetFor } from './custody.ts';
import { samplesOfBox } from './gaps.ts';

/** One place where the sheet last issued and the record differ. `path` is a JSON pointer into the sheet. */
export interface SheetDifference {
  readonly path: string;
  readonly onSheet: unknown;
  readonly onRecord: unknown;
}

/** What belongs to the moment of issue and not to the record. */
const ofTheMoment = new Set(['/revision', '/why', '/issuedAt', '/issuedInstant', '/heads', '/editions']);

/** Arithmetic of a later edition may differ in its last binary digit; that is not another value. */
const sameNumber = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b));

function differences(onSheet: unknown, onRecord: unknown, path: string, found: SheetDifference[]): void {
  if (ofTheMoment.has(path)) return;
  if (typeof onSheet === 'number' && typeof onRecord === 'number' && sameNumber(onSheet, onRecord)) return;
  if (typeof onSheet === 'object' && typeof onRecord === 'object' && onSheet !== null && onRecord !== null) {
    if (Array.isArray(onSheet) === Array.isArray(onRecord)) {
      const [a, b] = [onSheet as Record<string, unknown>, onRecord as Record<string, unknown>];
      for (const key of new Set([...Object.keys(a), ...Object.keys(b)]))
        differences(a[key], b[key], `${path}/${key}`, found);
      return;
    }
  }
  if (onSheet !== onRecord) found.push({ path, onSheet, onRecord });
}

/** The sheet that is out: the highest revision, the later of two alike. */
export function lastIssue(box: BoxRecord): BoxRecord['issues'][number] | undefined {
  return box.issues.reduce<BoxRecord['issues'][number] | undefined>(
    (last, issue) => (last === undefined || Number(issue.revision) >= Number(last.revision) ? issue : last),
    undefined,
  );
}

/** What a sheet would say now, as it stands at the last issue's moment; null when none was issued. */
function sheetNow(boxId: string, book: Book) {
  const box = book.boxes.get(boxId);
  const issue = box && lastIssue(box);
  if (!issue) return null;
  const occasion = {
    issuedInstant: issue.at,
    why: null,
    heads: [],
    editions: { app: '', rules: '', formulas: '' },
  };
  return { box, issue, now: custodySheetFor(boxId, book, occasion) };
}

const gapsText = (gaps: readonly { readonly key: string }[]): string => gaps.map(({ key }) => key).join(' ');

/** Empty when no sheet was issued, or when it still says what the record says. */
export function sheetDiffers(boxId: string, book: Book): SheetDifference[] {
  const found = sheetNow(boxId, book);
  if (!found) return [];
  const { issue, now } = found;
  if (now.kind === 'gaps') return [{ path: '', onSheet: 'complete', onRecord: gapsText(now.gaps) }];
  const differing: SheetDifference[] = [];
  differences(issue.sheet, now.sheet, '', differing);
  return differing;
}

/** Twelve digits: the last binary digit of another edition's arithmetic is no other value. */
const steady = (value: unknown): unknown => {
  if (typeof value === 'number') return Number(value.toPrecision(12));
  if (Array.isArray(value)) return value.map(steady);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, steady(inner)]));
};

/**
 * SHA-256 of what a sheet would say now, without what belongs to the moment of issue: when the record changes again, it is another.
 * Null when no sheet was issued.
 */
export function recordHashOf(boxId: string, book: Book): string | null {
  const found = sheetNow(boxId, book);
  if (!found) return null;
  const { box, now } = found;
  // No sheet can be made: whatever is written on the box or its cassettes next opens the question again.
  if (now.kind === 'gaps') {
    const said = new Set(box.keptDifferences?.map(({ factId }) => factId));
    const written = [box, ...samplesOfBox(box, book)].flatMap(({ factIds }) => factIds);
    return factHash(written.filter((id) => !said.has(id)).join(' '));
  }
  const kept = Object.entries(now.sheet).filter(([key]) => !ofTheMoment.has(`/${key}`));
  return factHash(canonicalJson(steady(Object.fromEntries(kept))));
}
