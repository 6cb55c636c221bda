/**
 * Writes the papers that people should look at to tests/out/papers: with LOOK=1 all of them, as PDF and as PNG; else those that no other
 * test makes.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { makeDeterminationPdf } from '#documents/determinationPdf.ts';
import { makeExposureRecordPdf } from '#documents/exposureRecordPdf.ts';
import { makeNoticePdf } from '#documents/noticePdf.ts';
import { makePaperFormPdf } from '#documents/paperFormPdf.ts';
import { makeSignPdf } from '#documents/signPdf.ts';
import { oracle } from '../house/oracles.ts';
import { exposureInput } from './exposureDays.ts';
import {
  alike,
  below,
  determinationInput,
  idOf,
  letter,
  measurementOf,
  noticeInput,
  occasion,
  peopleOf,
} from './papers.ts';

const out = 'tests/out/papers';

const looks: Readonly<Record<string, () => Promise<{ readonly bytes: Uint8Array }>>> = {
  noticeAbove: () => makeNoticePdf(noticeInput()),
  noticeBelowPosted: () =>
    makeNoticePdf(
      noticeInput({
        measurement: below,
        practice: true,
        paper: 'a4',
        form: 'posted',
        shownAs: 'identifier',
        places: ['Site office, board by the door', 'Wash station'],
        correctiveAction: null,
        next: { due: 'none', dueOn: null },
        languages: ['es', 'en'],
      }),
    ),
  noticeMany: () =>
    makeNoticePdf(
      noticeInput({
        measurement: measurementOf({ twa8UgPerM3: { kind: 'atLeast', lower: 44.2 }, atOrAbovePel: 'unresolved' }),
        people: peopleOf(200),
        workerIds: Array.from({ length: 200 }, (_, index) => idOf(index)),
        revision: '2',
        why: 'The laboratory revised its report: sample 410012 is 24.1 µg, not 21.4 µg.',
        correctiveAction: null,
        respirator: null,
        next: null,
        questionsTo: null,
        languages: ['en'],
      }),
    ),
  determinationNegative: () => makeDeterminationPdf(determinationInput()),
  determinationPositive: () =>
    makeDeterminationPdf(
      determinationInput({
        outcome: 'positive',
        paper: 'a4',
        practice: true,
        finding: {
          ...determinationInput().finding,
          outcome: 'positive',
          blocks: [
            { key: 'atOrAboveActionLevel', measurementId: measurementOf().id, params: {}, because: [] },
            { key: 'sampleDoubtful', measurementId: measurementOf().id, params: {}, because: [] },
          ],
        },
        measurements: [measurementOf()],
        reliances: [{ measurementId: measurementOf().id, reliedOn: '2026-11-02', answers: alike, ownFirm: 'yes' }],
      }),
    ),
  exposureRecord: () => makeExposureRecordPdf(exposureInput()),
  paperForm: () =>
    makePaperFormPdf({
      ...occasion,
      ...letter,
      languages: ['en', 'es'],
      siteName: 'Old Public Library',
      workOn: null,
      sheetsCount: 1,
    }),
  sign: () => makeSignPdf({ ...occasion, ...letter }),
  signA4Example: () => makeSignPdf({ ...occasion, ...letter, paper: 'a4', practice: true }),
};

/** Made, held against other programs and begun as a PDF by papersPdf.test.ts. */
const elsewhere = new Set(['noticeAbove', 'determinationNegative', 'exposureRecord', 'paperForm', 'sign']);

test('papers to look at are written to tests/out', async () => {
  mkdirSync(out, { recursive: true });
  const toPng = process.env.LOOK === '1' ? oracle('pdftoppm') : null;
  for (const [name, make] of Object.entries(looks)) {
    if (!toPng && elsewhere.has(name)) continue;
    const { bytes } = await make();
    const path = `${out}/${name}.pdf`;
    writeFileSync(path, bytes);
    expect(new TextDecoder().decode(bytes.slice(0, 8))).toBe('%PDF-1.7');
    toPng?.(['-r', '80', '-png', path, `${out}/${name}`]);
  }
}, 60_000);
