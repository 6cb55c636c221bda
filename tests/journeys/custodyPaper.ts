/** A custody sheet read back by programs that are not ours (poppler): its text, its tags, its attached data; its pages as pictures. */
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from '@playwright/test';
import { oracle } from '../house/oracles.ts';

export interface SheetSays {
  readonly revision: string;
  readonly numbers: readonly string[];
  readonly lastStop: string;
  readonly lastLitres: string;
}

export function readSheet(pdf: string, says: SheetSays): void {
  const text = (oracle('pdftotext')?.(['-layout', pdf, '-']) ?? '').replaceAll(/\s+/g, ' ');
  if (text !== '') {
    for (const number of says.numbers) expect(text).toContain(number);
    for (const part of [
      `revision ${says.revision}`,
      'Ironbow Painting',
      'Footbridge over the mill race',
      'Quern Hill Analytical',
      'Tomás Quiroga',
      '5 filter cassettes in this box: 3 air samples, 2 field blanks',
      says.lastStop,
      says.lastLitres,
      // By hand: 490 min at (2.60272 + 2.52549) / 2 L/min.
      '06:50 15:00 490 2.603 2.525 2.564 1256.4',
      '07:00 10:00 180 2.500 2.457 2.478 446.1',
    ])
      expect(text).toContain(part);
  }
  const tree = oracle('pdfinfo')?.(['-struct-text', pdf]);
  if (tree !== undefined) {
    expect(tree).toMatch(/^Document\n {2}H1 \(block\)\n {4}"Custody sheet"/);
    // Five cassettes and a head, three hand-over lines and a head.
    expect(tree.match(/^ {6}TR$/gm)).toHaveLength(5 + 1 + 3 + 1);
    expect(tree.match(/\/Scope \/Row/g)).toHaveLength(5 + 3);
    for (const number of says.numbers) expect(tree).toContain(`"${number}"`);
  }
  const data = attached(pdf);
  if (data !== undefined) {
    expect(data.revision).toBe(says.revision);
    expect(data.rows.map(({ sampleNumber }) => sampleNumber)).toEqual(expect.arrayContaining([...says.numbers]));
    const last = data.rows.find(({ sampleNumber }) => sampleNumber === says.numbers.at(-1));
    expect(last?.volumeL).toBeCloseTo(Number(says.lastLitres), 0);
  }
  oracle('pdftoppm')?.(['-r', '80', '-png', pdf, pdf.replace(/\.pdf$/, '')]);
}

interface SheetData {
  readonly revision: string;
  readonly rows: readonly { readonly sampleNumber: string; readonly volumeL: unknown }[];
}

function attached(pdf: string): SheetData | undefined {
  const detach = oracle('pdfdetach');
  if (detach === null) return undefined;
  const folder = pdf.replace(/\.pdf$/, '-attached');
  mkdirSync(folder, { recursive: true });
  detach(['-saveall', '-o', folder, pdf]);
  return JSON.parse(readFileSync(join(folder, 'custody-sheet.json'), 'utf8')) as SheetData;
}
