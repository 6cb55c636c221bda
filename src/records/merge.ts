/**
 * Taking in: a union by fact id. Commutative, associative, idempotent, because nothing but the id decides, and because the same id with
 * other bytes is a fork: refused aloud, never merged.
 */

import { readFact, type UnreadableReason } from './canonical.ts';
import { factIdOf, type JournalEntry, link, noLink, sequenceOf, writerOf } from './chain.ts';

export type HeldEntry = Pick<JournalEntry, 'text' | 'link'>;

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
  /** Facts that cannot be carried at all. */
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

/** Why an entry cannot stand: `broken` when its link contradicts the fact before it, or the fact after it that is held. */
function contradicts(entry: JournalEntry, known: (id: string) => HeldEntry | undefined): boolean {
  const writer = writerOf(entry.id);
  const sequence = sequenceOf(entry.id);
  const before = sequence === 1 ? { link: noLink } : known(factIdOf(writer, sequence - 1));
  if (before && entry.link !== link(before.link, entry.text)) return true;
  const after = known(factIdOf(writer, sequence + 1));
  return after !== undefined && after.link !== link(entry.link, after.text);
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
  const taken = new Map<string, HeldEntry>();
  /** Writers whose line left ours: nothing that follows in the file can be ours. */
  const left = new Set<string>();
  for (const entry of incoming) {
    const writer = writerOf(entry.id);
    const held = have.entries.get(entry.id) ?? taken.get(entry.id);
    if (held) {
      if (held.text === entry.text && held.link === entry.link) found.same.push(entry.id);
      else {
        found.forks.push({ id: entry.id, have: held.text, incoming: entry.text });
        left.add(writer);
      }
      continue;
    }
    if (left.has(writer) || contradicts(entry, (id) => taken.get(id) ?? have.entries.get(id))) {
      found.brokenChain.push(entry.id);
      left.add(writer);
      continue;
    }
    const read = readFact(entry.text);
    if (read.kind === 'refused') {
      found.unreadable.push({ id: entry.id, reason: read.reason });
      left.add(writer);
      continue;
    }
    if ((read.kind === 'known' ? read.fact.id : read.envelope.id) !== entry.id) {
      found.unreadable.push({ id: entry.id, reason: 'notAFact' });
      left.add(writer);
      continue;
    }
    if (read.kind === 'unknown') {
      found.newer.unknownKinds.push(entry.id);
      if (read.mustUnderstand) found.newer.mustUnderstand.push(entry.id);
    }
    taken.set(entry.id, entry);
    found.new.push(entry);
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
