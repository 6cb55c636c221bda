/** Cassettes that may go into a box: without a result, stopped, and in no other box. */
import type { BoxRecord, SampleRecord } from '#records/book.ts';

export interface FreeSamples {
  readonly stopped: readonly SampleRecord[];
  readonly running: readonly SampleRecord[];
}

export function freeSamples(samples: readonly SampleRecord[], otherBoxes: readonly BoxRecord[]): FreeSamples {
  const taken = new Set(otherBoxes.flatMap(({ packed }) => packed.sampleIds));
  const free = samples.filter(({ id }) => !taken.has(id));
  const isStopped = ({ sampleKind, stopped }: SampleRecord) => sampleKind === 'blank' || stopped !== null;
  return {
    stopped: free.filter(isStopped),
    running: free.filter((sample) => !isStopped(sample) && sample.putOn !== null),
  };
}

export const ofSite = ({ stopped, running }: FreeSamples, siteId: string | null): FreeSamples => ({
  stopped: stopped.filter((sample) => sample.siteId === siteId),
  running: running.filter((sample) => sample.siteId === siteId),
});
