/** Writes facts: one strict transaction, and the answer only after it is complete. */
import type { NewFact } from '#records/fact.ts';

/** Bytes that go into the same transaction as the fact that names their hash. */
export interface NewFile {
  readonly hash: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

export interface WriteOptions {
  /** The draft that this write makes good: deleted in the same transaction. */
  readonly draftKey?: string;
  readonly files?: readonly NewFile[];
}

/** Why something may not be done now: a reason key for words, and the record it stands on. Replaced by records/decide.ts. */
export interface Refusal {
  readonly reason: string;
  readonly [more: string]: unknown;
}

export type FailedWhy = 'quota' | 'lost' | 'newer' | 'evicted' | 'unknown';

export type Written =
  | { readonly kind: 'written'; readonly factIds: readonly string[]; readonly sampleNumbers?: readonly string[] }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'failed'; readonly why: FailedWhy };

/** Never throws for what a device can do to us; a throw is a bug. The draft is kept unless `written`. */
export async function write(wanted: readonly NewFact[], options: WriteOptions = {}): Promise<Written> {
  void wanted;
  void options;
  return { kind: 'failed', why: 'unknown' };
}
