/**
 * The laws of taking in, over random interleavings of three devices: 20,000 in `npm test`, a million in `npm run soak`. Held against a
 * plain union of ids written here.
 */
import { afterAll, expect, test } from 'vitest';
import type { BoxRecord, SampleRecord } from '#records/book.ts';
import { sequenceOf, writerOf } from '#records/chain.ts';
import { foldRecord } from '#records/fold.ts';
import { compareTakeIn, type TakeInComparison } from '#records/merge.ts';
import { sameNumber } from '#records/sampleNumber.ts';
import type { Arriving } from '#records/sifting.ts';
import { ids } from './facts.ts';
import {
  type Entries,
  heldIn,
  inDispute,
  judgingMassUg,
  type Lots,
  lots,
  type World,
  worldOf,
} from './interleavings.ts';

const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31));
const times = Number(process.env.TIMES ?? 1);
/** The soak runs twelve rounds of TIMES=10: 1,020,000 in all. */
const casesCount = times === 1 ? 20_000 : 8_500 * times;
/** Interleavings drawn of one world: its facts are hashed once. */
const ofEach = 20;

const occurred = new Map<string, number>();
const count = (name: string, happened: boolean): void => {
  occurred.set(name, (occurred.get(name) ?? 0) + Number(happened));
};
afterAll(() => {
  console.info(`three devices: seed ${seed}, cases ${casesCount}, ${JSON.stringify(Object.fromEntries(occurred))}`);
});

const book = { bookId: ids.book, practice: false };
const compare = (have: Entries, incoming: Iterable<Arriving>): TakeInComparison =>
  compareTakeIn({ ...book, entries: have }, { ...book, entries: [...incoming] });

/** What taking in makes. */
function union(have: Entries, incoming: Entries): Entries {
  const merged = new Map(have);
  for (const entry of compare(have, incoming.values()).new) merged.set(entry.id, entry);
  return merged;
}

/** The oracle: ids of one, then of the others, nothing else. */
const plainUnion = (...all: readonly Entries[]): ReadonlySet<string> => new Set(all.flatMap((one) => [...one.keys()]));

const isOf = (held: Entries, expected: ReadonlySet<string>, texts: ReadonlyMap<string, Arriving>): boolean =>
  held.size === expected.size &&
  [...held].every(([id, { text, link }]) => {
    const written = texts.get(id);
    return expected.has(id) && written?.text === text && written.link === link;
  });

/** Every id offered is told of exactly once. */
function nothingLost(found: TakeInComparison, offered: readonly Arriving[]): boolean {
  const told = [
    ...found.new.map(({ id }) => id),
    ...found.same,
    ...found.forks.map(({ id }) => id),
    ...found.brokenChain,
    ...found.unreadable.map(({ id }) => id),
  ];
  return told.length === offered.length && new Set(told).size === new Set(offered.map(({ id }) => id)).size;
}

/** By hand: is a number below the highest of a writer not there? */
function hasGap(held: Entries): boolean {
  const byWriter = new Map<string, number[]>();
  for (const id of held.keys()) byWriter.set(writerOf(id), [...(byWriter.get(writerOf(id)) ?? []), sequenceOf(id)]);
  return [...byWriter.values()].some((numbers) => Math.max(...numbers) !== numbers.length);
}

function lawsHold(world: World, held: readonly [Entries, Entries, Entries], texts: ReadonlyMap<string, Arriving>) {
  const [a, b, c] = held;
  const ab = union(a, b);
  const all = union(ab, c);
  const laws: readonly (readonly [string, boolean])[] = [
    ['union', isOf(ab, plainUnion(a, b), texts)],
    ['commutative', isOf(union(b, a), plainUnion(a, b), texts)],
    ['associative', isOf(union(a, union(b, c)), plainUnion(a, b, c), texts) && isOf(all, plainUnion(a, b, c), texts)],
    ['idempotent', compare(a, a.values()).new.length === 0 && compare(all, b.values()).new.length === 0],
    ['whole', all.size === world.chains.flat().length && !hasGap(all)],
    ['gaps told', compare(a, b.values()).gaps.length > 0 === hasGap(ab)],
  ];
  for (const [law, holds] of laws) if (!holds) expect(holds, law).toBe(true);
  count('gap', held.some(hasGap));
  return all;
}

function forksRefused(world: World, all: Entries): void {
  const offered = [...world.forked, world.unreadable];
  const found = compare(all, offered);
  const fork = world.forked.at(-2)?.id;
  if (!nothingLost(found, offered)) expect(found, 'an id was lost').toBe('none');
  expect(found.forks.map(({ id }) => id)).toEqual([fork]);
  expect(found.brokenChain).toEqual([world.forked.at(-1)?.id]);
  expect(found.unreadable.map(({ id }) => id)).toEqual([world.unreadable.id]);
  expect(found.new).toEqual([]);
  count('fork', true);
  count('unreadable', true);
}

const recordOf = <R>(all: Entries, key: string, draw: Lots): R | null => {
  const facts = [...all.values()].filter(({ value }) => (value as { about: string[] }).about.includes(key));
  const mixed = facts.map((fact) => [draw.upTo(1000), fact] as const).sort(([x], [y]) => x - y);
  return foldRecord(
    key,
    mixed.map(([, fact]) => fact),
  ) as R | null;
};

/** In whatever order the facts arrived. */
function carefulJudges({ corrections, resultId, has }: World, all: Entries, draw: Lots): void {
  const sample = recordOf<SampleRecord>(all, `sample:${ids.one}`, draw);
  const found = sample?.results.find(({ factId }) => factId === resultId);
  expect(found?.mass).toMatchObject({ massUg: judgingMassUg(corrections) });
  const dispute = sample?.conflicts.find(({ factId }) => factId === resultId);
  expect(dispute !== undefined).toBe(inDispute(corrections));
  const hands = new Set(dispute?.candidates.map(({ correctionId }) => writerOf(correctionId)));
  expect(sample?.voidAgainstResult).toBe(has.has('void'));
  count('corrections of one fact on two devices', hands.size > 1);
  count('void against result', sample?.voidAgainstResult === true);
  const other = recordOf<SampleRecord>(all, `sample:${ids.two}`, draw);
  count('equal numbers', sample !== null && other !== null && sameNumber([sample, other]).length > 0);
  count('unknown kind', has.has('unknown'));
  count('clocks years apart', has.has('clocks years apart'));
  if (!has.has('issue')) return;
  const box = recordOf<BoxRecord>(all, `box:${ids.box}`, draw);
  expect(box?.issues[0]?.sheet).toEqual({ says: 1 });
  count('issued then changed', sample?.strikes.some(({ path }) => path === '/happened/at') === true);
}

test(`taking in is commutative, associative and idempotent, and loses no id, in ${casesCount} interleavings`, () => {
  const draw = lots(seed);
  for (let worlds = casesCount / ofEach; worlds > 0; worlds -= 1) {
    const world = worldOf(draw);
    const texts = new Map(world.chains.flat().map((entry) => [entry.id, entry]));
    for (let cases = 0; cases < ofEach; cases += 1) {
      const held = heldIn(world, draw);
      const all = lawsHold(world, held, texts);
      const [offered, have] = [[...held[1].values()], held[0]];
      if (!nothingLost(compare(have, offered), offered)) expect(offered, 'an id was lost').toBe('none');
      if (cases % 5 === 0) carefulJudges(world, all, draw);
      if (cases % 5 === 1) forksRefused(world, all);
    }
  }
}, 1_200_000);

test('every interesting case occurred', () => {
  for (const name of [
    'corrections of one fact on two devices',
    'void against result',
    'equal numbers',
    'clocks years apart',
    'fork',
    'gap',
    'unknown kind',
    'unreadable',
    'issued then changed',
  ])
    expect(occurred.get(name) ?? 0, name).toBeGreaterThan(5);
});
