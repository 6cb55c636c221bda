/** What a void or half-checked sample still shows: at least this much. High stays high; low proves nothing. */
import { atLeast, lowerOf } from './estimate.ts';
import { formula, type Term, type Working } from './formula.ts';

/** The figure itself, known only from below. µg/m³. */
export const stillShown = formula({
  symbol: 'Cleast',
  name: 'stillShown',
  unit: 'µg/m³',
  inputs: { C: { name: 'concentration', unit: 'µg/m³' } },
  expression: 'Cleast = C',
  source: {
    title: 'A sample that is void or in doubt still shows its high figure; a low one proves nothing',
    mark: 'DERIVED',
  },
  increasesWith: ['C'],
  compute: ({ C }) => C,
});

/** The same concentration without its upper end. */
export function atLeastOf(C: Term): Working {
  return { ...stillShown.of({ C }), estimate: atLeast(lowerOf(C.estimate)) };
}
