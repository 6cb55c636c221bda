/** What stands in a notice to workers, read from the page model. Rule: 29 CFR 1926.62(d)(8), as read in the 2015 annual edition. */
import { describe, expect, test } from 'vitest';
import { noticePages } from '#documents/noticePages.ts';
import { type NoticeInput, noticeValues } from '#documents/noticeValues.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import { limitSetOn } from '#reference/limits.ts';
import { exposureInput } from './exposureDays.ts';
import { below, idOf, measurementOf, noticeInput, peopleOf } from './papers.ts';
import { expectInsideMargins, headsOf, measure, pagesWithRows, rowsOf, textOf } from './readPages.ts';

const pagesOf = (change: Partial<NoticeInput> = {}) => {
  const input = noticeInput(change);
  return noticePages(noticeValues(input), input.paper, measure);
};
const textIn = (change: Partial<NoticeInput> = {}, lang?: string) => textOf(pagesOf(change), lang);
const measured = (change: Partial<Measurement>) => ({ measurement: measurementOf(change) });

const was = 'Exposure was at or above the permissible exposure limit of 50 µg/m³';
const mayHaveBeen = 'Exposure may have been at or above the permissible exposure limit of 50 µg/m³';
const fue = 'La exposición estuvo en el límite de exposición permisible de 50 µg/m³ o por encima';
const pudo = 'La exposición pudo haber estado en el límite de exposición permisible de 50 µg/m³ o por encima';

describe('(d)(8)(ii): the statement on the PEL and the corrective action', () => {
  test('at or above: stated as what was, with the corrective action, in both languages', () => {
    const text = textIn();
    for (const part of [was, fue, 'Scraping is done wet from 20 May on', 'Desde el 20 de mayo se raspa en mojado'])
      expect(text).toContain(part);
    expect(text).not.toContain(mayHaveBeen);
  });

  test('exactly at the PEL is not above it and owes the statement all the same', () => {
    const text = textIn(measured({ twa8UgPerM3: { kind: 'exact', value: 50 }, band: 'actionLevelToPel' }));
    expect(text).toContain(was);
    expect(text).toContain('Exactly at it');
    expect(text).toContain('50.0 µg/m³');
  });

  test('bounds that straddle the PEL: stated as what may have been', () => {
    const text = textIn(measured({ twa8UgPerM3: { kind: 'atLeast', lower: 44.2 }, atOrAbovePel: 'unresolved' }));
    expect(text).toContain(mayHaveBeen);
    expect(text).toContain(pudo);
    expect(text).not.toContain(was);
    expect(text).toContain('At least 44.2 µg/m³');
    expect(text).toContain('Por lo menos 44.2 µg/m³');
  });

  test('below: no statement and no corrective action, and it is a notice all the same', () => {
    const text = textIn({ measurement: below, correctiveAction: null });
    for (const absent of [was, mayHaveBeen, fue, pudo, 'What was done about it', 'Qué se hizo'])
      expect(text).not.toContain(absent);
    expect(text).toContain('Less than 4.20 µg/m³');
    expect(text).toContain('Menos de 4.20 µg/m³');
    expect(rowsOf(pagesOf({ measurement: below }), 'standing-en').map(([, verdict]) => verdict)).toEqual([
      'Below it',
      'Below it',
    ]);
  });

  test('a figure under both limits that proves nothing is never called below', () => {
    const open = below.twa8UgPerM3;
    const verdicts = rowsOf(
      pagesOf(measured({ twa8UgPerM3: open, band: 'open', atOrAbovePel: 'unresolved' })),
      'standing-en',
    ).map(([, verdict]) => verdict);
    expect(verdicts).toEqual(Array.from({ length: 2 }, () => 'Not settled: it may have been reached'));
  });

  test('asked for and not written yet: lines to write it on; written in English only: the Spanish page says so', () => {
    const text = textIn({ correctiveAction: null });
    expect(text).toContain('What was done about it, or will be done, to bring it down');
    const english = textIn({ correctiveAction: { en: 'Wet scraping from Monday.', es: null } }, 'es-US');
    expect(english).toContain('En las palabras de la empresa, en inglés: Wet scraping from Monday.');
  });
});

describe('(d)(8)(i): each worker recognises the result', () => {
  test('by name, with whoever carried the pump first, and other firms named', () => {
    expect(rowsOf(pagesOf(), 'standsFor-en').map((row) => row.slice(0, 3))).toEqual([
      ['Íñigo Muñoz Güemes', 'carried the pump', 'this firm'],
      ['Ana Belén Peñalver', 'same work', 'this firm'],
      ['Tomáš Dvořák', 'same work', 'Dvořák Painting'],
      ['Joe Whitlock', 'same work', 'this firm'],
    ]);
  });

  test('posted: by number, else by job title and shift, else a line to write on; never a name', () => {
    const change = { form: 'posted', shownAs: 'identifier', places: ['Wash station'] } as const;
    const model = pagesOf(change);
    expect(rowsOf(model, 'standsFor-es').map(([who]) => who)).toEqual([
      'W-4',
      'W-7',
      'Painter, 07:00–15:30',
      '______________',
    ]);
    const text = textOf(model);
    for (const name of ['Íñigo', 'Peñalver', 'Tomáš', 'Whitlock']) expect(text).not.toContain(name);
    expect(text).toContain('Posted at: Wash station');
    expect(text).toContain('Puesto a la vista en: Wash station');
  });

  test('200 workers go on over pages, each page with the head of the table, none lost, nothing off the page', () => {
    const workerIds = Array.from({ length: 200 }, (_, index) => idOf(index));
    const model = pagesOf({ people: peopleOf(200), workerIds });
    for (const language of ['en', 'es']) {
      const table = `standsFor-${language}`;
      expect(new Set(rowsOf(model, table).map(([who]) => who)).size).toBe(200);
      expect(headsOf(model, table)).toEqual(pagesWithRows(model, table).map(Number));
    }
    expectInsideMargins(model);
  });
});

describe('a notice on pages', () => {
  test.each(['letter', 'a4'] as const)('upright on %s, each language on pages of its own, counted from 1', (paper) => {
    const model = pagesOf({ paper });
    expect([model.widthPt, model.heightPt]).toEqual(paper === 'letter' ? [612, 792] : [595.28, 841.89]);
    expect(model.pages.map(({ lang }) => lang)).toEqual(['en-US', 'en-US', 'es-US', 'es-US']);
    const feet = model.pages.map(({ footer }) => footer.map(({ text }) => text).join(' '));
    expect(feet[0]).toContain('page 1 of 2');
    expect(feet[3]).toContain('página 2 de 2');
    for (const foot of feet) expect(foot).toContain('9f2c4b7e1d6a3805');
    expectInsideMargins(model);
  });

  test('says what was measured, what comes next, the rights, and whom to ask', () => {
    const text = textIn({}, 'en-US');
    for (const part of [
      'Tuesday 12 May 2026',
      'Old Public Library, reading rooms',
      'Scraping paint by hand, dry; Taking out sashes',
      'Half mask, P100 filters',
      '18 May 2026',
      'The next measurement is due by 12 August 2026.',
      'you or someone who speaks for you may watch',
      'You may see the records of your exposure',
      'Ask Wilhelmina Harrow, 555-0142.',
      'Given under 29 CFR 1926.62, paragraph (d)(8).',
    ])
      expect(text).toContain(part);
  });

  test('a long day: what the average over it may reach stands beside the figure', () => {
    const values = { ...noticeValues(noticeInput()), hoursWorked: 10, allowableUgPerM3: 40 };
    const text = textOf(
      noticePages({ ...values, shiftAverageUgPerM3: { kind: 'exact', value: 41 } }, 'letter', measure),
    );
    expect(text).toContain(
      'The work day was 10 h long. Over so long a day the average may reach no more than 40.0 µg/m³; it was 41.0 µg/m³.',
    );
  });

  test('of a day that we sampled: its samples, its verdicts, and its length come from the finding', () => {
    const { finding } = exposureInput();
    const measurement = measurementOf({ finding, twa8UgPerM3: finding.protectiveTwa8?.estimate ?? null });
    const model = pagesOf({ measurement });
    const text = textOf(model, 'en-US');
    expect(text).toContain('Samples 120019 and 120027');
    expect(text).toContain('At least 62.9 µg/m³');
    // 400 / 10 h worked
    expect(text).toContain(
      'The work day was 10 h long. Over so long a day the average may reach no more than 40.0 µg/m³',
    );
    expect(rowsOf(model, 'standing-en').map(([, verdict]) => verdict)).toEqual(['Above it', 'Above it']);
  });

  test('a later revision says what it replaces and why, in both languages', () => {
    const text = textIn({ revision: '3', why: 'The laboratory revised its report.' });
    expect(text).toContain('Revision 3 replaces revision 2, which no longer holds.');
    expect(text).toContain('La revisión 3 reemplaza a la revisión 2, que ya no vale.');
    expect(textIn()).not.toContain('replaces');
  });

  test('where a state has a rule of its own that is not held, the notice says so and names no paragraph of it', () => {
    const text = textIn({ measurement: measurementOf({ limits: limitSetOn('2026-05-12', 'CA') }) }, 'en-US');
    expect(text).toContain('A rule of this state may govern that is not held complete here.');
    expect(text).not.toContain('paragraph (d)(8)');
    expect(text).toContain('10 µg/m³');
  });

  test('a practice book stands across every page and in the words of each', () => {
    const model = pagesOf({ practice: true });
    expect(model.across).toBe('EXAMPLE');
    expect(textOf(model, 'en-US')).toContain('EXAMPLE from a practice book');
    expect(textOf(model, 'es-US')).toContain('EXAMPLE (ejemplo) de un libro de práctica');
    for (const { footer } of model.pages) expect(footer[0]?.text).toContain('EXAMPLE');
    expect(pagesOf().across).toBeNull();
  });

  test('long names and long texts break and stay on the page; letters outside the typeface are named by number', () => {
    const long = 'Wolfeschlegelsteinhausenbergerdorff'.repeat(8);
    const people = new Map([[idOf(0), { name: long, identifier: null, employer: long, jobClassification: null }]]);
    const action = `${'Wet scraping at every sash. '.repeat(70)}Last word: zenith.`;
    const model = pagesOf({
      people,
      workerIds: [idOf(0)],
      siteName: `${long} 图书馆`,
      correctiveAction: { en: action, es: null },
    });
    expectInsideMargins(model);
    const text = textOf(model);
    expect(text).toContain('[U+56FE U+4E66 U+9986]');
    expect(text).toContain('Figures in square brackets');
    expect(text).toContain('Las cifras entre corchetes');
    expect(text).toContain('Last word: zenith.');
    expect(textIn()).not.toContain('square brackets');
  });
});
