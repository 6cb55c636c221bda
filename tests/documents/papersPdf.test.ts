/** The bytes of every paper, read back by programs that are not ours: poppler and qpdf. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { makeDeterminationPdf } from '#documents/determinationPdf.ts';
import { makeExposureRecordPdf } from '#documents/exposureRecordPdf.ts';
import { makeNoticePdf } from '#documents/noticePdf.ts';
import { makePaperFormPdf } from '#documents/paperFormPdf.ts';
import { makeSignPdf } from '#documents/signPdf.ts';
import { type OracleName, oracle } from '../house/oracles.ts';
import { exposureInput } from './exposureDays.ts';
import { determinationInput, letter, noticeInput, occasion } from './papers.ts';

const out = 'tests/out/papers/read';
mkdirSync(out, { recursive: true });

interface Made {
  readonly bytes: Uint8Array;
  readonly values: object;
}
const form = { ...occasion, siteName: 'Old Public Library', workOn: '2026-05-12', sheetsCount: 2 };
const both = ['en', 'es'] as const;
const papers: Readonly<Record<string, { readonly attached: string; make(paper: 'letter' | 'a4'): Promise<Made> }>> = {
  notice: { attached: 'notice.json', make: (paper) => makeNoticePdf(noticeInput({ paper })) },
  determination: {
    attached: 'determination.json',
    make: (paper) => makeDeterminationPdf(determinationInput({ paper })),
  },
  exposureRecord: {
    attached: 'exposure-record.json',
    make: (paper) => makeExposureRecordPdf(exposureInput({ paper })),
  },
  sign: { attached: 'sign.json', make: (paper) => makeSignPdf({ ...occasion, ...letter, paper }) },
  paperForm: {
    attached: 'paper-form.json',
    make: (paper) => makePaperFormPdf({ ...form, ...letter, paper, languages: both }),
  },
};

function makeAnew(name: string, paper: 'letter' | 'a4'): Promise<Made> {
  const paperOf = papers[name];
  if (!paperOf) throw new Error(name);
  return paperOf.make(paper);
}

interface Written {
  readonly path: string;
  readonly made: Made;
}
const known = new Map<string, Promise<Written>>();

/** Each paper is made once; what is asked of it shares the file. */
function written(name: string, paper: 'letter' | 'a4' = 'letter'): Promise<Written> {
  const path = `${out}/${name}-${paper}.pdf`;
  const found =
    known.get(path) ??
    makeAnew(name, paper).then((made) => {
      writeFileSync(path, made.bytes);
      return { path, made };
    });
  known.set(path, found);
  return found;
}

const asks = (name: OracleName, title: string, body: (run: (args: readonly string[]) => string) => Promise<void>) => {
  const run = oracle(name);
  test.skipIf(run === null)(`${title} (${name})`, async () => {
    if (run) await body(run);
  });
};
const squeezed = (text: string): string => text.replace(/\s+/g, ' ');

describe.each(Object.keys(papers))('%s as PDF', (name) => {
  asks('qpdf', 'is a sound file', async (qpdf) => {
    expect(qpdf(['--check', (await written(name)).path])).toContain('No syntax or stream encoding errors');
  });

  asks('pdfinfo', 'is tagged, titled, and lies upright on Letter and A4', async (pdfinfo) => {
    const onLetter = pdfinfo([(await written(name)).path]);
    expect(onLetter).toMatch(/Tagged:\s+yes/);
    expect(onLetter).toMatch(/Title:\s+\S/);
    expect(onLetter).toMatch(/Author:\s+Harrow & Daughter Window Restoration/);
    expect(onLetter).toMatch(/Page size:\s+612 x 792 pts \(letter\)/);
    expect(pdfinfo([(await written(name, 'a4')).path])).toMatch(/Page size:\s+595\.28 x 841\.89 pts \(A4\)/);
  });

  asks('pdfdetach', 'carries its values, equal to what is kept in the fact', async (pdfdetach) => {
    const { path, made } = await written(name);
    expect(pdfdetach(['-list', path])).toContain(papers[name]?.attached);
    pdfdetach(['-save', '1', '-o', `${out}/${name}.json`, path]);
    const read: unknown = JSON.parse(readFileSync(`${out}/${name}.json`, 'utf8'));
    expect(read).toEqual(JSON.parse(JSON.stringify(made.values)));
    expect(JSON.stringify(read)).not.toMatch(/NaN|Infinity|undefined/);
  });

  test('the same input gives the same bytes', async () => {
    const { bytes } = (await written(name)).made;
    expect(new TextDecoder().decode(bytes.slice(0, 8))).toBe('%PDF-1.7');
    // bytes against bytes, at once instead of one by one
    expect(Buffer.compare(bytes, (await makeAnew(name, 'letter')).bytes)).toBe(0);
  });
});

describe('what other programs read', () => {
  asks('pdftotext', 'the notice, with every Spanish letter', async (pdftotext) => {
    const text = squeezed(pdftotext(['-layout', (await written('notice')).path, '-']));
    for (const part of [
      'Exposure was at or above the permissible exposure limit of 50 µg/m³, without regard to respirators.',
      'Aviso: plomo en el aire del trabajo',
      'La exposición estuvo en el límite de exposición permisible de 50 µg/m³ o por encima',
      'Íñigo Muñoz Güemes',
      'La próxima medición debe hacerse a más tardar el 12 de agosto de 2026.',
      'página 2 de 2',
    ])
      expect(text).toContain(part);
    expect(text).not.toContain('[U+');
  });

  asks('pdfinfo', 'the Spanish pages say that they are Spanish; headings and tables are tagged', async (pdfinfo) => {
    const tree = pdfinfo(['-struct-text', (await written('notice')).path]);
    expect(tree).toMatch(/Sect.*\n(.*\n)*? {4}H1/);
    expect(readFileSync(`${out}/notice-letter.pdf`, 'latin1')).toContain('/Lang (es-US)');
    expect(tree.match(/H1 \(block\)/g)).toHaveLength(2);
    // two tables a language, each with one head
    expect(tree.match(/THead/g)).toHaveLength(4);
    expect(tree).not.toMatch(/page 1 of 2|continued/);
  });

  asks('pdftotext', 'the exposure record, with the struck value and its workings', async (pdftotext) => {
    const text = squeezed(pdftotext(['-layout', (await written('exposureRecord')).path, '-']));
    for (const part of [
      '38.4 µg struck, 33.4 µg put in its place',
      '= 33.4 µg / 455.44 L × 1000',
      'Ana Belén Peñalver',
    ])
      expect(text).toContain(part);
  });

  asks('pdfinfo', 'the blank form takes three pages a sheet, in either language, on either paper', async (pdfinfo) => {
    for (const paper of ['letter', 'a4'] as const)
      expect(pdfinfo([(await written('paperForm', paper)).path])).toMatch(/Pages:\s+12\n/);
  });

  asks('pdftotext', 'the blank form asks in the order of the phone', async (pdftotext) => {
    const text = squeezed(pdftotext(['-layout', '-l', '3', (await written('paperForm')).path, '-']));
    const order = [
      'Flow before',
      'Before entering',
      'Number on the cassette',
      'On the worker',
      'Put on at',
      'Looked at, time',
      'After leaving',
      'Stopped at',
      'A regular day?',
      'Sealed at',
      'Flow after',
      'Field blanks',
      'Conditions of the day',
      'Everyone who was there',
      'Box for the laboratory',
    ];
    const places = order.map((part) => text.indexOf(part));
    expect(places.every((at) => at >= 0)).toBe(true);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(text).toContain('12 May 2026');
  });

  asks('pdffonts', 'embeds a subset of each face', async (pdffonts) => {
    const lines = pdffonts([(await written('notice')).path])
      .trim()
      .split('\n')
      .slice(2);
    for (const line of lines) expect(line).toMatch(/[A-Z]{6}\+DejaVuSans.* yes +yes +yes /);
  });
});
