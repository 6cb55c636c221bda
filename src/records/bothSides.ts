/**
 * What would be in dispute after taking in: values changed here and there without knowledge of each other, and voids that a result
 * speaks against. Records are folded before and after, and only those that can have come into dispute: known here, and touched by
 * something new that two hands can say differently.
 */
import type { AnyRecord, Conflict, SampleRecord } from './book.ts';
import { readFact, type StoredFact } from './canonical.ts';
import { foldRecord } from './fold.ts';
import { segmentsOf, valueAt } from './pointer.ts';

/** One value that was changed on both sides without knowledge of each other; `judges` is the value that stands until a person settles it. */
export interface BothChanged {
  readonly recordKey: string;
  readonly factId: string;
  readonly factKind: string;
  readonly path: string;
  /** What stood before both; null where nothing did. */
  readonly first: unknown;
  /** Values that only this side had; empty when two other devices disagree. */
  readonly here: readonly unknown[];
  /** Values that come with the file. */
  readonly there: readonly unknown[];
  readonly judges: unknown;
}

export interface BothSides {
  readonly bothChanged: readonly BothChanged[];
  /** Numbers of samples that will be void with a result that nobody who knew both has judged, and were not before. */
  readonly voidAgainstResult: readonly string[];
}

/** Kinds that two hands can say differently of one record. */
const disputable =
  /"kind":\s*"(?:valueCorrected|correctionSettled|workHoursStated|otherWorkAsked|dayDescribed|conditionsNoted|flowDecided|fittingChecked|resultReceived|sampleVoided|voidReviewed|workNoted|workStruck|employmentStated|changesAsked|limitsChosen|measurementPlanned|dayPrepared|gearHeld|certificateEntered|gearDoubtSettled|pricesStated)\.v1"/;

/** Whether a fact of this kind can put its record into dispute. */
export const mayDispute = (kind: string): boolean => disputable.test(`"kind":"${kind}"`);

interface Side {
  readonly here: StoredFact[];
  readonly there: StoredFact[];
  disputable: boolean;
}

const aboutOf = (text: string): readonly string[] => {
  const { about } = JSON.parse(text) as { about?: unknown };
  return Array.isArray(about) ? about.map(String) : [];
};

function sidesByKey(here: Iterable<StoredFact>, incoming: Iterable<StoredFact>): ReadonlyMap<string, Side> {
  const sides = new Map<string, Side>();
  for (const fact of incoming) {
    const may = disputable.test(fact.text);
    for (const key of aboutOf(fact.text)) {
      const side = sides.get(key) ?? { here: [], there: [], disputable: false };
      side.there.push(fact);
      side.disputable ||= may;
      sides.set(key, side);
    }
  }
  for (const fact of here) for (const key of aboutOf(fact.text)) sides.get(key)?.here.push(fact);
  return sides;
}

const placesOf = (text: string): { readonly kind: string; readonly places: unknown } => {
  const read = readFact(text);
  if (read.kind !== 'known') return { kind: 'unknown', places: null };
  return { kind: read.fact.kind, places: { ...read.fact.body, happened: { at: read.fact.happened.at } } };
};

const nameOf = ({ factId, path, candidates }: Conflict): string =>
  [factId, path, ...candidates.map(({ correctionId }) => correctionId).sort()].join(' ');

function changed(
  key: string,
  conflict: Conflict,
  here: readonly StoredFact[],
  there: readonly StoredFact[],
): BothChanged {
  const { factId, path, candidates } = conflict;
  const own = new Set(here.map(({ id }) => id));
  const source = [...here, ...there].find(({ id }) => id === factId);
  const { kind, places } = source ? placesOf(source.text) : { kind: 'unknown', places: null };
  const first = valueAt(places, segmentsOf(path))?.value ?? null;
  const values = (mine: boolean): readonly unknown[] =>
    candidates.filter(({ correctionId }) => own.has(correctionId) === mine).map(({ value }) => value);
  return {
    recordKey: key,
    factId,
    factKind: kind,
    path,
    first,
    here: values(true),
    there: values(false),
    judges: conflict.standingValue ?? null,
  };
}

const isDisputed = (record: AnyRecord | null): record is SampleRecord =>
  record?.key.startsWith('sample:') === true && (record as SampleRecord).voidAgainstResult === true;

/** One record; for a caller that wants to stop or to let others work between two of them. */
export function disputesOf(key: string, here: readonly StoredFact[], there: readonly StoredFact[]): BothSides {
  const before = here.length === 0 ? null : foldRecord(key, here);
  const after = foldRecord(key, [...here, ...there]);
  if (after === null) return { bothChanged: [], voidAgainstResult: [] };
  const known = new Set(before?.conflicts.map(nameOf));
  return {
    bothChanged: after.conflicts
      .filter((conflict) => !known.has(nameOf(conflict)))
      .map((conflict) => changed(key, conflict, here, there)),
    voidAgainstResult: isDisputed(after) && !isDisputed(before) ? [after.sampleNumber] : [],
  };
}

/**
 * `here`: facts of this book about the records that the new ones touch (more do no harm). `incoming`: the new ones. Both as `readFact`
 * reads them. Records that only the file tells of are passed over: nothing of them was here to be changed.
 */
export function changedBothSides(here: Iterable<StoredFact>, incoming: Iterable<StoredFact>): BothSides {
  const bothChanged: BothChanged[] = [];
  const voidAgainstResult: string[] = [];
  for (const [key, side] of sidesByKey(here, incoming)) {
    if (!side.disputable || side.here.length === 0) continue;
    const found = disputesOf(key, side.here, side.there);
    bothChanged.push(...found.bothChanged);
    voidAgainstResult.push(...found.voidAgainstResult);
  }
  return { bothChanged, voidAgainstResult };
}
