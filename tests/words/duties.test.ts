/** Every kind of duty has its sentences, and none of them says more than it may. */
import { describe, expect, test } from 'vitest';
import { addDays } from '#core/calendar.ts';
import { findDuties } from '#findings/duties/findDuties.ts';
import { dutyNames } from '#findings/duties/list/calendar.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import { allDutyTables } from '#reference/duties.ts';
import { done, withDone } from '#tests/findings/duties/dutyCases.ts';
import { jobBook, rosterDay, shiftOn, tess, vic } from '#tests/findings/duties/jobBook.ts';
import { base, siteId } from '#tests/findings/sliceRegisters.ts';
import {
  becauseOfWhat,
  byWhen,
  kindsInWords,
  presumedNote,
  whatFulfils,
  whatToDo,
  whereItLies,
  whoseDecision,
} from '#words/duties.ts';

const today = '2026-12-20';
const request = {
  ...base('request', 'y00000000001'),
  ...{
    requestId: 'y00000000001',
    askedOn: '2026-12-01',
    by: 'Vera Vent',
    personId: null,
    as: 'agency' as const,
    remark: null,
  },
};
const asked = {
  equipment: 'yes',
  process: 'no',
  control: 'no',
  personnel: 'no',
  newTask: 'notKnown',
  factId: 'wwwwwwwwwwww.00000009',
} as const;

/** Books in which, together, every kind stands. */
const books = [
  jobBook({
    days: [
      { workOn: '2026-11-03', averageUgPerM3: 80, receivedOn: '2026-11-10' },
      { workerId: vic, workOn: '2026-11-04', averageUgPerM3: 40, receivedOn: '2026-11-10', taskIds: ['glazing'] },
      { workerId: vic, workOn: '2026-11-05', averageUgPerM3: 12, regular: 'no', taskIds: ['setUp'] },
    ],
    roster: [rosterDay(vic, '2026-11-06'), rosterDay(tess, '2026-11-20')],
    shifts: [shiftOn('2026-11-20', { changes: asked })],
    more: { requests: new Map([[request.id, request]]) },
  }),
  jobBook({
    days: [
      { workOn: '2026-11-03', averageUgPerM3: 250 },
      { workOn: '2026-11-20', averageUgPerM3: 60 },
    ],
    shifts: [shiftOn('2026-11-20', { changes: asked })],
  }),
  jobBook({ days: [{ workOn: '2026-11-03', averageUgPerM3: 12 }] }),
  withDone(
    jobBook({ roster: Array.from({ length: 32 }, (_, i) => rosterDay(tess, addDays('2026-10-01', i))) }),
    ...['programme', 'bloodTests', 'training', 'recordsTold'].map((kind) =>
      done(`${kind}.${kind === 'programme' ? siteId : tess}`, '2026-10-02'),
    ),
  ),
];
const found = books.flatMap((book) =>
  findDuties(book, today).duties.map((duty) => ({ duty, names: dutyNames(book, 'names') })),
);
const sentencesOf = ({ duty, names }: { readonly duty: Duty; readonly names: ReturnType<typeof dutyNames> }) => [
  `${whatToDo(duty, names)}, ${byWhen(duty)}.`,
  becauseOfWhat(duty, names),
  whatFulfils(duty),
  whoseDecision(duty),
  ...[whereItLies(duty), presumedNote(duty)].flatMap((one) => one ?? []),
];

describe('sentences of duties', () => {
  test('every kind of shared/duties has words, and no words stand without a kind', () => {
    const kinds = allDutyTables().flatMap(({ duties }) => duties.map(({ kind }) => kind));
    expect([...kindsInWords].sort()).toEqual([...kinds].sort());
  });

  test('nearly every kind is met with here', () => {
    const met = new Set(found.map(({ duty }) => duty.kind));
    // a written record that differs needs an issued paper
    expect(kindsInWords.filter((kind) => !met.has(kind))).toEqual(['determinationDiffers']);
  });

  test.each(
    [...new Map(found.map((one) => [one.duty.kind, one])).values()].map((one) => [one.duty.kind, one] as const),
  )('%s', (_, one) => {
    for (const sentence of sentencesOf(one)) {
      expect(sentence).not.toMatch(/undefined|NaN|null|\[object| {2}|\bat ,|of on | {1}\./);
      expect(sentence).not.toMatch(/complian|\bsafe|DERIVED|MEMORY|exposure assessment/i);
      expect(sentence).toMatch(/[.?]$/);
      expect(sentence).toMatch(/^[A-Z]/);
    }
  });

  test('no sentence carries the digits of a limit: limits come from the data', () => {
    for (const one of found)
      for (const sentence of [whatFulfils(one.duty), whoseDecision(one.duty)]) expect(sentence).not.toMatch(/\d/);
  });

  test('a presumed one says so and cites the interim protections, or that it stands on the careful side', () => {
    const presumed = found.filter(({ duty }) => duty.presumed);
    expect(presumed.length).toBeGreaterThan(10);
    for (const { duty } of presumed)
      expect(duty.paragraph.startsWith('(d)(2)') ? null : presumedNote(duty)).toEqual(
        duty.paragraph.startsWith('(d)(2)') ? null : expect.stringContaining('careful side'),
      );
  });
});
