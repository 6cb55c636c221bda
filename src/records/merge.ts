/**
 * Taking in: a union by fact id. Commutative, associative, idempotent, because nothing but the id decides, and because the same id with
 * other bytes is a fork: refused aloud, never merged.
 */

import { type ReadFact, readFact, type UnreadableReason } from './canonical.ts';
import { factIdOf, type JournalEntry, link, noLink, sequenceOf, writerOf } from './chain.ts';

export { changedBothSides } from './bothSides.ts';
export { contiguousHeads, missingOf, sinceHeads } from './exchange.ts';

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

/** Why an entry cannot stand: `broken` when its link contradicts the fact before it, or the fact after it that is held. */
function contradicts(entry: JournalEntry, known: (id: string) => HeldEntry | undefined): boolean {
  const writer = writerOf(entry.id);
  const sequence = sequenceOf(entry.id);
  const before = sequence === 1 ? { link: noLink } : known(factIdOf(writer, sequence - 1));
  if (before && entry.link !== link(before.link, entry.text)) return true;
  const after = known(factIdOf(writer, sequence + 1));
  return after !== undefined && after.link !== link(entry.link, after.text);
}

const idIn = (read: Exclude<ReadFact, { kind: 'refused' }>): string =>
  read.kind === 'known' ? read.fact.id : read.envelope.id;

function unreadableReason(entry: JournalEntry, read: ReadFact): UnreadableReason | null {
  if (read.kind === 'refused') return read.reason;
  return idIn(read) === entry.id ? null : 'notAFact';
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
  const known = (id: string): HeldEntry | undefined => have.entries.get(id) ?? taken.get(id);
  /** Writers whose line left ours: nothing that follows in the file can be ours. */
  const left = new Set<string>();

  const meetHeld = (entry: JournalEntry, held: HeldEntry): void => {
    if (held.text === entry.text && held.link === entry.link) found.same.push(entry.id);
    else {
      found.forks.push({ id: entry.id, have: held.text, incoming: entry.text });
      left.add(writerOf(entry.id));
    }
  };
  const meetNew = (entry: JournalEntry): void => {
    if (left.has(writerOf(entry.id)) || contradicts(entry, known)) {
      found.brokenChain.push(entry.id);
      left.add(writerOf(entry.id));
      return;
    }
    const read = readFact(entry.text);
    const reason = unreadableReason(entry, read);
    if (reason !== null) {
      found.unreadable.push({ id: entry.id, reason });
      return;
    }
    if (read.kind === 'unknown') {
      found.newer.unknownKinds.push(entry.id);
      if (read.mustUnderstand) found.newer.mustUnderstand.push(entry.id);
    }
    taken.set(entry.id, entry);
    found.new.push(entry);
  };

  for (const entry of incoming) {
    const held = known(entry.id);
    if (held) meetHeld(entry, held);
    else meetNew(entry);
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
