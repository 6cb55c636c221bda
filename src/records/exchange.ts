/**
 * What two devices must know of each other to send only what is lacking: up to where each writer is held without a gap, what lies
 * beyond, and which entries are known to be missing. Linear in the number of entries (after one sort).
 */
import { addMinutes } from '#core/calendar.ts';
import type { MissingEntries } from './book.ts';
import { type JournalEntry, sequenceOf, writerOf } from './chain.ts';

export interface Head {
  readonly factId: string;
  readonly link: string;
}

const byId = <T extends { readonly id: string }>(entries: Iterable<T>): T[] =>
  [...entries].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));

/** Head up to which each writer is held from its first entry on without a gap. A writer whose first entry is missing has none. */
export function contiguousHeads(entries: Iterable<Pick<JournalEntry, 'id' | 'link'>>): readonly Head[] {
  const heads = new Map<string, { head: Head; sequence: number }>();
  for (const { id, link } of byId(entries)) {
    const writer = writerOf(id);
    const sequence = sequenceOf(id);
    if (sequence === (heads.get(writer)?.sequence ?? 0) + 1)
      heads.set(writer, { head: { factId: id, link }, sequence });
  }
  return [...heads.values()].map(({ head }) => head);
}

export interface Beyond<T> {
  /** What the partner does not hold, by writer and sequence. */
  readonly entries: readonly T[];
  /** The heads that `entries` begin after: what goes into the header as `since`. */
  readonly since: readonly Head[];
}

/**
 * Entries that lie beyond what a partner holds. A head of its that stands on other bytes here is taken for nothing: then everything of
 * that writer goes along, and the fork is seen there. A head that is not here (the partner is ahead) is taken as it says.
 */
export function sinceHeads<T extends Pick<JournalEntry, 'id' | 'link'>>(
  entries: Iterable<T>,
  holds: readonly Head[],
): Beyond<T> {
  const sorted = byId(entries);
  const linkById = new Map(sorted.map(({ id, link }) => [id, link]));
  const since = new Map<string, Head>();
  for (const head of holds) {
    const own = linkById.get(head.factId);
    const before = since.get(writerOf(head.factId));
    if (own !== undefined && own !== head.link) continue;
    if (before === undefined || before.factId < head.factId) since.set(writerOf(head.factId), head);
  }
  return {
    entries: sorted.filter(({ id }) => {
      const head = since.get(writerOf(id));
      return head === undefined || id > head.factId;
    }),
    since: [...since.values()].sort((a, b) => (a.factId < b.factId ? -1 : 1)),
  };
}

/** The later of the days on which it was recorded and happened, as a wall at the site would show it. */
function dayOfText(text: string): string {
  const { recorded, happened } = JSON.parse(text) as {
    recorded: string;
    happened: { at: string; offsetMin: number };
  };
  const aheadMin = Math.max(0, happened.offsetMin);
  const recordedOn = addMinutes(recorded.slice(0, 24), aheadMin).slice(0, 10);
  const happenedOn = addMinutes(happened.at, aheadMin).slice(0, 10);
  return [recordedOn, happenedOn].sort()[1] ?? happenedOn;
}

/**
 * Sequences missing below the highest of each writer, with the day until which they may bear on something: that of the first entry after
 * them. Entries are such as `readFact` reads.
 */
export function missingOf(entries: Iterable<Pick<JournalEntry, 'id' | 'text'>>): readonly MissingEntries[] {
  const missing: MissingEntries[] = [];
  let writer = '';
  let last = 0;
  for (const { id, text } of byId(entries)) {
    if (writerOf(id) !== writer) {
      writer = writerOf(id);
      last = 0;
    }
    const sequence = sequenceOf(id);
    if (sequence > last + 1)
      missing.push({ writer, fromCount: last + 1, toCount: sequence - 1, untilOn: dayOfText(text) });
    last = sequence;
  }
  return missing;
}

interface Range {
  readonly writer: string;
  readonly fromCount: number;
  readonly toCount: number;
}

/** What is still missing after a person accepted some of it as lost. */
export function missingWithout(
  missing: readonly MissingEntries[],
  accepted: readonly Range[],
): readonly MissingEntries[] {
  let left: readonly MissingEntries[] = missing;
  for (const { writer, fromCount, toCount } of accepted)
    left = left.flatMap((range) => {
      if (range.writer !== writer || toCount < range.fromCount || fromCount > range.toCount) return [range];
      const before = range.fromCount < fromCount ? [{ ...range, toCount: fromCount - 1 }] : [];
      const after = range.toCount > toCount ? [{ ...range, fromCount: toCount + 1 }] : [];
      return [...before, ...after];
    });
  return left;
}
