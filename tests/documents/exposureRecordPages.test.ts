/** The exposure record of a worker's day, 29 CFR 1926.62(n)(1)(ii)(A)-(E), read from its values and pages. */
import { describe, expect, test } from 'vitest';
import type { Term } from '#core/formula.ts';
import { exposureRecordPages } from '#documents/exposureRecordPages.ts';
import { type ExposureRecordInput, exposureRecordValues } from '#documents/exposureRecordValues.ts';
import type { WorkdayFinding } from '#findings/workday.ts';
import { exposureInput } from './exposureDays.ts';
import { idOf, peopleOf } from './papers.ts';
import { expectInsideMargins, headsOf, measure, pagesWithRows, rowsOf, textOf } from './readPages.ts';

const pagesOf = (change: Partial<ExposureRecordInput> = {}) => {
  const input = exposureInput(change);
  return exposureRecordPages(exposureRecordValues(input), input.paper, measure);
};
const text = textOf(pagesOf());

/** Names of all formulas that a finding was worked out by, however deep. */
function formulasIn(value: unknown, found = new Set<string>()): Set<string> {
  if (typeof value !== 'object' || value === null) return found;
  const term = value as Partial<Extract<Term, { kind: 'working' }>>;
  if (term.kind === 'working' && term.formula) found.add(term.formula.expression);
  for (const inner of Object.values(value)) formulasIn(inner, found);
  return found;
}

describe('the fields of (n)(1)(ii)', () => {
  test('(A) dates, number, duration, location and result of each sample, and how they represent the day', () => {
    for (const part of [
      'Work day Wednesday 25 November 2026',
      'Site Old public library, PA, indoors',
      'Sample 120019',
      'Sample 120027',
      'On the worker with the pump running 240 min',
      'Personal samples, with the filter in the breathing zone, over 9 h of the 10 h accounted for above',
      'It was said to be a regular day',
    ])
      expect(text).toContain(part);
    expect(rowsOf(pagesOf(), 'minutes').map((row) => row.slice(0, 4))).toEqual([
      ['07:00 to 11:00', '240', 'sample 120019', ''],
      ['11:00 to 11:30', '30', 'away from the lead area', 'Lunch in the site office, hands and face washed'],
      ['11:30 to 16:30', '300', 'sample 120027', ''],
      ['16:30 to 17:00', '30', 'not known', ''],
    ]);
  });

  test('(B) methods of sampling and analysis, and what shows how exact they are', () => {
    for (const part of [
      'Analytical method NIOSH 7082',
      'Stillwater Industrial Hygiene Laboratory; accreditation A-100',
      'Sampling and analytical error given 14.0 %',
      'Flow before, pump A 1.98 L/min to 2.04 L/min; 2 L/min; 2.01 L/min; flow meter RT-7',
      'Rotameter (float in a tube); certificate of 1 June 2026; calibration due 1 June 2027',
      '1.5 L/min → 1.46 L/min; 2.5 L/min → 2.47 L/min',
      'Field blank 000456 less than 0.500 µg',
    ])
      expect(text).toContain(part);
  });

  test('(C) respirator, (D) whom it stands for with job classifications, (E) conditions', () => {
    expect(text).toContain('Respirator worn Half mask, P100 filters');
    expect(rowsOf(pagesOf(), 'standsFor')).toEqual([
      ['Ana Belén Peñalver', 'Window restorer', 'this firm'],
      ['Tomáš Dvořák', 'Painter', 'Dvořák Painting'],
    ]);
    for (const part of [
      'Tool Hand tools',
      'Wet or dry Dry',
      'Lead in the paint Presumed',
      'Two sashes open to the street',
    ])
      expect(text).toContain(part);
  });
});

describe('workings and corrections', () => {
  test('figures are those of a hand calculation', () => {
    // By hand: readings (1.98+2.04)/2 = 2.01; mean of 2.01, 2.00, 2.01 = 2.006667; by the certificate's pairs
    // 1.46 + (2.006667 - 1.5) x (2.47 - 1.46) / (2.5 - 1.5) = 1.971733. Of 1.86: 1.46 + 0.36 x 1.01 = 1.8236.
    // Average 1.897667; times 240 min = 455.44 L; 33.4 / 455.44 x 1000 = 73.33568.
    for (const line of ['= 2.006667 L/min', '= 1.971733 L/min', '= 1.8236 L/min', '= 1.897667 L/min', '= 455.44 L'])
      expect(text).toContain(line);
    expect(text).toContain('= 33.4 µg / 455.44 L × 1000\n= 73.33568 µg/m³');
    // 1.9 read: 1.46 + 0.4 x 1.01 = 1.864; (1.8236 + 1.864) / 2 = 1.8438; x 300 = 553.14 L; 21.9 / 553.14 x 1000 = 39.59215.
    // (73.33568 x 240 + 0 x 30 + 39.59215 x 300) / 480 = 61.412929: at least, for 30 minutes are unknown, so rounded down.
    expect(text).toContain('= at least 61.41292 µg/m³');
    expect(text).toContain('8-hour average at least 61.4 µg/m³');
    // 400 / 10 h
    expect(text).toContain('May reach over this shift, at most 40.0 µg/m³');
  });

  test('every formula that the figures of samples and day rest on is written out', () => {
    const finding: WorkdayFinding = exposureInput().finding;
    const { samples, twa8, protectiveTwa8, hoursWorked, shiftAverage, allowableAverage } = finding;
    const shown = samples.map((sample) => [
      sample.averageFlow,
      sample.volume,
      sample.concentration,
      sample.protectiveConcentration,
      sample.wornMin,
      sample.twaShare,
    ]);
    const expressions = formulasIn([shown, twa8, protectiveTwa8, hoursWorked, shiftAverage, allowableAverage]);
    expect(expressions.size).toBeGreaterThan(8);
    for (const expression of expressions) expect(text).toContain(expression);
  });

  test('lines are indented by their depth; what was worked out before is named by its number', () => {
    const { workings } = exposureRecordValues(exposureInput());
    expect(workings.map(({ number }) => number)).toEqual(workings.map((_, at) => at + 1));
    const volume = workings.find(({ title }) => title.includes('Sampled volume, sample 120019'));
    expect(volume?.lines.map(({ depth }) => depth)).toEqual([0, 0, 0, 1, 1, 0]);
    expect(volume?.lines.map((line) => line.text).join('\n')).toMatch(/average flow = .* \(working \d+\)/);
  });

  test('only sources that were read are cited', () => {
    expect(text).toContain('Source: 40 CFR 50 Appendix B');
    expect(text).toContain('our own derivation');
    expect(text).not.toMatch(/Source: [^\n]*(MEMORY|DERIVED)/);
  });

  test('a struck value stands beside what took its place, with the reason and who', () => {
    expect(text).toContain(
      'Lead on the filter: 38.4 µg struck, 33.4 µg put in its place, because misread (Wilhelmina Harrow).',
    );
    expect(text).not.toContain('No value of this day was corrected.');
  });
});

describe('the record on pages', () => {
  test('by identifier no name of a worker stands in it', () => {
    const shown = textOf(pagesOf({ shownAs: 'identifier', to: 'W-7' }));
    expect(shown).toContain('W-7');
    for (const name of ['Peñalver', 'Dvořák, ', 'Tomáš', 'Wilhelmina']) expect(shown).not.toContain(name);
  });

  test('200 people go on over pages with their head; nothing leaves a page, on either paper', () => {
    const standsForIds = Array.from({ length: 200 }, (_, index) => idOf(index));
    const people = new Map([...exposureInput().people, ...peopleOf(200)]);
    for (const paper of ['letter', 'a4'] as const) {
      const model = pagesOf({ people, standsForIds, paper, practice: true });
      expect(rowsOf(model, 'standsFor')).toHaveLength(200);
      expect(headsOf(model, 'standsFor')).toEqual(pagesWithRows(model, 'standsFor').map(Number));
      expect(model.across).toBe('EXAMPLE');
      expectInsideMargins(model);
    }
  });

  test('says how long it is kept, who may see it, the heads of the record, and what it replaces', () => {
    const revised = textOf(pagesOf({ revision: '2', why: 'Mass misread' }));
    for (const part of [
      'at least 30 years',
      'Revision 2 replaces revision 1',
      'Mass misread',
      '9f2c4b7e1d6a3805c4e7f1b2',
    ])
      expect(revised).toContain(part);
  });
});
