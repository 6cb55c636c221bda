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

type Records = ReadonlyMap<string, unknown>;

/** What a book was. Its lists are never changed, so that the same list is the same records. */
export interface Snapshot {
  readonly whole: readonly unknown[];
  readonly structure: readonly Records[];
  readonly around: ReadonlyMap<AroundKind, Records>;
}

export const snapshotOf = (book: Book): Snapshot => ({
  whole: wholeOf(book),
  structure: [book.samples, book.flowChecks, book.boxes, book.reported],
  around: new Map(aroundKinds.map((kind) => [kind, book[kind]])),
});

export const isSameList = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((one, i) => one === b[i]);

/** The same records in the same order. */
function isSameInOrder(a: Records, b: Records): boolean {
  if (a === b) return true;
  if (a.size !== b.size) return false;
  const others = b.values();
  for (const one of a.values()) if (one !== others.next().value) return false;
  return true;
}

function addChanged(kind: AroundKind, before: Records, now: Records, into: Set<string>): void {
  if (before === now) return;
  for (const [id, one] of now) if (before.get(id) !== one) into.add(aroundKey(kind, id));
  for (const id of before.keys()) if (!now.has(id)) into.add(aroundKey(kind, id));
}

const nothing: Records = new Map();

/** Keys of the records that are new, gone or other than before; null where the days themselves may stand on other records. */
export function changedSince(before: Snapshot, { whole, structure, around }: Snapshot): ReadonlySet<string> | null {
  if (!isSameList(before.whole, whole)) return null;
  if (!structure.every((records, i) => isSameInOrder(records, before.structure[i] ?? nothing))) return null;
  const changed = new Set<string>();
  for (const [kind, now] of around) addChanged(kind, before.around.get(kind) ?? nothing, now, changed);
  return changed;
}
