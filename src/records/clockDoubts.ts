/** What the facts themselves tell of a clock that was set back. */
import { minutesBetween } from '#core/calendar.ts';
import { sequenceOf, writerOf } from './chain.ts';
import type { Fact } from './fact.ts';

/**
 * Facts of one writer, tapped one after the other, whose wall times go back: the clock was set back meanwhile. One minute is left for
 * the small steps by which clocks are trimmed.
 */
export function setBack(facts: readonly Fact[]): readonly string[] {
  const tapped = facts.filter(({ happened }) => happened.entry === 'tapped');
  const byWriter = [...tapped].sort((a, b) =>
    writerOf(a.id) === writerOf(b.id) ? sequenceOf(a.id) - sequenceOf(b.id) : a.id < b.id ? -1 : 1,
  );
  let latest: Fact | null = null;
  const found: string[] = [];
  for (const fact of byWriter) {
    const same: boolean = latest !== null && writerOf(latest.id) === writerOf(fact.id);
    const back = same && latest !== null && minutesBetween(fact.happened.at, latest.happened.at) > 1;
    if (back) found.push(fact.id);
    else latest = fact;
  }
  return found;
}
