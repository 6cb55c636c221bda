/**
 * What changed in a book since it was last read: a record is the same when it is the same object. While cassettes, flow checks, boxes and
 * reported measurements are the same, every day stands on the same ones, and only what they refer to can have changed.
 */
import type { Book } from '#records/book.ts';

const aroundKinds = ['sites', 'people', 'pumps', 'meters', 'lots', 'shifts', 'workdays'] as const;
/** Kinds that a day refers to by id. */
export type AroundKind = (typeof aroundKinds)[number];

export const aroundKey = (kind: AroundKind, id: string): string => `${kind}:${id}`;

/** What bears on every day. */
export function wholeOf({ book, takingIn = false, missing = [] }: Book): readonly unknown[] {
  return [book, takingIn, missing.map((m) => [m.writer, m.fromCount, m.toCount, m.untilOn].join(' ')).join()];
}

export interface Snapshot {
  readonly whole: readonly unknown[];
  readonly structure: readonly (readonly unknown[])[];
  readonly around: ReadonlyMap<AroundKind, ReadonlyMap<string, unknown>>;
}

const structureOf = ({ samples, flowChecks, boxes, reported }: Book): readonly ReadonlyMap<string, unknown>[] => [
  samples,
  flowChecks,
  boxes,
  reported,
];

export const snapshotOf = (book: Book): Snapshot => ({
  whole: wholeOf(book),
  structure: structureOf(book).map((records) => [...records.values()]),
  around: new Map(aroundKinds.map((kind) => [kind, new Map<string, unknown>(book[kind])])),
});

export const isSameList = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((one, i) => one === b[i]);

function isSameMap(records: ReadonlyMap<string, unknown>, before: readonly unknown[]): boolean {
  if (records.size !== before.length) return false;
  let place = 0;
  for (const one of records.values()) if (one !== before[place++]) return false;
  return true;
}

/** Keys of the records that are new, gone or other than before; null where the days themselves may stand on other records. */
export function changedSince(before: Snapshot, book: Book): ReadonlySet<string> | null {
  if (!isSameList(before.whole, wholeOf(book))) return null;
  const structure = structureOf(book);
  if (!structure.every((records, i) => isSameMap(records, before.structure[i] ?? []))) return null;
  const changed = new Set<string>();
  for (const kind of aroundKinds) {
    const known = before.around.get(kind) ?? new Map<string, unknown>();
    const now: ReadonlyMap<string, unknown> = book[kind];
    for (const [id, one] of now) if (known.get(id) !== one) changed.add(aroundKey(kind, id));
    for (const id of known.keys()) if (!now.has(id)) changed.add(aroundKey(kind, id));
  }
  return changed;
}
