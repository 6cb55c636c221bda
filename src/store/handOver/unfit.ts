/** Carries a reason out of the reading of a file, however deep; caught by whoever looks into it. */
import type { LookRefusal } from './handOver.ts';

export class Unfit extends Error {
  readonly why: LookRefusal;
  /** Facts of a damaged file that could still be read. */
  readonly intactCount: number;
  /** Bytes that were inflated before it was found out: hostile entries are stopped by their sum. */
  readonly inflatedBytes: number;
  constructor(why: LookRefusal, intactCount = 0, inflatedBytes = 0) {
    super(why);
    this.name = 'Unfit';
    this.why = why;
    this.intactCount = intactCount;
    this.inflatedBytes = inflatedBytes;
  }
}

/** Throws when a person asked to stop. */
export function stopIfAsked(signal: AbortSignal | undefined): void {
  if (signal?.aborted) throw new Unfit('stopped');
}
