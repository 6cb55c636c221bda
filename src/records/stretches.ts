/** Which sequences of each writer are held, as stretches without a gap: what is missing is told without holding every id. */
import { factIdOf, sequenceOf, writerOf } from './chain.ts';
import type { Gap } from './merge.ts';

/** Sequences `fromCount` to `toCount` of a writer, all held. */
export type Stretch = Gap;

/** Takes ids in order and keeps their stretches. */
export class Stretches {
  private readonly found: { writer: string; fromCount: number; toCount: number }[] = [];

  add(id: string): void {
    const writer = writerOf(id);
    const sequence = sequenceOf(id);
    const last = this.found.at(-1);
    if (last?.writer === writer && sequence === last.toCount + 1) last.toCount = sequence;
    else this.found.push({ writer, fromCount: sequence, toCount: sequence });
  }

  list(): readonly Stretch[] {
    return this.found;
  }
}

/** Sequences missing below the highest of each writer, when both lists are held. */
export function gapsBetween(some: readonly Stretch[], more: readonly Stretch[]): readonly Gap[] {
  const sorted = [...some, ...more].sort((a, b) =>
    a.writer === b.writer ? a.fromCount - b.fromCount : a.writer < b.writer ? -1 : 1,
  );
  const gaps: Gap[] = [];
  let writer = '';
  let last = 0;
  for (const stretch of sorted) {
    if (stretch.writer !== writer) {
      writer = stretch.writer;
      last = 0;
    }
    if (stretch.fromCount > last + 1) gaps.push({ writer, fromCount: last + 1, toCount: stretch.fromCount - 1 });
    last = Math.max(last, stretch.toCount);
  }
  return gaps;
}

/** The entry that stands right after a gap. */
export const afterGap = ({ writer, toCount }: Gap): string => factIdOf(writer, toCount + 1);
