/** The bytes of tomorrow's sheet and of labels, read back by programs that are not ours: poppler and qpdf. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { makeLabelPdf } from '#documents/labelPdf.ts';
import { makeTomorrowPdf } from '#documents/tomorrowPdf.ts';
import { tomorrowOf } from '#findings/season/tomorrow.ts';
import { labelSheets } from '#reference/labelSheets.ts';
import { evening } from '../findings/season/evening.ts';
import { shiftId } from '../findings/sliceRegisters.ts';
import { oracle } from '../house/oracles.ts';
import { idOf, letter, occasion, peopleOf } from './papers.ts';
import { fonts } from './sheets.ts';

const out = 'tests/out/papers/season';
mkdirSync(out, { recursive: true });

const labels = [
  { sampleNumber: '410075', workerId: idOf(0), blank: false },
  { sampleNumber: '410083', workerId: null, blank: true },
];
const book = evening(6);
const makers = {
  tomorrow: () =>
    makeTomorrowPdf({
      ...occasion,
      ...letter,
      practice: true,
      tomorrow: tomorrowOf(book, shiftId, null),
      book,
      leastMinByWorker: new Map(),
      shownAs: 'name',
    }),
  labels: () => {
    const sheet = labelSheets().find(({ id }) => id === 'single62');
    if (!sheet) throw new Error('no such sheet');
    const given = { siteName: 'Footbridge', workOn: '2026-09-23', labels, people: peopleOf(1) };
    return makeLabelPdf({ ...occasion, fonts, sheet, startAt: 1, shownAs: 'name', ...given });
  },
};
const sizes = { tomorrow: /Page size:\s+792 x 612 pts \(letter\)/, labels: /Page size:\s+175\.748 x 82\.2047 pts/ };

const [qpdf, pdfinfo, pdfdetach] = [oracle('qpdf'), oracle('pdfinfo'), oracle('pdfdetach')];
const pdftotext = oracle('pdftotext');

test.skipIf(!qpdf || !pdfinfo || !pdfdetach || !pdftotext).each(['tomorrow', 'labels'] as const)(
  '%s: sound, tagged, titled, of its size, with its values',
  async (name) => {
    const made = await makers[name]();
    const path = `${out}/${name}.pdf`;
    writeFileSync(path, made.bytes);
    expect(qpdf?.(['--check', path])).toContain('No syntax or stream encoding errors');
    const info = pdfinfo?.([path]) ?? '';
    for (const part of [/Tagged:\s+yes/, /Title:\s+\S/, sizes[name]]) expect(info).toMatch(part);
    pdfdetach?.(['-save', '1', '-o', `${out}/${name}.json`, path]);
    expect(JSON.parse(readFileSync(`${out}/${name}.json`, 'utf8'))).toEqual(JSON.parse(JSON.stringify(made.values)));
    const tree = pdfinfo?.(['-struct', path]) ?? '';
    expect(tree.match(/Figure/g)?.length ?? 0).toBe(name === 'labels' ? labels.length : 0);
    expect(tree.match(/THead/g)?.length ?? 0).toBe(name === 'labels' ? 0 : 1);
    if (name === 'tomorrow') {
      const text = (pdftotext?.(['-layout', path, '-']) ?? '').replace(/\s+/g, ' ');
      for (const part of ['Marisol Ibáñez Ruiz', '4 1 0 0 1 4', 'To write', 'EXAMPLE']) expect(text).toContain(part);
    }
    // the code is told in words to whoever has the paper read aloud
    const file = readFileSync(path, 'latin1');
    if (name === 'labels') expect(file.match(/\/Alt /g)).toHaveLength(labels.length);
  },
);
