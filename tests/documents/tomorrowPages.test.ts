/** Tomorrow's sheet: what stands on it, on how many pages, and that nothing leaves the paper. Expected texts are typed here by hand. */
import { describe, expect, test } from 'vitest';
import { tomorrowPages } from '#documents/tomorrowPages.ts';
import { type TomorrowInput, tomorrowValues } from '#documents/tomorrowValues.ts';
import { tomorrowOf } from '#findings/season/tomorrow.ts';
import { dayPlanOf, evening, personIdOf, preparedOf } from '../findings/season/evening.ts';
import { shiftId } from '../findings/sliceRegisters.ts';
import { letter, occasion } from './papers.ts';
import { expectInsideMargins, headsOf, measure, rowsOf, textOf } from './readPages.ts';

function inputOf(count: number, more: Partial<TomorrowInput> = {}): TomorrowInput {
  const book = more.book ?? evening(count);
  return {
    ...occasion,
    ...letter,
    zone: 'America/Chicago',
    tomorrow: tomorrowOf(book, shiftId, null),
    leastMinByWorker: new Map([[personIdOf(1), 347]]),
    shownAs: 'name',
    ...more,
    book,
  };
}
const modelOf = (input: TomorrowInput, paper: 'letter' | 'a4' = 'letter') =>
  tomorrowPages(tomorrowValues(input), paper, measure);

describe("tomorrow's sheet", () => {
  test('who wears what: worker, work, pump, lot, number digit by digit, minutes, two boxes, room to write', () => {
    const rows = rowsOf(modelOf(inputOf(3)), 'wearers');
    expect(rows[0]).toEqual([
      'Íñigo Muñoz Güemes',
      'Scraping paint by hand',
      'SP-2011',
      'L-7',
      '4 1 0 0 0 7',
      '5 h 47 min',
      '☐',
      '☐',
      '',
    ]);
    expect(rows[1]?.[5]).toBe('');
    expect(rows).toHaveLength(3);
  });

  test('what goes along: spare pump and cassettes, blanks with their labels, who charges, meter and due date', () => {
    const text = textOf(modelOf(inputOf(3)));
    for (const part of [
      'Old public library, Wednesday 25 November 2026',
      'SP-20100 (charged 24 November)',
      '3; spare labels 4 1 0 0 1 3',
      '2 for 3 cassettes; labels 4 1 0 0 1 0, 4 1 0 0 1 1 and 4 1 0 0 1 2',
      'P-1, due 1 June 2027',
      'It proves nothing; what is done counts.',
    ])
      expect(text).toContain(part);
    expect(text).not.toContain('Look at this first');
    expect(text).not.toMatch(/undefined|NaN|null/);
  });

  test('cautions of several workers are one sentence', () => {
    const wearers = preparedOf(3).wearers.map((one) => ({ ...one, pumpId: null }));
    const dayPlan = dayPlanOf({ prepared: preparedOf(3, { asked: 'evening', wearers, sparePumpIds: [] }) });
    const text = textOf(modelOf(inputOf(3, { book: evening(3, { dayPlans: new Map([[shiftId, dayPlan]]) }) })));
    expect(text).toContain('No pump is chosen for Íñigo Muñoz Güemes, Ana Belén Peñalver and Tomáš Dvořák.');
    expect(text).toContain('Ask again in the morning');
    expect(text).toContain('No spare pump.');
  });

  test('by identifier no name stands on the sheet, in its text or in what is attached', () => {
    const values = tomorrowValues(inputOf(4, { shownAs: 'identifier' }));
    expect(JSON.stringify(values)).not.toMatch(/Muñoz|Peñalver|Dvořák|Whitlock/);
    expect(rowsOf(tomorrowPages(values, 'letter', measure), 'wearers')[0]?.[0]).toBe('W-1');
  });

  test.each([
    ['letter', 8],
    ['a4', 7],
  ] as const)('on %s a crew of %i is one page', (paper, count) => {
    const model = modelOf(inputOf(count), paper);
    expect(model.pages).toHaveLength(1);
    expectInsideMargins(model);
  });

  test('forty workers: the head stands on every page that has rows, and nothing leaves it', () => {
    const model = modelOf(inputOf(40));
    expect(model.pages.length).toBeGreaterThan(1);
    expect(headsOf(model, 'wearers').slice(0, 2)).toEqual([1, 1]);
    expect(rowsOf(model, 'wearers')).toHaveLength(40);
    expectInsideMargins(model);
  });
});
