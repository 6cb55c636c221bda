/** What is known inside the transaction, and what the facts already decided in this call will have changed. */
import type { AnyRecord, BoxRecord, SampleRecord } from '../book.ts';
import { factText } from '../canonical.ts';
import { keyOf, type RecordKind } from '../common.ts';
import type { Fact, NewFact } from '../fact.ts';
import { foldRecord } from '../fold.ts';
import type { Fresh } from './fresh.ts';

export interface View {
  readonly fresh: Fresh;
  readonly record: (key: string) => AnyRecord | null;
  readonly sample: (id: string) => SampleRecord | null;
  readonly box: (id: string) => BoxRecord | null;
  /** Every sample in sight, with what this call changes. */
  readonly samples: () => readonly SampleRecord[];
  readonly boxes: () => readonly BoxRecord[];
  /** Every record in sight. */
  readonly all: () => readonly AnyRecord[];
  readonly put: (record: AnyRecord) => void;
}

const isOf = (record: AnyRecord, kind: RecordKind): boolean => record.key.startsWith(`${kind}:`);

export function viewOf(fresh: Fresh): View {
  const records = new Map<string, AnyRecord>();
  const lists = [fresh.running, fresh.withNumbers, fresh.boxes, fresh.measurements ?? [], fresh.reserving ?? []];
  for (const list of lists) for (const r of list) records.set(r.key, r);
  for (const [key, record] of fresh.records) records.set(key, record);
  const allOf = (kind: RecordKind): readonly AnyRecord[] => [...records.values()].filter((r) => isOf(r, kind));
  const record = (key: string): AnyRecord | null => records.get(key) ?? null;
  return {
    fresh,
    record,
    sample: (id) => record(keyOf('sample', id)) as SampleRecord | null,
    box: (id) => record(keyOf('box', id)) as BoxRecord | null,
    samples: () => allOf('sample') as readonly SampleRecord[],
    boxes: () => allOf('box') as readonly BoxRecord[],
    all: () => [...records.values()],
    put: (changed) => {
      records.set(changed.key, changed);
    },
  };
}

/** The id that a wanted fact has while it is being decided; never stored. */
export const provisionalId = (index: number): string => `zzzzzzzzzzzz.${String(index + 1).padStart(8, '0')}`;

/** The record that a first fact makes; null when it takes more than this fact. */
export function recordFrom(key: string, fact: NewFact, index: number): AnyRecord | null {
  const id = provisionalId(index);
  const provisional = { ...fact, id, recorded: '2000-01-01T00:00:00.000Z-0000' } as unknown as Fact;
  return foldRecord(key, [{ id, text: factText(provisional) }]);
}
