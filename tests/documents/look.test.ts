/**
 * Writes the sheets that people should look at to tests/out/: with LOOK=1 all of them, as PDF and as PNG; else those that no other test
 * makes.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { custodyPdf } from '#documents/custodyPdf.ts';
import { custodySheet } from '#records/custodySheet.ts';
import { oracle } from '../house/oracles.ts';
import { airRow, blankRow, fonts, openRow, sheetOf, sheetWith } from './sheets.ts';

const out = 'tests/out/custody';
const second = { revision: '2', why: 'Sample 410012: flow after was 1.953 L/min, not 1.935 L/min; misread.' };
const looks = {
  oneRow: [sheetWith(1), 'letter'],
  twentyRows: [sheetWith(20), 'letter'],
  twentyRowsA4: [sheetWith(20), 'a4'],
  sixtyRows: [sheetWith(60), 'letter'],
  revisionTwo: [sheetOf([airRow(0), openRow(1), airRow(2), blankRow(3)], second), 'a4'],
  practice: [sheetWith(24, { practice: true }), 'letter'],
} as const;

/** Made and held against other programs by custodyPdf.test.ts. */
const elsewhere = new Set(['twentyRows', 'twentyRowsA4', 'sixtyRows']);

test('sheets to look at are written to tests/out', async () => {
  mkdirSync(out, { recursive: true });
  const toPng = process.env.LOOK === '1' ? oracle('pdftoppm') : null;
  for (const [name, [sheet, paper]] of Object.entries(looks)) {
    if (!toPng && elsewhere.has(name)) continue;
    const bytes = await custodyPdf(custodySheet.parse(sheet), { paper, fonts });
    const path = `${out}/${name}.pdf`;
    writeFileSync(path, bytes);
    expect(new TextDecoder().decode(bytes.slice(0, 8))).toBe('%PDF-1.7');
    toPng?.(['-r', '80', '-png', path, `${out}/${name}`]);
  }
}, 30_000);
