/**
 * Tables as comma-separated text after RFC 4180: lines end in CR LF, every text stands in quotes, a quote in it is doubled. A text that a
 * spreadsheet would run gets an apostrophe before it; numbers are left alone, since -5 is a number.
 */

/** A number is written as `text` says, so that cents stay cents. null = an empty cell. */
export type CsvCell = string | { readonly number: string } | null;

/** What spreadsheets take for the beginning of a formula, full-width forms too; blanks before it change nothing. */
const runs = /^\s*[=+\-@＝＋－＠\t\r\n]/;

export const harmless = (text: string): string => (runs.test(text) ? `'${text}` : text);

const plainNumber = /^-?\d+(\.\d+)?$/;

function cellText(cell: CsvCell): string {
  if (cell === null) return '';
  if (typeof cell === 'string') return `"${harmless(cell).replaceAll('"', '""')}"`;
  if (!plainNumber.test(cell.number)) throw new Error('a number cell holds a plain number');
  return cell.number;
}

/** With a byte order mark ahead, without which some spreadsheets misread letters beyond ASCII. Rows must be of one length. */
export function csvText(rows: readonly (readonly CsvCell[])[]): string {
  const width = rows[0]?.length ?? 0;
  if (rows.some((row) => row.length !== width)) throw new Error('rows of a table are of one length');
  return `\ufeff${rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('')}`;
}
