/**
 * *Adding anything but a valid measurement or a settled correction removes no duty*, over drawn books with all kinds of facts, and what the
 * acts that do have an effect may remove and nothing else. Seed printed; SEED=… changes it, TIMES=… draws more.
 */
import * as fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { findDuties } from '#findings/duties/findDuties.ts';
import type { Book } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import { ids, office, wanted } from '../../records/facts.ts';
import { relaxed, takenAway } from './auditLaw.ts';
import * as s from './auditSeason.ts';

vi.setConfig({ testTimeout: 60_000 });
const seed = Number(process.env.SEED ?? 20261125);
console.info(`nothing added takes a duty away: seed ${seed} (SEED=… to change)`);
const runs = (numRuns: number) => ({ seed, numRuns: numRuns * Number(process.env.TIMES ?? 1) });
const today = '2026-12-20';
const dates = ['2026-11-02', '2026-11-09', '2026-11-16'] as const;
const who = [s.ana, s.ben] as const;

/** Average of that day; `roster`: there, not measured; `owed`: measured, no result yet; `irregular`: 12, and not the regular day. */
const drawnDay = fc.constantFrom(12, 12, 20, 30, 60, 'roster', 'roster', 'absent', 'owed', 'irregular');
const drawn = fc.record({
  days: fc.array(drawnDay, { minLength: 6, maxLength: 6 }),
  task: fc.constantFrom('dustCleanup', 'handScraping'),
  place: fc.nat(5),
});
type Drawn = typeof drawn extends fc.Arbitrary<infer T> ? T : never;

const placeOf = (index: number) => ({ worker: who[index % 2] ?? s.ana, on: dates[Math.floor(index / 2)] ?? dates[0] });

function factsOf({ days, task }: Drawn): NewFact[] {
  const taskIds = [task];
  const found = [...s.registers(), ...dates.flatMap((on) => s.shiftOpened(on))];
  days.forEach((day, index) => {
    const { worker, on } = placeOf(index);
    if (day === 'absent') return;
    if (day === 'roster') found.push(s.noted(worker, on, { taskIds }));
    else if (day === 'owed') found.push(...s.sampled(worker, on, { taskIds, averageUgPerM3: null }));
    else if (day === 'irregular') found.push(...s.sampled(worker, on, { taskIds, averageUgPerM3: 12, regular: 'no' }));
    else found.push(...s.sampled(worker, on, { taskIds, averageUgPerM3: Number(day) }));
  });
  return found;
}

interface Given {
  readonly drawn: Drawn;
  readonly facts: readonly NewFact[];
  readonly book: Book;
  readonly worker: string;
  readonly on: string;
  readonly day: Drawn['days'][number];
}

/** null: nothing of the kind to be added there. */
type Addition = (given: Given) => readonly NewFact[] | null;
const isSampled = ({ day }: Given): boolean => !['roster', 'absent'].includes(String(day));
const onSample =
  (make: (given: Given, sampleId: string) => readonly NewFact[]): Addition =>
  (given) =>
    isSampled(given) ? make(given, s.sampleOf(given.worker, given.on)) : null;
const another = ({ drawn: { task } }: Given) => [task, 'glazing'];
const newDay = '2026-11-23';

const additions: Readonly<Record<string, Addition>> = {
  'a void': onSample((_, sampleId) => [wanted('sampleVoided.v1', { sampleId }, { why: 'found open' })]),
  'a mishap': onSample((_, sampleId) => [wanted('mishapNoted.v1', { sampleId, mishap: 'wet', remark: null })]),
  'an irregular day': (given) => [
    wanted('dayDescribed.v1', { workdayId: s.dayOf(given.worker, given.on), regular: 'no', reason: 'rain' }),
  ],
  'another roster entry of that shift': (given) =>
    given.day === 'absent' ? null : [s.noted(given.worker, given.on, { taskIds: another(given) })],
  'the same entry with a classification': (given) =>
    given.day === 'absent'
      ? null
      : [s.noted(given.worker, given.on, { taskIds: [given.drawn.task], jobClassificationId: 'j00000000001' })],
  'a roster entry at a second site': (given) =>
    given.day === 'absent' ? null : [s.noted(given.worker, given.on, { siteId: s.bridge, taskIds: ['handSanding'] })],
  'one more on the roster': ({ on, drawn: { task } }) => [s.noted(s.cleo, on, { taskIds: [task] })],
  'a later day on the roster': ({ worker, drawn: { task } }) => [
    ...s.shiftOpened(newDay),
    s.noted(worker, newDay, { taskIds: [task] }),
  ],
  'a later sample that is owed': ({ worker, drawn: { task } }) => [
    ...s.shiftOpened(newDay),
    ...s.sampled(worker, newDay, { taskIds: [task], averageUgPerM3: null }),
  ],
  'a later irregular low one': ({ worker, drawn: { task } }) => [
    ...s.shiftOpened(newDay),
    ...s.sampled(worker, newDay, { taskIds: [task], averageUgPerM3: 8, regular: 'no' }),
  ],
  'a later low one nobody called regular': ({ worker, drawn: { task } }) => [
    ...s.shiftOpened(newDay),
    ...s.sampled(worker, newDay, { taskIds: [task], averageUgPerM3: 8, regular: null }),
  ],
  'a later one without flow after': ({ worker, drawn: { task } }) => [
    ...s.shiftOpened(newDay),
    ...s.sampled(worker, newDay, { taskIds: [task], averageUgPerM3: 8, flowAfter: false }),
  ],
  'a later high one': ({ worker, drawn: { task } }) => [
    ...s.shiftOpened(newDay),
    ...s.sampled(worker, newDay, { taskIds: [task], averageUgPerM3: 70 }),
  ],
  "an inspector's low one": ({ worker, on, drawn: { task } }) => [
    s.reported({
      from: 'inspector',
      ownFirm: 'no',
      workerId: worker,
      workOn: on,
      receivedOn: '2026-12-01',
      taskIds: [task],
    }),
  ],
  "a consultant's low one of nobody in the book": ({ on, drawn: { task } }) => [
    s.reported({ workerId: null, workOn: on, receivedOn: '2026-12-01', taskIds: [task] }),
  ],
  "a consultant's low one, method not stated": ({ worker, drawn: { task } }) => [
    s.reported({ workerId: worker, workOn: newDay, accuracy: 'notStated', receivedOn: '2026-12-01', taskIds: [task] }),
  ],
  'a low one at no site': ({ worker, drawn: { task } }) => [
    s.reported({ workerId: worker, siteId: null, workOn: newDay, receivedOn: '2026-12-01', taskIds: [task] }),
  ],
  'a change': ({ on }) => [s.changesAsked(on, { control: 'yes' })],
  'a change nobody knew of': ({ on }) => [s.changesAsked(on, { personnel: 'notKnown' })],
  'stricter limits': () => [
    wanted('limitsChosen.v1', {
      ...{ bookId: ids.book, besideIds: ['niosh-rel'], ownActionLevelUgPerM3: 10, ownPelUgPerM3: 15 },
    }),
  ],
  'laxer own limits': () => [
    wanted('limitsChosen.v1', {
      ...{ bookId: ids.book, besideIds: [], ownActionLevelUgPerM3: 200, ownPelUgPerM3: 400 },
    }),
  ],
  'from when to when somebody works here': ({ worker }) => [
    wanted('employmentStated.v1', { personId: worker, fromOn: '2026-11-01', toOn: '2026-11-20' }),
  ],
  'records asked for': () => [
    wanted('recordsRequested.v1', {
      ...{ requestId: 'k00000000001', askedOn: '2026-12-01', by: 'Ana Putty', personId: s.ana, as: 'worker' },
      remark: null,
    }),
  ],
  'in writing for another': ({ worker, on, day }) =>
    day === 60 || day === 30 || day === 'owed' ? [s.represents(worker, on, worker === s.ana ? s.ben : s.ana)] : null,
  'relying on it': ({ worker, on, drawn: { task } }) => [
    ...s.shiftOpened(newDay),
    wanted('measurementReliedOn.v1', {
      ...{
        relianceId: 'v00000000001',
        measurementId: s.dayOf(worker, on),
        shiftId: s.shiftAt(newDay),
        taskIds: [task],
      },
      ...{ jobClassificationId: null, processes: 'alike', material: 'notKnown', controls: 'alike', practices: 'alike' },
      ...{ environment: 'alike', ownFirm: 'yes' },
    }),
  ],
  'a notice to nobody it concerns': ({ worker, on }) => [
    wanted('noticeIssued.v1', {
      ...{ noticeId: 'n00000000001', measurementId: s.dayOf(worker, on), revision: '1', resultFactIds: [] },
      ...{ receivedOn: on, workerIds: [s.ana, s.ben], form: 'inWriting', places: [], shownAs: 'name' },
      ...{ languages: ['en'], pelStatement: true, correctiveAction: 'wet method', notice: {}, pdfHash: 'b'.repeat(64) },
      ...{ editions: { app: '1', rules: '2', formulas: '3' }, heads: [] },
    }),
    wanted('noticeGiven.v1', {
      ...{ noticeId: 'n00000000001', workerId: worker, how: 'handedOver', place: null, language: 'en', initials: 'A' },
    }),
  ],
};

/** A valid measurement, high or low, is what a date is counted from; a high one makes the determination positive. */
const ofValidOnes: Readonly<Record<string, readonly string[]>> = {
  'a later high one': ['sixMonthly', 'quarterly', 'initialDetermination', 'writeDetermination'],
};

const seen = new Map<string, number>();
const violations = new Map<string, string>();

test('adding anything but a valid measurement or a settled correction removes no duty and relaxes nothing', () => {
  fc.assert(
    fc.property(drawn, (given) => {
      const facts = factsOf(given);
      const book = s.bookOf(facts);
      const before = findDuties(book, today);
      const { worker, on } = placeOf(given.place);
      const day = given.days[given.place] ?? 'absent';
      for (const [name, make] of Object.entries(additions)) {
        const added = make({ drawn: given, facts, book, worker, on, day });
        if (!added) continue;
        seen.set(name, (seen.get(name) ?? 0) + 1);
        const after = findDuties(s.bookOf(facts, [office, added]), today);
        const found = [
          ...takenAway(before, after, ({ kind }) => (ofValidOnes[name] ?? []).includes(kind)),
          ...relaxed(before, after),
        ];
        if (found.length > 0 && !violations.has(name))
          violations.set(name, `${given.task} ${given.days} ${worker.slice(-1)} ${on}: ${found.join('; ')}`);
      }
    }),
    runs(15),
  );
  console.info([...seen].map(([name, count]) => `${name}: ${count}`).join(', '));
  for (const name of Object.keys(additions)) expect(seen.get(name) ?? 0, name).toBeGreaterThan(0);
  expect(Object.fromEntries(violations)).toEqual({});
});
