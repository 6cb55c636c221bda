/** How far the flow changed at most, where a flow meter was found to be off: the flows lie between as read and as found. */
import { flowChange } from '#core/flow.ts';
import type { Term } from '#core/formula.ts';
import type { FlowCheckFinding } from './flow.ts';

type Ends = Pick<FlowCheckFinding, 'ends'>;

/** By which finding of the meter this end is what it is; '' as read. */
function findingOf(end: Term): string {
  const factor = end.kind === 'working' ? end.inputs.f : undefined;
  return factor && 'because' in factor ? factor.because.join() : '';
}

/** What both flow meters may have read truly. One meter that was off was off by the same both times. */
function pairsOf(before: Ends, after: Ends, oneMeter: boolean): { Qb: Term; Qa: Term }[] {
  const together = oneMeter && before.ends.map(findingOf).join(' ') === after.ends.map(findingOf).join(' ');
  return before.ends.flatMap((Qb, i) => after.ends.flatMap((Qa, j) => (together && i !== j ? [] : [{ Qb, Qa }])));
}

const pctOf = ({ estimate }: Term): number => (estimate.kind === 'exact' ? estimate.value : 0);

/** The largest change that there may have been, in per cent of the flow before; null without both flows. */
export function largestChange(before: Ends | null, after: Ends | null, oneMeter: boolean): Term | null {
  if (!before || !after) return null;
  const changes = pairsOf(before, after, oneMeter).map((pair) => flowChange.of(pair));
  return changes.reduce<Term | null>((most, one) => (most && pctOf(most) >= pctOf(one) ? most : one), null);
}
