/** What differs between the sheet last issued and the record, as sentences. */
import type { SheetDifference } from '#findings/sheetDiffers.ts';
import type { Book, BoxRecord } from '#records/book.ts';
import type { AbsentValue, CustodyRow, CustodySheet } from '#records/custodySheet.ts';
import { en } from './box.ts';
import { wallTimeInWords } from './custody.ts';

/** As in the sheet's own data: an absent value is a kind with its why. */
const isAbsent = (value: unknown): value is AbsentValue =>
  typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'absent';

function shown(value: unknown, digits: number): string {
  if (isAbsent(value)) return en.absent[value.why];
  if (value === undefined || value === null || value === '') return en.nothing;
  if (typeof value === 'boolean') return en.yesNo(value);
  if (Array.isArray(value))
    return value.length === 0 ? en.nothing : value.map((each) => shown(each, digits)).join('; ');
  if (typeof value === 'number') return String(Number(value.toPrecision(digits)));
  if (typeof value === 'object') return en.other;
  return wallTimeInWords(String(value));
}

const names: Readonly<Record<string, string>> = en.values;

const rowsOf = (sheet: unknown): readonly CustodyRow[] => (sheet as Partial<CustodySheet>).rows ?? [];

/** `/rows/2/flowAfterLPerMin` on the sheet is about the cassette in its third row; a deeper place belongs to the same value. */
function sentence({ path, onSheet, onRecord }: SheetDifference, rows: readonly CustodyRow[]): string {
  if (path === '') return en.box.incomplete;
  const [first = '', index = '', inRow] = path.slice(1).split('/');
  const name =
    first === 'rows'
      ? inRow
      : path
          .split('/')
          .filter((part) => part in names)
          .at(-1);
  const what = names[name ?? ''] ?? en.other;
  const number = first === 'rows' ? rows[Number(index)]?.sampleNumber : undefined;
  const subject = number === undefined ? what : en.ofSample(number, what);
  // As many digits as people read; more only where the two would otherwise look alike.
  const digits = [3, 4, 6, 12].find((each) => shown(onSheet, each) !== shown(onRecord, each)) ?? 12;
  return en.box.difference(subject, shown(onSheet, digits), shown(onRecord, digits));
}

/** When cassettes came in or out, that is what is told: rows then no longer stand beside their like. */
export function differenceSentences(
  found: readonly SheetDifference[],
  issuedSheet: unknown,
  box: BoxRecord,
  book: Book,
): string[] {
  const rows = rowsOf(issuedSheet);
  const onSheet = new Set(rows.map(({ sampleId }) => sampleId));
  const inBox = new Set(box.packed.sampleIds);
  const out = rows.filter(({ sampleId }) => !inBox.has(sampleId)).map((row) => en.takenOut(row.sampleNumber));
  const added = box.packed.sampleIds
    .filter((id) => !onSheet.has(id))
    .map((id) => en.putIn(book.samples.get(id)?.sampleNumber ?? ''));
  const moved = out.length + added.length > 0;
  const others = moved ? found.filter(({ path }) => !/^\/(rows|counts|lots)/.test(path)) : found;
  return [...new Set([...out, ...added, ...others.map((difference) => sentence(difference, rows))])];
}
