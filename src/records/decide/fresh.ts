/** What decide is given of the book: rows read inside the transaction, and the clock. */
import type { AnyRecord, BoxRecord, DayPlanRecord, FlowCheckRecord, MissingEntries, SampleRecord } from '../book.ts';

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
  /** Measurements whose notices are asked for, with the measurements themselves. */
  readonly noticesOf: readonly string[];
  /** Whether a file is half taken in: asked where something may be relaxed. */
  readonly takingIn: boolean;
  /** Which entries are missing: asked where some are given up. */
  readonly missing: boolean;
  /** Texts of these facts, for corrections. */
  readonly facts: readonly string[];
}

export interface Fresh {
  readonly records: ReadonlyMap<string, AnyRecord>;
  readonly running: readonly SampleRecord[];
  readonly withNumbers: readonly SampleRecord[];
  /** Days whose labels bear one of the numbers asked for. */
  readonly reserving?: readonly DayPlanRecord[];
  readonly boxes: readonly BoxRecord[];
  /** Measurements asked for, and every notice of them. */
  readonly measurements?: readonly AnyRecord[];
  /** Fact id -> text */
  readonly facts: ReadonlyMap<string, string>;
  /** Flow checks of the pumps put on, where they are at hand: only a caution hangs on them. */
  readonly flowChecks?: readonly FlowCheckRecord[];
  /** A file is half taken in. Told where `Needs.takingIn` asks. */
  readonly takingIn?: boolean;
  /** Entries of other writers that are known to be missing, accepted or not. Told where `Needs.missing` asks. */
  readonly missing?: readonly MissingEntries[];
}

export interface DecideContext {
  /** The wall clock. */
  readonly now: string;
  /** The latest wall time this device ever saw, null when never. */
  readonly lastSeenAt: string | null;
}
