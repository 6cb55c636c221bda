/**
 * The prescribed words, to the letter. Source of the expected words: 29 CFR 1926.62(m)(1)(i) and (g)(2)(vii)(A), 2015 annual edition,
 * as quoted in the project's reference reading of 2026-11-25; typed here a second time.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { signPages, signValues } from '#documents/signPages.ts';
import { makeSignPdf } from '#documents/signPdf.ts';
import { oracle } from '../house/oracles.ts';
import { letter, occasion } from './papers.ts';
import { expectInsideMargins, joined, linesOf, measure, textOf } from './readPages.ts';

const sign =
  'DANGER / LEAD WORK AREA / MAY DAMAGE FERTILITY OR THE UNBORN CHILD / CAUSES DAMAGE TO THE CENTRAL NERVOUS SYSTEM / DO NOT EAT, DRINK OR SMOKE IN THIS AREA';
const label =
  'DANGER: CLOTHING AND EQUIPMENT CONTAMINATED WITH LEAD. MAY DAMAGE FERTILITY OR THE UNBORN CHILD. CAUSES DAMAGE TO THE CENTRAL NERVOUS SYSTEM. DO NOT EAT, DRINK OR SMOKE WHEN HANDLING. DO NOT REMOVE DUST BY BLOWING OR SHAKING. DISPOSE OF LEAD CONTAMINATED WASH WATER IN ACCORDANCE WITH APPLICABLE LOCAL, STATE, OR FEDERAL REGULATIONS.';

const modelOn = (paper: 'letter' | 'a4', practice = false) =>
  signPages(signValues({ ...occasion, practice }), paper, measure);
/** The large words of a page: before the translation. */
const largeWords = (page: number): string[] => {
  const texts = modelOn('letter').pages[page]?.blocks.flatMap((block) => {
    const text = joined(linesOf(block));
    return text === '' ? [] : [text];
  });
  return (
    texts?.slice(
      0,
      texts.findIndex((text) => text.startsWith('In Spanish')),
    ) ?? []
  );
};

describe('the sign and the label', () => {
  test('(m)(1)(i): the sign has the prescribed words and no others', () => {
    expect(largeWords(0).join(' / ')).toBe(sign);
  });

  test('(g)(2)(vii)(A): the label has the prescribed words and no others', () => {
    expect(largeWords(1).join(' ')).toBe(label);
  });

  test.each(['letter', 'a4'] as const)('each has one sheet of %s, and nothing leaves it', (paper) => {
    const model = modelOn(paper);
    expect(model.pages).toHaveLength(2);
    expect(modelOn(paper, true).pages).toHaveLength(2);
    expectInsideMargins(model);
  });

  test('the Spanish words are said to be our own translation', () => {
    const text = textOf(modelOn('letter'));
    expect(text).toContain('In Spanish, our own translation; the words above are the ones prescribed:');
    expect(text).toContain('ÁREA DE TRABAJO CON PLOMO');
    expect(text).toContain('PUEDE DAÑAR LA FERTILIDAD');
  });

  const pdftotext = oracle('pdftotext');
  test.skipIf(pdftotext === null)('the words are in the file as another program reads it (pdftotext)', async () => {
    mkdirSync('tests/out/papers', { recursive: true });
    const path = 'tests/out/papers/sign-read.pdf';
    const { bytes, values } = await makeSignPdf({ ...occasion, ...letter });
    writeFileSync(path, bytes);
    const read = (pdftotext?.([path, '-']) ?? '').replace(/\s+/g, ' ');
    expect(read).toContain(sign.replaceAll(' / ', ' '));
    expect(read).toContain(label);
    expect([values.sign.join(' / '), values.label.join(' ')]).toEqual([sign, label]);
  });
});
