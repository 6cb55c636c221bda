/** Whom to plan for. Numbers of a crew are held against R in tests/core/crewSample.test.ts. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crewSample } from '#findings/season/crewSample.ts';
import { type Proposal, proposedSlots } from '#findings/season/proposedSlots.ts';

const names = (count: number): readonly string[] => Array.from({ length: count }, (_, i) => `worker ${i + 1}`);
const days = ['2026-12-01', '2026-12-02', '2026-12-03', '2026-12-04'];
const propose = (more: Partial<Proposal>) =>
  proposedSlots({
    crew: names(3),
    crewCount: 3,
    choice: 'all',
    highestId: null,
    days,
    daysEachCount: 1,
    draws: [],
    ...more,
  });

describe('how many', () => {
  it('a crew under ten is measured whole, whatever was chosen', () => {
    for (const count of [1, 2, 6, 9]) {
      expect(crewSample(count)).toMatchObject({ sampleCount: count, everyone: true, working: null });
      expect(propose({ crew: names(count), crewCount: count, choice: 'random' }).workerIds).toEqual(names(count));
    }
  });
  it('of twenty, fourteen (92.1 in a hundred, worked out in methods.md F3), and the sum can be opened', () => {
    const { sampleCount, chancePct, everyone, working } = crewSample(20);
    expect([sampleCount, everyone]).toEqual([14, false]);
    // 1 − (6 × 5) / (20 × 19): neither of the two most exposed
    expect(chancePct).toBeCloseTo(100 * (1 - 30 / 380), 9);
    expect(working?.estimate).toMatchObject({ kind: 'exact', value: chancePct });
    expect(working?.formula.source.mark).toBe('DERIVED');
  });
  it('workers whom nobody named yet are counted', () => {
    const draws = names(14).map(() => 0.5);
    expect(propose({ crew: names(12), crewCount: 20, choice: 'random', draws })).toMatchObject({
      neededCount: 14,
      unnamedCount: 2,
    });
  });
  it('the highest one is one', () => {
    expect(propose({ crewCount: 20, choice: 'highest', highestId: 'worker 2' })).toMatchObject({
      ...{ workerIds: ['worker 2'], neededCount: 1, unnamedCount: 0 },
      slots: [{ workerId: 'worker 2', workOn: '2026-12-01' }],
    });
    expect(propose({ choice: 'highest' })).toMatchObject({ slots: [], unnamedCount: 1 });
  });
  it('no crew is half a worker', () => {
    for (const count of [-1, 2.5, Number.NaN]) expect(() => crewSample(count)).toThrow('no crew');
  });
});

describe('by lot', () => {
  it('the same draws give the same workers; too few or impossible ones are a bug', () => {
    const draws = names(14).map((_, i) => (i * 0.37) % 1);
    const of = (given: readonly number[]) =>
      propose({ crew: names(20), crewCount: 20, choice: 'random', draws: given });
    expect(of(draws)).toEqual(of(draws));
    expect(() => of(draws.slice(1))).toThrow('draw 13 of 14');
    expect(() => of(draws.map(() => 1))).toThrow('draw 0');
  });
  it('everyone has the same chance: over all first draws of a crew of ten each is left out once', () => {
    // nine of ten are drawn; with all further draws at 0 the one left out is the last who remains
    const left = new Map<string, number>();
    for (let last = 0; last < 10; last++) {
      // draws that leave out worker `last`: take the first but never that one
      const draws = Array.from({ length: 9 }, (_, k) => (k < last ? 0 : 1.5 / (10 - k)));
      const { workerIds } = propose({ crew: names(10), crewCount: 10, choice: 'random', draws });
      const out = names(10).find((name) => !workerIds.includes(name)) ?? '';
      left.set(out, (left.get(out) ?? 0) + 1);
    }
    expect([...left.values()]).toEqual(names(10).map(() => 1));
  });
  it('whatever the draws: as many as the rule asks for, nobody twice, only of the crew', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 60 }),
        fc.array(fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }), { minLength: 22, maxLength: 22 }),
        (count, draws) => {
          const { workerIds } = propose({ crew: names(count), crewCount: count, choice: 'random', draws });
          expect(workerIds.length).toBe(crewSample(count).sampleCount);
          expect(new Set(workerIds).size).toBe(workerIds.length);
          expect(workerIds.every((id) => names(count).includes(id))).toBe(true);
        },
      ),
      { numRuns: 60, seed: 1125 },
    );
  });
});

describe('over the days', () => {
  const perDay = (more: Partial<Proposal>) => {
    const counts = new Map<string | null, number>();
    for (const { workOn } of propose(more).slots) counts.set(workOn, (counts.get(workOn) ?? 0) + 1);
    return counts;
  };
  it('eight workers on four days: two a day', () => {
    expect([...perDay({ crew: names(8), crewCount: 8 }).values()]).toEqual([2, 2, 2, 2]);
  });
  it('three workers, two days each of four: nobody twice on a day, at least two days apart', () => {
    const { slots } = propose({ daysEachCount: 2 });
    expect(slots).toHaveLength(6);
    for (const name of names(3)) {
      const own = slots.filter(({ workerId }) => workerId === name).map(({ workOn }) => days.indexOf(workOn ?? ''));
      expect(own).toHaveLength(2);
      expect(Math.abs((own[0] ?? 0) - (own[1] ?? 0))).toBe(2);
    }
  });
  it('more days each than there are: the rest stays open', () => {
    const { slots } = propose({ crew: ['worker 1'], crewCount: 1, days: days.slice(0, 1), daysEachCount: 3 });
    expect(slots.map(({ workOn }) => workOn)).toEqual(['2026-12-01', null, null]);
    expect(propose({ days: [] }).slots.every(({ workOn }) => workOn === null)).toBe(true);
  });
});
