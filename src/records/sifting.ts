/**
 * Sorts what comes in, one entry after the other, into new, held already, and what cannot stand. In the order of writer and sequence;
 * so a large file needs no more of the book at a time than what stands beside the entry.
 */
import { type ReadFact, readParsed, type UnreadableReason } from './canonical.ts';
import { factIdOf, type JournalEntry, link, noLink, sequenceOf, writerOf } from './chain.ts';

export type HeldEntry = Pick<JournalEntry, 'text' | 'link'>;

/** An entry with what its reader knows of it already. */
export interface Arriving extends JournalEntry {
  /** The text, parsed. */
  readonly value?: unknown;
  /** The link it was verified to follow; null where it was not. */
  readonly after?: string | null;
}

export type Met =
  | { readonly kind: 'new'; readonly read: Exclude<ReadFact, { kind: 'refused' }> }
  | { readonly kind: 'same' }
  | { readonly kind: 'broken' }
  | { readonly kind: 'fork'; readonly have: string }
  | { readonly kind: 'unreadable'; readonly reason: UnreadableReason };

const idIn = (read: Exclude<ReadFact, { kind: 'refused' }>): string =>
  read.kind === 'known' ? read.fact.id : read.envelope.id;

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

function readOf({ id, text, value = parsed(text) }: Arriving): ReadFact {
  if (value === undefined) return { kind: 'refused', reason: 'notJson' };
  const read = readParsed(text, value);
  return read.kind !== 'refused' && idIn(read) !== id ? { kind: 'refused', reason: 'notAFact' } : read;
}

/**
 * `held`: what the book holds under an id. It is asked for the entry itself and for its neighbours. The answer to each entry counts those
 * met before as held.
 */
export function sifter(held: (id: string) => HeldEntry | undefined): (entry: Arriving) => Met {
  /** The last one found new: what comes next follows it. */
  let last: JournalEntry | null = null;
  /** Writers whose line left ours: nothing that follows in the file can be ours. */
  const left = new Set<string>();
  const known = (id: string): HeldEntry | undefined => held(id) ?? (last?.id === id ? last : undefined);

  /** Its link contradicts the fact before it, or the fact after it that is held. */
  function contradicts(entry: Arriving): boolean {
    const writer = writerOf(entry.id);
    const sequence = sequenceOf(entry.id);
    const before = sequence === 1 ? { link: noLink } : known(factIdOf(writer, sequence - 1));
    if (before && entry.after !== before.link && entry.link !== link(before.link, entry.text)) return true;
    const after = held(factIdOf(writer, sequence + 1));
    return after !== undefined && after.link !== link(entry.link, after.text);
  }

  return (entry) => {
    const same = known(entry.id);
    if (same !== undefined) {
      if (same.text === entry.text && same.link === entry.link) return { kind: 'same' };
      left.add(writerOf(entry.id));
      return { kind: 'fork', have: same.text };
    }
    if (left.has(writerOf(entry.id)) || contradicts(entry)) {
      left.add(writerOf(entry.id));
      return { kind: 'broken' };
    }
    const read = readOf(entry);
    if (read.kind === 'refused') return { kind: 'unreadable', reason: read.reason };
    last = { id: entry.id, text: entry.text, link: entry.link };
    return { kind: 'new', read };
  };
}
