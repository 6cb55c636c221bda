/** What the inspector at the door is shown: one site, and no word of any other (issue: "one view, one site, nothing of other sites"). */
import { describe, expect, test } from 'vitest';
import { findDuties } from '#findings/duties/findDuties.ts';
import { inspectorView } from '#findings/duties/list/inspector.ts';
import { person, site, siteId } from '../sliceRegisters.ts';
import { done, withDone } from './dutyCases.ts';
import { jobBook, notice, olga, reliance, reported, rosterDay, tess, vic, workdayIdOf } from './jobBook.ts';

const today = '2026-11-25';
const bridgeId = 's00000000002';
const bridge = site({ id: bridgeId, siteId: bridgeId, name: 'Mill Lane footbridge', setting: 'outdoors' });
const receipt = 'wwwwwwwwwwww.00000001';

/** Tess at the library and at the bridge; Vic at the library; Olga at the bridge alone. The library rests on a measurement of the bridge too. */
const book = withDone(
  jobBook({
    days: [
      { workOn: '2026-11-03', averageUgPerM3: 80 },
      { workerId: vic, workOn: '2026-11-04', averageUgPerM3: 12 },
      { workerId: olga, workOn: '2026-11-03', averageUgPerM3: 300, siteId: bridgeId, taskIds: ['powerToolOpen'] },
      { workOn: '2026-11-17', averageUgPerM3: 40, siteId: bridgeId },
    ],
    roster: [rosterDay(vic, '2026-11-03')],
    reported: [reported({ workerId: olga, siteId: bridgeId, workOn: '2026-10-01' })],
    reliances: [reliance({ shiftId: `${siteId}.2026-11-04` })],
    notices: [
      notice({
        measurementId: workdayIdOf(tess, '2026-11-03'),
        resultFactIds: [receipt],
        issuedOn: '2026-11-05',
        workerIds: [tess, vic],
      }),
    ],
    sites: [site(), bridge],
    people: [person(tess, 'Tess Trestle'), person(vic, 'Vic Vise'), person(olga, 'Olga Oriel')],
  }),
  done(`programme.${siteId}`, '2026-11-01'),
  done(`programme.${bridgeId}`, '2026-11-02'),
);
const duties = findDuties(book, today);
const view = inspectorView(siteId, duties, book);

/** Every text of a value, keys of maps too. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  if (value instanceof Map || value instanceof Set) return [...value].flatMap(textsIn);
  return Object.entries(value).flatMap(([key, inner]) => [key, ...textsIn(inner)]);
}

describe('one site at the door', () => {
  test('its people, shifts, measurements with figures, notices, determinations, courses, programme', () => {
    expect(view.people.map(({ name }) => name)).toEqual(['Tess Trestle', 'Vic Vise']);
    expect(view.shifts.map(({ workOn }) => workOn)).toEqual(['2026-11-04', '2026-11-03']);
    expect(view.shifts[1]?.days.map(({ workerId }) => workerId).sort()).toEqual([tess, vic]);
    expect(view.measurements.map(({ id }) => id)).toEqual([
      workdayIdOf(vic, '2026-11-04'),
      workdayIdOf(tess, '2026-11-03'),
    ]);
    expect(view.measurements[1]).toMatchObject({ band: 'abovePel', samples: [{ quality: 'good' }] });
    expect(view.notices.map(({ measurementId }) => measurementId).sort()).toEqual(
      view.measurements.map(({ id }) => id).sort(),
    );
    expect(view.determinations.map((one) => one.siteId)).toEqual([siteId]);
    expect(view.courses.length).toBeGreaterThan(0);
    expect(view.programme.find(({ kind }) => kind === 'programme')?.done?.on).toBe('2026-11-01');
    expect(view.limits.heldComplete).toBe(true);
  });

  test('nothing of the other site: not its id, its name, its shifts, its worker, its measurements', () => {
    const texts = textsIn(view);
    expect(texts.length).toBeGreaterThan(300);
    const foreign = [bridgeId, 'Mill Lane', olga, 'Olga', '2026-11-17', 'powerToolOpen', 'r00000000001', 'outdoors|'];
    for (const word of foreign)
      expect(
        texts.filter((text) => text.includes(word)),
        word,
      ).toEqual([]);
  });

  test('the walk finds what is foreign: the same view of the other site is full of it', () => {
    const texts = textsIn(inspectorView(bridgeId, duties, book));
    for (const word of [bridgeId, 'Mill Lane', olga, 'Olga', '2026-11-17', 'powerToolOpen'])
      expect(
        texts.some((text) => text.includes(word)),
        word,
      ).toBe(true);
    for (const word of [siteId, 'Old public library', vic])
      expect(
        texts.filter((text) => text.includes(word)),
        word,
      ).toEqual([]);
  });

  test('an earlier measurement that a job rests on: its day and figure, not whose it was', () => {
    expect(view.relied).toEqual([{ workOn: '2026-10-01', twa8UgPerM3: { kind: 'exact', value: 12 } }]);
    expect(view.elsewhereCount).toBe(1);
  });

  test('a site that is not in the book is a mistake of ours', () => {
    expect(() => inspectorView('s00000000009', duties, book)).toThrow('no site');
  });
});
