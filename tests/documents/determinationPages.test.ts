/** A written initial determination, 29 CFR 1926.62(d)(3)(i), (iii) and (d)(5), read from the page model. */
import { describe, expect, test } from 'vitest';
import { determinationPages } from '#documents/determinationPages.ts';
import { makeDeterminationPdf } from '#documents/determinationPdf.ts';
import { type DeterminationInput, determinationValues } from '#documents/determinationValues.ts';
import { alike, below, determinationInput, idOf, measurementOf, peopleOf } from './papers.ts';
import { expectInsideMargins, headsOf, measure, pagesWithRows, rowsOf, textOf } from './readPages.ts';

const pagesOf = (change: Partial<DeterminationInput> = {}) => {
  const input = determinationInput(change);
  return determinationPages(determinationValues(input), input.paper, measure);
};
const textIn = (change: Partial<DeterminationInput> = {}) => textOf(pagesOf(change));
const { finding } = determinationInput();
const positive = {
  outcome: 'positive',
  measurements: [measurementOf()],
  finding: {
    ...finding,
    outcome: 'positive',
    blocks: [{ key: 'sampleDoubtful', measurementId: measurementOf().id, params: {}, because: [] }],
  },
} as const;

describe('a written initial determination', () => {
  test('(d)(5): negative has its title, date, location within the worksite, and each employee monitored', () => {
    const text = textIn();
    expect(text.startsWith('Negative initial determination\n')).toBe(true);
    for (const part of [
      'Date of determination 19 May 2026',
      'Location within the worksite Reading rooms, second floor, south windows',
      'no employee at this task is exposed at or above the action level, 30 µg/m³ as an 8-hour average, without regard to respirators',
      'Written by: Wilhelmina Harrow',
      'Written under 29 CFR 1926.62, paragraphs (d)(3) to (d)(5).',
    ])
      expect(text).toContain(part);
    expect(rowsOf(pagesOf(), 'monitored')).toEqual([['Íñigo Muñoz Güemes', 'Window restorer', 'this firm']]);
    expect(rowsOf(pagesOf(), 'standsFor').map(([who]) => who)).toEqual(['Ana Belén Peñalver', 'Tomáš Dvořák']);
    expect(text).not.toContain('Positive');
  });

  test('(d)(3)(i): measurements with their figures, and the other information that it rests on', () => {
    const [row] = rowsOf(pagesOf(), 'measurements');
    expect(row?.slice(0, 3)).toEqual([
      '12 May 2026',
      'Íñigo Muñoz Güemes',
      'this firm, sampled; NIOSH 7303; report R-1071',
    ]);
    expect(row?.[5]).toBe('less than 4.20');
    const text = textIn({
      complaints: 'Two workers spoke of headaches in March.',
      earlierMeasurements: 'None in this building.',
    });
    for (const part of ['sashes wetted before scraping', 'Two workers spoke of headaches', 'None in this building.'])
      expect(text).toContain(part);
  });

  test('(d)(3)(iii): why an earlier measurement may be relied on: five answers, its age that day, whose it is', () => {
    const reliances = [{ measurementId: below.id, reliedOn: '2026-11-02', answers: alike, ownFirm: 'yes' }] as const;
    const text = textIn({ reliances });
    // 12 May to 2 November 2026: 19 days of May, 30, 31, 31, 30, 31 and 2, counted on a calendar = 174
    expect(text).toContain('Measured on 12 May 2026, relied on from 2 November 2026: 174 days old that day.');
    for (const line of [
      'Processes closely alike',
      'Type of material closely alike',
      'Control methods closely alike',
      'Work practices closely alike',
      'Environmental conditions not known',
      "The employer's own monitoring yes",
    ])
      expect(text).toContain(line);
  });

  test('a positive one says that it is one, and what is doubtful stands beside it without blocking it', () => {
    const text = textIn(positive);
    expect(text.startsWith('Positive initial determination\n')).toBe(true);
    expect(text).toContain('Employees at this task may be exposed at or above the action level');
    expect(text).toContain('12 May 2026: A sample is doubtful or void.');
    expect(text).toContain('A doubt does not stand against a positive determination');
    expect(text).not.toContain('no employee at this task is exposed');
  });

  test('a negative one that the finding does not allow is not made', async () => {
    for (const outcome of ['open', 'positive'] as const)
      await expect(makeDeterminationPdf(determinationInput({ finding: { ...finding, outcome } }))).rejects.toThrow(
        'a negative determination is blocked',
      );
  });

  test('by identifier no name stands in it', () => {
    const text = textIn({ shownAs: 'identifier', standsForIds: [idOf(1)] });
    expect(text).toContain('W-4');
    expect(text).not.toContain('Íñigo');
  });

  test('200 people and 40 measurements go on over pages with their heads; nothing leaves a page', () => {
    const standsForIds = Array.from({ length: 200 }, (_, index) => idOf(index));
    const measurements = standsForIds.slice(0, 40).map((id) => ({ ...below, id: `${id}.2026-05-12`, workerId: id }));
    for (const paper of ['letter', 'a4'] as const) {
      const model = pagesOf({ people: peopleOf(200), standsForIds, measurements, paper, practice: true });
      expect(rowsOf(model, 'standsFor')).toHaveLength(200);
      expect(rowsOf(model, 'measurements')).toHaveLength(40);
      for (const table of ['standsFor', 'measurements'])
        expect(headsOf(model, table)).toEqual(pagesWithRows(model, table).map(Number));
      expect(model.across).toBe('EXAMPLE');
      expectInsideMargins(model);
    }
  });
});
