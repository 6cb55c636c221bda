/** One flow check: belongs to pump, meter and cassette in line; who wears the pump afterwards is not known to it. */
import type { FlowCheckRecord } from './book.ts';
import { type FoldInput, firstOf } from './foldCase.ts';

export function foldFlowCheck({ base, facts }: FoldInput): FlowCheckRecord | null {
  const checked = firstOf(facts, 'flowChecked.v1');
  return checked && { ...checked.body, ...base, happened: checked.happened, by: checked.by, checkedFactId: checked.id };
}
