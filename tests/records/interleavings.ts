/**
 * Worlds of three devices, small and fast: each device's own chain is written and hashed once, then many interleavings are drawn of what
 * reached whom. What is expected is told by the generator from what it wrote, never by the code under test.
 */
import { factText } from '#records/canonical.ts';
import { factIdOf, link, noLink } from '#records/chain.ts';
import type { Fact, FactBody, NewFact } from '#records/fact.ts';
import type { Arriving } from '#records/sifting.ts';
import { at, corrects, ids, look, prepared, result, stopped, wanted } from './facts.ts';

export type Entries = ReadonlyMap<string, Arriving>;

/** Numbers from a seed (mulberry32), so that a failing case is drawn again. */
export function lots(seed: number) {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const upTo = (count: number): number => Math.floor(next() * count);
  return { upTo, one: <T>(list: readonly T[]): T => list[upTo(list.length)] as T };
}
export type Lots = ReturnType<typeof lots>;

const writers = ['wwwwwwwwwwww', 'zzzzzzzzzzz1', '000000000002'] as const;
const skews = ['2026-11-25', '2026-11-25', '2026-11-24', '2031-02-03', '2022-05-06'] as const;

export interface Correction {
  readonly id: string;
  readonly massUg: number;
  readonly replaces: string | null;
}
export interface World {
  /** Each device's own chain, in order. */
  readonly chains: readonly (readonly Arriving[])[];
  /** Another fact under the id of the first device's last one, and one that follows it there. */
  readonly forked: readonly Arriving[];
  /** Last in the second device's chain, and such as no journal takes. */
  readonly unreadable: Arriving;
  readonly resultId: string;
  readonly corrections: readonly Correction[];
  readonly has: ReadonlySet<string>;
}

interface Hand {
  readonly writer: string;
  readonly on: string;
  readonly chain: Arriving[];
  /** The correction it last heard of. */
  known: string | null;
}

function entryAfter(hand: Hand, fact: object, change: (text: string) => string = (text) => text): Arriving {
  const count = hand.chain.length + 1;
  const id = factIdOf(hand.writer, count);
  const recorded = `${hand.on}T13:00:${String(count).padStart(2, '0')}.000Z-0000`;
  const text = change(factText({ ...fact, id, recorded } as unknown as Fact));
  const after = hand.chain.at(-1)?.link ?? noLink;
  return { id, text, link: link(after, text), after, value: JSON.parse(text) };
}

function wrote(hand: Hand, fact: object): string {
  hand.chain.push(entryAfter(hand, fact));
  return hand.chain.at(-1)?.id ?? '';
}

const issued = wanted('custodySheetIssued.v1', {
  ...{ boxId: ids.box, revision: '1', paper: 'a4', sheet: { says: 1 }, pdfHash: 'a'.repeat(64) },
  ...{ editions: { app: '1', rules: '1', formulas: '1' }, heads: [] },
} as FactBody<'custodySheetIssued.v1'>);
const packed = wanted('boxPacked.v1', {
  ...{ boxId: ids.box, siteId: ids.site, sampleIds: [ids.one], laboratoryId: ids.laboratory },
  ...{ samplerId: ids.supervisor, analysis: 'lead', methodId: null, reportingLimitUg: null },
  ...{ includeWallDeposit: true, callBeforeReanalysis: true, turnaround: '5 days', workersShownAs: 'identifier' },
  remark: null,
} as FactBody<'boxPacked.v1'>);
const unknown = { ...look('15:00'), kind: 'cassetteWeighed.v7', colour: { of: 'the label' } } as unknown as NewFact;
const voided = wanted('sampleVoided.v1', { sampleId: ids.one }, { why: 'dropped in water', at: at('21:30') });
const mass = (massUg: number) => ({ kind: 'measured', massUg });

const acts = ['correct', 'correct', 'correct', 'void', 'unknown', 'number', 'issue', 'change', 'hear', 'look'] as const;

export function worldOf(draw: Lots): World {
  const hands = writers.map((writer): Hand => ({ writer, on: draw.one(skews), chain: [], known: null }));
  const [first, second] = hands as [Hand, Hand, Hand];
  const has = new Set<string>();
  if (new Set(hands.map(({ on }) => on.slice(0, 4))).size > 1) has.add('clocks years apart');
  wrote(first, prepared());
  const resultId = wrote(first, result(4));
  const stopId = wrote(first, stopped('20:00'));
  wrote(first, packed);
  const corrections: Correction[] = [];
  const correct = (hand: Hand): void => {
    // no two alike, and in no order: who wrote last is seldom the heavier
    const massUg = 10 + ((corrections.length * 7 + draw.upTo(3) * 31) % 89);
    if (corrections.some((other) => other.massUg === massUg)) return;
    const fact = corrects(resultId, '/mass', mass(4), mass(massUg), hand.known);
    const id = wrote(hand, fact);
    corrections.push({ id, massUg, replaces: hand.known });
    hand.known = id;
  };
  const deeds: Readonly<Record<(typeof acts)[number], (hand: Hand) => unknown>> = {
    correct,
    void: (hand) => wrote(hand, voided),
    unknown: (hand) => wrote(hand, unknown),
    number: (hand) => wrote(hand, prepared(ids.two)),
    issue: (hand) => wrote(hand, issued),
    change: (hand) => wrote(hand, corrects(stopId, '/happened/at', at('20:00'), at(`20:1${draw.upTo(9)}`))),
    hear: (hand) => {
      hand.known = draw.one(hands).known;
    },
    look: (hand) => wrote(hand, look(`1${3 + draw.upTo(6)}:00`)),
  };
  for (let count = 4 + draw.upTo(4); count > 0; count -= 1) {
    const act = draw.one(acts);
    has.add(act);
    deeds[act](draw.one(hands));
  }
  const other: Hand = { ...first, chain: first.chain.slice(0, -1) };
  wrote(other, look('16:01'));
  wrote(other, look('16:02'));
  const hostile = (text: string): string => text.replace('"body":{', '"body":{"__proto__":1,');
  return {
    chains: hands.map(({ chain }) => chain),
    forked: other.chain,
    unreadable: entryAfter(second, look('16:03'), hostile),
    resultId,
    corrections,
    has,
  };
}

/** What reached each device: its own chain whole, of each other a beginning, or an end with a gap before it. */
export function heldIn({ chains }: World, draw: Lots): readonly [Entries, Entries, Entries] {
  const of = (own: number): Entries => {
    const held = new Map<string, Arriving>();
    for (const [at, chain] of chains.entries()) {
      const cut = draw.upTo(chain.length + 1);
      const part = at === own ? chain : draw.upTo(4) === 0 ? chain.slice(cut) : chain.slice(0, cut);
      for (const entry of part) held.set(entry.id, entry);
    }
    return held;
  };
  return [of(0), of(1), of(2)];
}

/** The mass that must judge: of the corrections that none replaced, the only one, else the heaviest; 4 µg where there is none. */
export function judgingMassUg(corrections: readonly Correction[]): number {
  const replaced = new Set(corrections.map(({ replaces }) => replaces));
  const open = corrections.filter(({ id }) => !replaced.has(id)).map(({ massUg }) => massUg);
  return open.length === 0 ? 4 : Math.max(...open);
}
export const inDispute = (corrections: readonly Correction[]): boolean => {
  const replaced = new Set(corrections.map(({ replaces }) => replaces));
  return corrections.filter(({ id }) => !replaced.has(id)).length > 1;
};
