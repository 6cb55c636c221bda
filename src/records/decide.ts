/**
 * What somebody wants to write down -> the facts, or the reasons why not now. Pure; the store runs it inside the transaction on rows
 * read there, so that two tabs or two thumbs cannot start one pump twice.
 */
import type { AnyRecord, BoxRecord, FlowCheckRecord, SampleRecord } from './book.ts';
import type { Caution, Refusal } from './decide/refusal.ts';
import type { NewFact } from './fact.ts';

/** What the store must read inside the transaction. */
export interface Needs {
  /** Record keys; a key without a record is simply absent from `Fresh.records`. */
  readonly keys: readonly string[];
  /** All samples put on, neither stopped nor void. */
  readonly runningSamples: boolean;
  /** Samples that bear one of these numbers. */
  readonly sampleNumbers: readonly string[];
  /** Boxes that hold one of these samples. */
  readonly boxesOfSamples: readonly string[];
  /** Texts of these facts, for corrections. */
  readonly facts: readonly string[];
}

export interface Fresh {
  readonly records: ReadonlyMap<string, AnyRecord>;
  readonly running: readonly SampleRecord[];
  readonly withNumbers: readonly SampleRecord[];
  readonly boxes: readonly BoxRecord[];
  /** Fact id -> text */
  readonly facts: ReadonlyMap<string, string>;
  /** Flow checks of the pumps put on, where they are at hand: only a caution hangs on them. */
  readonly flowChecks?: readonly FlowCheckRecord[];
}

export interface DecideContext {
  /** The wall clock. */
  readonly now: string;
  /** The latest wall time this device ever saw, null when never. */
  readonly lastSeenAt: string | null;
}

export type Decision =
  /** As wanted, with bodies checked and trimmed, `about` completed and `supersedes` filled in. */
  | { readonly kind: 'facts'; readonly facts: readonly NewFact[]; readonly cautions: readonly Caution[] }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

export function needs(wanted: readonly NewFact[]): Needs {
  return {
    keys: wanted.flatMap(({ about }) => about),
    runningSamples: true,
    sampleNumbers: [],
    boxesOfSamples: [],
    facts: [],
  };
}

export function decide(wanted: readonly NewFact[], fresh: Fresh, context: DecideContext): Decision {
  void fresh;
  void context;
  return { kind: 'facts', facts: wanted, cautions: [] };
}
