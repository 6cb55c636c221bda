/** Three devices that write and exchange files, for the laws of merging. A device is a writer, a wall clock and what it holds. */
import fc from 'fast-check';
import { epochMsToInstant } from '#core/calendar.ts';
import { factText, type StoredFact } from '#records/canonical.ts';
import { factIdOf, type JournalEntry, link, noLink } from '#records/chain.ts';
import type { Fact, FactBody, NewFact } from '#records/fact.ts';
import { compareTakeIn } from '#records/merge.ts';
import { nextRecorded, observe } from '#records/recordedClock.ts';
import type { HeldEntry } from '#records/sifting.ts';
import { dutyActs, dutyFactOf } from './dutyActs.ts';
import { at, corrects, ids, look, prepared, putOn, result, sealed, stopped, wanted } from './facts.ts';

export type Held = ReadonlyMap<string, HeldEntry>;

export interface Device {
  readonly writer: string;
  /** Milliseconds its clock is off. */
  readonly aheadMs: number;
  held: Map<string, HeldEntry>;
  sequence: number;
  previous: string;
  recorded: string | null;
}

const year = 365 * 86_400_000;
const startMs = Date.UTC(2026, 10, 25, 12);
export const writers = ['wwwwwwwwwwww', 'zzzzzzzzzzz1', '000000000002'] as const;

export const device = (writer: string, aheadMs: number): Device => ({
  writer,
  aheadMs,
  held: new Map(),
  sequence: 0,
  previous: noLink,
  recorded: null,
});

const samples = [ids.one, ids.two] as const;
const numbers = ['120019', '120027'] as const;

export const step = fc.record({
  device: fc.integer({ min: 0, max: 2 }),
  /** Takes in from the next device, or the one after. */
  from: fc.integer({ min: 1, max: 2 }),
  act: fc.constantFrom(
    ...(['prepare', 'putOn', 'look', 'stop', 'seal', 'result', 'void', 'unknown', 'takeLate'] as const),
    ...(['correct', 'correct', 'correct', 'take', 'take'] as const),
    ...dutyActs,
  ),
  sample: fc.integer({ min: 0, max: 1 }),
  value: fc.integer({ min: 1, max: 9 }),
  minute: fc.integer({ min: 0, max: 59 }),
});
export type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

/** Where every play begins: a prepared sample with a result, so that there is something to disagree about. */
export const prologue: readonly Step[] = (['prepare', 'result', 'person', 'work'] as const).map((act) => ({
  ...{ device: 0, from: 1, sample: 0, value: 4, minute: 0 },
  act,
}));

export const clocks = fc.array(fc.constantFrom(0, 0, 40_000, -3 * 3_600_000, 5 * year, -4 * year), {
  minLength: 3,
  maxLength: 3,
});

/** What this step writes; null when there is nothing to correct yet. */
function factOf(held: Held, { act, sample, value, minute }: Step): NewFact | null {
  const id = samples[sample] ?? ids.one;
  const time = (hour: number) => `${hour}:${String(minute).padStart(2, '0')}`;
  switch (act) {
    case 'prepare':
      // One number too many on purpose: two samples that bear one label.
      return prepared(id, { sampleNumber: numbers[value % 3 === 0 ? 0 : sample] ?? '120019' });
    case 'putOn':
      return putOn(time(12), id);
    case 'look':
      return look(time(14), value > 2, value > 1, id);
    case 'stop':
      return stopped(time(20), value * 60, id);
    case 'seal':
      return sealed(time(21), value > 5 ? 'van' : null, id);
    case 'result':
      return result(value, `R-${value % 2}`, id);
    case 'void':
      return wanted('sampleVoided.v1', { sampleId: id }, { why: 'dropped in water', at: at('21:30') });
    case 'correct': {
      const result = [...held.entries()].find(
        ([, { text }]) => text.includes('resultReceived.v1') && text.includes(id),
      );
      if (!result) return null;
      const old = (JSON.parse(result[1].text) as { body: FactBody<'resultReceived.v1'> }).body.mass;
      return corrects(result[0], '/mass', old, { kind: 'measured', massUg: value + 10 }, null, [`sample:${id}`]);
    }
    case 'unknown':
    case 'take':
    case 'takeLate':
      return { ...look(time(15), true, true, id), kind: 'cassetteWeighed.v7' } as unknown as NewFact;
    default:
      return dutyFactOf(held, act, value);
  }
}

export function write(target: Device, taken: Step, tick: number): void {
  const fact = factOf(target.held, taken);
  if (!fact) return;
  target.sequence += 1;
  target.recorded = nextRecorded(target.recorded, epochMsToInstant(startMs + tick * 1000 + target.aheadMs));
  const id = factIdOf(target.writer, target.sequence);
  const mustUnderstand = taken.act === 'unknown' && taken.value > 6;
  const extra = taken.act === 'unknown' ? { mustUnderstand, colour: { of: 'the label' } } : {};
  const text = factText({ ...fact, ...extra, id, recorded: target.recorded } as unknown as Fact);
  target.previous = link(target.previous, text);
  target.held.set(id, { text, link: target.previous });
}

export const entriesOf = (held: Held): readonly JournalEntry[] => [...held].map(([id, entry]) => ({ id, ...entry }));
export const storedOf = (held: Held): readonly StoredFact[] => [...held].map(([id, { text }]) => ({ id, text }));

const book = { bookId: ids.book, practice: false };
export const compare = (have: Held, incoming: readonly JournalEntry[]) =>
  compareTakeIn({ ...book, entries: have }, { ...book, entries: incoming });

/** Have and incoming together: what taking in makes. */
export function union(have: Held, incoming: readonly JournalEntry[]): Map<string, HeldEntry> {
  const merged = new Map(have);
  for (const { id, text, link } of compare(have, incoming).new) merged.set(id, { text, link });
  return merged;
}

export function takeIn(target: Device, incoming: readonly JournalEntry[], tick: number): void {
  const wall = epochMsToInstant(startMs + tick * 1000 + target.aheadMs);
  for (const { text } of compare(target.held, incoming).new)
    target.recorded = observe(target.recorded, (JSON.parse(text) as { recorded: string }).recorded, wall);
  target.held = union(target.held, incoming);
}

export const sameContent = (held: Held): string => JSON.stringify([...held].sort(([a], [b]) => (a < b ? -1 : 1)));
