import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import type { AnyRecord, DutyRecord, SampleRecord, WorkdayRecord } from '#records/book.ts';
import { link, noLink, sequenceOf, writerOf } from '#records/chain.ts';
import { compareTakeIn as compareHeld } from '#records/merge.ts';
import { sameNumber } from '#records/sampleNumber.ts';
import {
  clocks,
  compare,
  type Device,
  device,
  entriesOf,
  type Held,
  prologue,
  type Step,
  sameContent,
  step,
  storedOf,
  takeIn,
  union,
  write,
  writers,
} from './devices.ts';
import { dutyKeys } from './dutyActs.ts';
import { workdayKey } from './dutyFacts.ts';
import { folded, ids, journal, prepared, putOn, stopped } from './facts.ts';

const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31));
const runs = { seed, numRuns: 300 * Number(process.env.TIMES ?? 1) };
/** How often each interesting case occurred. */
const occurred = new Map<string, number>();
const count = (name: string, times: number | boolean): void => {
  occurred.set(name, (occurred.get(name) ?? 0) + Number(times));
};

afterAll(() => {
  console.info(`merge laws: seed ${seed}, ${JSON.stringify(Object.fromEntries(occurred))}`);
});

/** Plays the steps on three devices, and tells what each holds. */
function play(steps: readonly Step[], aheadMs: readonly number[]): readonly Device[] {
  const devices = writers.map((writer, at) => device(writer, aheadMs[at] ?? 0));
  for (const taken of prologue) write(devices[0] as Device, taken, 0);
  for (const target of devices.slice(1)) takeIn(target, entriesOf((devices[0] as Device).held), 0);
  for (const [tick, taken] of steps.entries()) {
    const target = devices[taken.device] as Device;
    const source = devices[(taken.device + taken.from) % 3] as Device;
    if (taken.act === 'take') takeIn(target, entriesOf(source.held), tick);
    // A file whose earlier facts are elsewhere: a gap that a later file fills.
    else if (taken.act === 'takeLate')
      takeIn(
        target,
        entriesOf(source.held).filter(({ id }) => sequenceOf(id) > 2),
        tick,
      );
    else write(target, taken, tick);
  }
  return devices;
}

const samplesOf = (held: Held): readonly (SampleRecord | null)[] =>
  [ids.one, ids.two].map((id) => folded(`sample:${id}`, storedOf(held)));
const recordsOf = (held: Held): readonly (AnyRecord | null)[] => [
  ...samplesOf(held),
  ...dutyKeys.map((key) => folded<AnyRecord>(key, storedOf(held))),
];

function countCases(devices: readonly Device[], all: Held, aheadMs: readonly number[]): void {
  const records = samplesOf(all).filter((record) => record !== null);
  const day = folded<WorkdayRecord>(workdayKey, storedOf(all));
  count(
    'roster in dispute',
    day.conflicts.some(({ path }) => path === '/worked'),
  );
  count(
    'struck here, corrected there',
    day.conflicts.some(({ path }) => path === '/struck'),
  );
  const duty: DutyRecord | null = folded<DutyRecord>(dutyKeys[2] ?? '', storedOf(all));
  count('done and reopened', duty !== null && duty.done.length < duty.factIds.length);
  count(
    'corrections of one fact on two devices',
    records.some(({ conflicts }) =>
      conflicts.some((c) => new Set(c.candidates.map(({ correctionId }) => writerOf(correctionId))).size > 1),
    ),
  );
  count(
    'void against result',
    records.some(({ voided, results }) => voided && results.length > 0),
  );
  count('equal numbers', sameNumber(records).length > 0);
  count('clocks years apart', Math.max(...aheadMs) - Math.min(...aheadMs) > 3e10);
  count(
    'unknown kind',
    [...all.values()].some(({ text }) => text.includes('cassetteWeighed.v7')),
  );
  count(
    'must be understood',
    records.some(({ notUnderstood }) => notUnderstood.length > 0),
  );
  count(
    'gap',
    devices.some(({ held }) => compare(held, []).gaps.length > 0),
  );
}

const cases = fc.tuple(fc.array(step, { minLength: 5, maxLength: 60 }), clocks);

describe('merge laws', () => {
  test('commutative, associative, idempotent', () => {
    fc.assert(
      fc.property(cases, ([steps, aheadMs]) => {
        const [a, b, c] = play(steps, aheadMs).map(({ held }) => held) as readonly Held[] as [Held, Held, Held];
        const all = union(union(a, entriesOf(b)), entriesOf(c));
        expect(sameContent(union(a, entriesOf(b)))).toBe(sameContent(union(b, entriesOf(a))));
        expect(sameContent(all)).toBe(sameContent(union(a, entriesOf(union(b, entriesOf(c))))));
        expect(sameContent(union(a, entriesOf(a)))).toBe(sameContent(a));
        expect(sameContent(union(all, entriesOf(b)))).toBe(sameContent(all));
        countCases(play(steps, aheadMs), all, aheadMs);
      }),
      runs,
    );
  });

  test('whoever exchanges with everybody, in whatever order, holds the same records', () => {
    fc.assert(
      fc.property(cases, fc.array(fc.nat(5), { minLength: 6, maxLength: 6 }), ([steps, aheadMs], order) => {
        const devices = play(steps, aheadMs);
        const pairs = [
          [0, 1],
          [1, 2],
          [2, 0],
          [1, 0],
          [2, 1],
          [0, 2],
        ];
        for (const at of [...order, 0, 1, 2, 3, 4, 5, 0, 1, 2]) {
          const [to, from] = (pairs[at] ?? [0, 1]).map((d) => devices[d] as Device);
          if (to && from) takeIn(to, entriesOf(from.held), steps.length);
        }
        const [first, ...others] = devices.map(({ held }) => JSON.stringify(recordsOf(held)));
        for (const other of others) expect(other).toBe(first);
        for (const { held } of devices) expect(compare(held, []).gaps).toEqual([]);
      }),
      runs,
    );
  });

  test('facts are carried byte for byte, unknown ones too', () => {
    fc.assert(
      fc.property(cases, ([steps, aheadMs]) => {
        const [a, b] = play(steps, aheadMs) as [Device, Device];
        const merged = union(a.held, entriesOf(b.held));
        for (const [id, { text, link }] of b.held) expect(merged.get(id)).toEqual({ text, link });
      }),
      runs,
    );
  });

  test('the same id with other bytes is refused by both sides, and nothing after it is taken', () => {
    fc.assert(
      fc.property(cases, ([steps, aheadMs]) => {
        const [a] = play(steps, aheadMs) as [Device];
        const copy: Device = { ...a, held: new Map(a.held) };
        const act = { ...(steps[0] as Step), act: 'look' as const, device: 0 };
        write(a, { ...act, value: 3, minute: 1 }, steps.length);
        write(copy, { ...act, value: 4, minute: 2 }, steps.length);
        write(copy, act, steps.length + 1);
        for (const [have, incoming] of [
          [a, copy],
          [copy, a],
        ] as const) {
          const found = compare(have.held, entriesOf(incoming.held));
          expect(found.forks.map(({ id }) => id)).toContain(`${a.writer}.${String(a.sequence).padStart(8, '0')}`);
          expect(found.new).toEqual([]);
          count('fork', true);
        }
        expect(compare(a.held, entriesOf(copy.held)).brokenChain).toHaveLength(1);
      }),
      runs,
    );
  });

  test('every interesting case occurred', () => {
    for (const name of [
      'corrections of one fact on two devices',
      'void against result',
      'equal numbers',
      'clocks years apart',
      'unknown kind',
      'must be understood',
      'gap',
      'fork',
      'roster in dispute',
      'struck here, corrected there',
      'done and reopened',
    ])
      expect(occurred.get(name) ?? 0, name).toBeGreaterThan(5);
  });
});

describe('taking in', () => {
  const entries = journal([prepared(), putOn('12:00'), stopped('20:00')]);
  const held: Held = new Map(entries.map(({ id, ...entry }) => [id, entry]));

  test('another book, and a practice book, are told', () => {
    const have = { bookId: ids.book, practice: false, entries: held };
    const found = compareHeld(have, { bookId: 'b00000000009', practice: true, entries });
    expect(found).toMatchObject({ otherBook: true, practiceMismatch: true });
  });

  test('a text changed without its link is not taken, nor what follows it', () => {
    const changed = entries.map((e, at) => (at === 1 ? { ...e, text: e.text.replace('12:00', '12:30') } : e));
    const found = compare(new Map(), changed);
    expect(found.new.map(({ id }) => id)).toEqual([entries[0]?.id]);
    expect(found.brokenChain).toEqual([entries[1]?.id, entries[2]?.id]);
  });

  test('a gap is named and filled later', () => {
    const late = union(new Map(), entries.slice(2));
    expect(compare(late, []).gaps).toEqual([{ writer: 'wwwwwwwwwwww', fromCount: 1, toCount: 2 }]);
    expect(compare(late, entries).gaps).toEqual([]);
    expect(sameContent(union(late, entries))).toBe(sameContent(held));
  });

  test('what would fill a gap with another past is not taken', () => {
    const late = union(new Map(), entries.slice(2));
    const others = journal([prepared(), putOn('12:05')]);
    expect(compare(late, others).brokenChain).toEqual([others[1]?.id]);
  });

  test('a fact that cannot be carried is left out and named; the others are taken', () => {
    const hostile = (entries[1]?.text ?? '').replace('"body":{', '"body":{"__proto__":1,');
    const first = link(noLink, entries[0]?.text ?? '');
    const second = { id: entries[1]?.id ?? '', text: hostile, link: link(first, hostile) };
    const third = { ...(entries[2] as (typeof entries)[number]), link: link(second.link, entries[2]?.text ?? '') };
    const found = compare(new Map(), [entries[0] as (typeof entries)[number], second, third]);
    expect(found.unreadable).toEqual([{ id: second.id, reason: 'forbiddenKey' }]);
    expect(found.new.map(({ id }) => sequenceOf(id))).toEqual([1, 3]);
    expect(found.gaps).toEqual([{ writer: 'wwwwwwwwwwww', fromCount: 2, toCount: 2 }]);
  });
});
