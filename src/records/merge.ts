/**
 * Taking in: a union by fact id. Commutative, associative, idempotent, because nothing but the id decides, and because the same id with
 * other bytes is a fork: refused aloud, never merged.
 */

import type { ReadFact, UnreadableReason } from './canonical.ts';
import { type JournalEntry, sequenceOf, writerOf } from './chain.ts';
import { type HeldEntry, sifter } from './sifting.ts';

export interface Have {
  readonly bookId: string;
  readonly practice: boolean;
  /** Fact id -> what is held. */
  readonly entries: ReadonlyMap<string, HeldEntry>;
}

export interface Incoming {
  readonly bookId: string;
  readonly practice: boolean;
  readonly entries: readonly JournalEntry[];
}

export interface Gap {
  readonly writer: string;
  /** First and last missing sequence. */
  readonly fromCount: number;
  readonly toCount: number;
}

export interface TakeInComparison {
  /** Facts to add, in the order of writer and sequence. */
  readonly new: readonly JournalEntry[];
  /** Ids held already, byte for byte the same. */
  readonly same: readonly string[];
  /** Same id, other bytes. */
  readonly forks: readonly { readonly id: string; readonly have: string; readonly incoming: string }[];
  /** Sequences that would still be missing after taking in: their facts are somewhere, and can come later. */
  readonly gaps: readonly Gap[];
  /** Facts whose link does not follow from the one before, and what comes after them: not taken in. */
  readonly brokenChain: readonly string[];
  /** Facts that cannot be carried at all: left out, so that a gap stays where they were. */
  readonly unreadable: readonly { readonly id: string; readonly reason: UnreadableReason }[];
  readonly otherBook: boolean;
  readonly practiceMismatch: boolean;
  /** New facts of a kind unknown here: a newer version wrote them. They are carried. */
  readonly newer: { readonly unknownKinds: readonly string[]; readonly mustUnderstand: readonly string[] };
}

/** Takes in only the facts in `new`, and only when neither `otherBook` nor `practiceMismatch` is set. */
export function compareTakeIn(have: Have, incoming: Incoming): TakeInComparison {
  const byId = sortedById(incoming.entries);
  const found = sift(have, byId);
  const accepted = found.new.map((entry) => entry.id);
  return {
    ...found,
    gaps: gapsOf([...have.entries.keys(), ...accepted]),
    otherBook: have.bookId !== incoming.bookId,
    practiceMismatch: have.practice !== incoming.practice,
  };
}

const sortedById = (entries: readonly JournalEntry[]): JournalEntry[] =>
  [...entries].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));

type Sifted = Omit<TakeInComparison, 'gaps' | 'otherBook' | 'practiceMismatch'>;

interface Newer {
  readonly unknownKinds: string[];
  readonly mustUnderstand: string[];
}

function noteNewer(read: ReadFact, id: string, newer: Newer): void {
  if (read.kind !== 'unknown') return;
  newer.unknownKinds.push(id);
  if (read.mustUnderstand) newer.mustUnderstand.push(id);
}

function sift(have: Have, incoming: readonly JournalEntry[]): Sifted {
  const found = {
    new: [] as JournalEntry[],
    same: [] as string[],
    forks: [] as { id: string; have: string; incoming: string }[],
    brokenChain: [] as string[],
    unreadable: [] as { id: string; reason: UnreadableReason }[],
    newer: { unknownKinds: [] as string[], mustUnderstand: [] as string[] },
  };
  const meet = sifter((id) => have.entries.get(id));
  for (const entry of incoming) {
    const { id } = entry;
    const met = meet(entry);
    if (met.kind === 'new') {
      found.new.push(entry);
      noteNewer(met.read, id, found.newer);
    } else if (met.kind === 'same') found.same.push(id);
    else if (met.kind === 'broken') found.brokenChain.push(id);
    else if (met.kind === 'fork') found.forks.push({ id, have: met.have, incoming: entry.text });
    else found.unreadable.push({ id, reason: met.reason });
  }
  return found;
}

/** Sequences missing below the highest of each writer. */
export function gapsOf(ids: Iterable<string>): readonly Gap[] {
  const sorted = [...ids].sort();
  const gaps: Gap[] = [];
  let writer = '';
  let last = 0;
  for (const id of sorted) {
    if (writerOf(id) !== writer) {
      writer = writerOf(id);
      last = 0;
    }
    const sequence = sequenceOf(id);
    if (sequence > last + 1) gaps.push({ writer, fromCount: last + 1, toCount: sequence - 1 });
    last = sequence;
  }
  return gaps;
}
