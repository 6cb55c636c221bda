/** The bytes of a custody sheet, read back by programs that are not ours: poppler and qpdf. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { custodyPdf } from '#documents/custodyPdf.ts';
import type { CustodySheet } from '#records/custodySheet.ts';
import { type OracleName, oracle } from '../house/oracles.ts';
import { airRow, blankRow, fonts, openRow, sheetOf, sheetWith } from './sheets.ts';

const out = 'tests/out/custody';
mkdirSync(out, { recursive: true });

const known = new Map<string, Promise<Uint8Array>>();

/** Each sheet is made once; what is asked of it shares the bytes. */
function bytesOf(sheet: CustodySheet, paper: 'letter' | 'a4' = 'letter'): Promise<Uint8Array> {
  const key = paper + JSON.stringify(sheet);
  const found = known.get(key) ?? custodyPdf(sheet, { paper, fonts });
  known.set(key, found);
  return found;
}

async function written(name: string, sheet: CustodySheet, paper: 'letter' | 'a4' = 'letter'): Promise<string> {
  const path = `${out}/${name}.pdf`;
  writeFileSync(path, await bytesOf(sheet, paper));
  return path;
}

/** A test that asks one oracle, left out (and named) when it is not here. */
const asks = (name: OracleName, title: string, body: (run: (args: readonly string[]) => string) => Promise<void>) => {
  const run = oracle(name);
  test.skipIf(run === null)(`${title} (${name})`, async () => {
    if (run) await body(run);
  });
};

const squeezed = (text: string): string => text.replace(/\s+/g, ' ');
const packet = (path: string): string => {
  const text = readFileSync(path, 'utf8');
  return text.slice(text.indexOf('<x:xmpmeta'), text.indexOf('</x:xmpmeta>'));
};

describe('the custody sheet as PDF', () => {
  asks('qpdf', 'is a sound file', async (qpdf) => {
    expect(qpdf(['--check', await written('sound', sheetWith(60))])).toContain('No syntax or stream encoding errors');
  });

  asks('pdfinfo', 'is tagged, titled and lies on Letter or A4', async (pdfinfo) => {
    const letter = pdfinfo([await written('letter', sheetWith(20))]);
    expect(letter).toMatch(/Tagged:\s+yes/);
    expect(letter).toMatch(/Title:\s+Custody sheet, Old Public Library, reading rooms, 2026-05-12, revision 1/);
    expect(letter).toMatch(/Author:\s+Harrow & Daughter Window Restoration/);
    expect(letter).toMatch(/Page size:\s+792 x 612 pts \(letter\)/);
    const xmp = packet(`${out}/letter.pdf`);
    expect(xmp).toContain('<pdfaid:part>3</pdfaid:part>');
    expect(xmp).toContain('<pdfaid:conformance>A</pdfaid:conformance>');
    const a4 = pdfinfo([await written('a4', sheetWith(20), 'a4')]);
    expect(a4).toMatch(/Page size:\s+841\.89 x 595\.28 pts \(A4\)/);
  });

  asks(
    'pdfinfo',
    'has one table of samples with one head, one header cell a row, across two pages',
    async (pdfinfo) => {
      const tree = pdfinfo(['-struct', await written('tree', sheetWith(22))]);
      const count = (pattern: RegExp) => tree.match(pattern)?.length ?? 0;
      expect(count(/^ {2}Table \(block\)$/gm)).toBe(2);
      expect(count(/^ {4}THead$/gm)).toBe(2);
      expect(count(/^ {4}TBody$/gm)).toBe(2);
      // 22 cassettes and a head, 3 hand-over lines and a head
      expect(count(/^ {6}TR$/gm)).toBe(22 + 1 + 3 + 1);
      expect(count(/\/Scope \/Row/g)).toBe(22 + 3);
      expect(count(/\/Scope \/Column/g)).toBe(12 + 7);
      expect(count(/\/ColSpan 7/g)).toBe(2);
    },
  );

  // pdfinfo reads a page anew for the text of each element: few rows, and a note that goes on to a second page
  asks('pdfinfo', 'is read from its title on, without running heads and page numbers', async (pdfinfo) => {
    const remark = 'Gust through the open sash. '.repeat(40);
    const path = await written('spoken', sheetOf([{ ...airRow(0), remarks: [remark] }, blankRow(1), blankRow(2)]));
    expect(pdfinfo([path])).toMatch(/Pages:\s+2\n/);
    const spoken = pdfinfo(['-struct-text', path]);
    expect(spoken.startsWith('Document\n  H1 (block)\n    "Custody sheet"')).toBe(true);
    expect(spoken.match(/"Field blank"/g)).toHaveLength(2);
    expect(spoken).not.toMatch(/page 1 of 2|continued/);
  });

  asks('pdftotext', 'holds every number, worker, flow and volume, and signs beyond ASCII', async (pdftotext) => {
    const sheet = sheetWith(20);
    const text = squeezed(pdftotext(['-layout', await written('text', sheet), '-']));
    for (const row of sheet.rows) expect(text).toContain(row.sampleNumber);
    // The first and the last air sample, averaged and multiplied by hand: 794.381 L and 1.998 L/min * 418 min = 835.164 L.
    expect(text).toContain('410010 2026-05-12 Íñigo Muñoz Güemes K2417 07:00 14:00 401 2.011 1.951 1.981 794.4 none');
    expect(text).toContain('410027 2026-05-12 Tomáš Dvořák K2417 07:17 14:59 418 2.028 1.968 1.998 835.2 none');
    for (const sign of ['Ana Belén Peñalver', 'Marisol Ibáñez Ruiz', 'MCE 0.8 µm', '0.75 µg on each filter', '☐ yes'])
      expect(text).toContain(sign);
  });

  asks('pdffonts', 'embeds a subset of each face with its reading', async (pdffonts) => {
    const lines = pdffonts([await written('fonts', sheetWith(20))])
      .trim()
      .split('\n')
      .slice(2);
    expect(lines).toHaveLength(2);
    for (const line of lines) expect(line).toMatch(/[A-Z]{6}\+DejaVuSans.* yes +yes +yes /);
  });

  asks('pdfdetach', "carries the sheet's data, equal to the sheet", async (pdfdetach) => {
    const sheet = sheetOf([airRow(0), openRow(1), blankRow(2)]);
    const path = await written('data', sheet);
    expect(pdfdetach(['-list', path])).toContain('custody-sheet.json');
    pdfdetach(['-save', '1', '-o', `${out}/data.json`, path]);
    expect(JSON.parse(readFileSync(`${out}/data.json`, 'utf8'))).toEqual(sheet);
  });

  // ISO 19005-3, 6.8: an attached file of PDF/A-3 has its type and its relation to the document.
  asks('qpdf', 'carries the record beside the sheet, with type, relation and what it is', async (qpdf) => {
    const path = `${out}/beside.pdf`;
    writeFileSync(path, await custodyPdf(sheetWith(4), { paper: 'letter', fonts, record: 'one line\n' }));
    expect(qpdf(['--check', path])).toContain('No syntax or stream encoding errors');
    const attachments = qpdf(['--list-attachments', '--verbose', path]);
    for (const part of ['custody-sheet.json', 'record.txt', 'text/plain', 'The record that this sheet rests on'])
      expect(attachments).toContain(part);
    const bytes = readFileSync(path, 'latin1');
    expect(bytes.match(/\/AFRelationship \/(Data|Source)/g)).toEqual([
      '/AFRelationship /Data',
      '/AFRelationship /Source',
    ]);
  });

  asks('pdftoppm', 'the record beside it changes nothing on the page', async (pdftoppm) => {
    const drawn = await Promise.all(
      [null, 'one line\n'.repeat(5000)].map(async (record, at) => {
        const path = `${out}/record-${at}`;
        const sheet = sheetWith(22);
        const bytes =
          record === null ? await bytesOf(sheet) : await custodyPdf(sheet, { paper: 'letter', fonts, record });
        writeFileSync(`${path}.pdf`, bytes);
        pdftoppm(['-r', '60', '-png', `${path}.pdf`, path]);
        return [1, 2].map((page) => readFileSync(`${path}-${page}.png`));
      }),
    );
    for (const page of [0, 1])
      expect(Buffer.compare(drawn[1]?.[page] ?? Buffer.from('none'), drawn[0]?.[page] ?? Buffer.alloc(0))).toBe(0);
  });

  test('the same sheet gives the same bytes; another paper or figure gives others', async () => {
    const sheet = sheetWith(20);
    const first = await bytesOf(sheet);
    // bytes against bytes, at once instead of one by one
    const isAsFirst = (bytes: Uint8Array) => Buffer.compare(bytes, first) === 0;
    expect(isAsFirst(await custodyPdf(structuredClone(sheet), { paper: 'letter', fonts }))).toBe(true);
    expect(isAsFirst(await bytesOf(sheet, 'a4'))).toBe(false);
    expect(isAsFirst(await bytesOf({ ...sheet, turnaround: '4 days' }))).toBe(false);
  });

  test('making a sheet leaves its data as they were', async () => {
    const sheet = sheetWith(5);
    const before = structuredClone(sheet);
    await custodyPdf(sheet, { paper: 'letter', fonts });
    expect(sheet).toEqual(before);
  });
});

const hostile = {
  markup: 'O’Neil & Sons <script>alert(1)</script> "x" ]]> &amp;',
  controls: 'bell\u0007 null\u0000 escape\u001b[31m',
  backwards: 'payroll\u202Etxt.exe',
  arabic: 'محمد حسن',
  hebrew: 'יוסף',
  emoji: 'Joe 😀 the painter 👷🏽',
  half: 'half \ud83d of a pair',
  long: `${'Wolfeschlegelsteinhausenbergerdorff'.repeat(11)} end`,
  combining: 'Nunñez São Zoë̋',
};

describe('hostile text on a custody sheet', () => {
  test.each(Object.entries(hostile))(
    '%s: the file is sound, the text is shown or named, the data keep it',
    async (name, text) => {
      const sheet = sheetOf([airRow(0, text), { ...airRow(1), remarks: [text] }, { ...airRow(2), lotNumber: text }], {
        firmName: text,
        samplerName: text,
        site: { ...sheetWith(1).site, name: text },
        lots: [{ lotNumber: text, media: text }],
        laboratory: { name: text, address: text, accreditation: text },
      });
      const path = await written(`hostile-${name}`, sheet);
      oracle('qpdf')?.(['--check', path]);
      expect(oracle('pdfinfo')?.([path]) ?? 'Tagged: yes').toMatch(/Tagged:\s+yes/);
      const xmp = packet(path);
      expect(xmp).toContain('<dc:title>');
      expect(xmp).not.toMatch(/<script|&(?!amp;|lt;|gt;|quot;)/);
      oracle('pdfdetach')?.(['-save', '1', '-o', `${out}/hostile-${name}.json`, path]);
      expect(JSON.parse(readFileSync(`${out}/hostile-${name}.json`, 'utf8'))).toEqual(sheet);
    },
  );

  asks(
    'pdftotext',
    'letters that the typeface does not hold are named by number, and the sheet says so',
    async (pdftotext) => {
      const read = async (change: Partial<CustodySheet>) =>
        squeezed(pdftotext(['-layout', await written('named', sheetOf([airRow(0)], change)), '-']));
      const laboratory = { ...sheetWith(1).laboratory, name: hostile.backwards, accreditation: hostile.half };
      const some = { samplerName: hostile.emoji, turnaround: hostile.controls, method: hostile.hebrew, laboratory };
      const text = await read(some);
      for (const part of ['[U+1F600]', 'bell[U+0007]', '[U+202E]', '[U+D83D]', '[U+05D9 U+05D5 U+05E1'])
        expect(text).toContain(part);
      expect(await read({ samplerName: hostile.hebrew })).toContain('Figures in square brackets');
      expect(await read({ samplerName: 'Íñigo Muñoz' })).not.toContain('Figures in square brackets');
    },
  );

  asks('pdftotext', 'a text too long for its cell stands whole in the notes', async (pdftotext) => {
    const remark = `${'Gust through the open sash. '.repeat(60)}Last word: zenith.`;
    const sheet = sheetOf([{ ...airRow(0), remarks: [remark] }, airRow(1)]);
    const text = squeezed(pdftotext(['-layout', await written('notes', sheet), '-']));
    expect(text).toContain('… note 1');
    expect(text).toContain('Note 1, sample 410010, remarks:');
    expect(text).toContain('Last word: zenith.');
    expect(text.match(/Gust through the open sash\./g)?.length).toBeGreaterThanOrEqual(60);
  });
});
