/** What each case of decide is asked, and how it answers. */

import type { FactKind, NewFact } from '../fact.ts';
import type { DecideContext } from './fresh.ts';
import type { Caution, CautionKey, Params, Refusal, RefusalKey } from './refusal.ts';
import type { View } from './view.ts';

export interface Ask<K extends FactKind = FactKind> {
  readonly fact: NewFact<K>;
  readonly index: number;
  readonly view: View;
  readonly context: DecideContext;
  /** Fields are places in the wanted fact: `body/sampleNumber`, `happened/at`. */
  readonly refuse: (key: RefusalKey, fields?: readonly string[], params?: Params) => void;
  readonly caution: (key: CautionKey, fields?: readonly string[], params?: Params) => void;
}

export interface Answers {
  readonly refusals: Refusal[];
  readonly cautions: Caution[];
}

export const noParams: Params = {};

export function askOf(fact: NewFact, index: number, view: View, context: DecideContext, answers: Answers): Ask {
  const placed = (fields: readonly string[]): readonly string[] => fields.map((field) => `${index}/${field}`);
  return {
    fact,
    index,
    view,
    context,
    refuse: (key, fields = [], params = noParams) => answers.refusals.push({ key, fields: placed(fields), params }),
    caution: (key, fields = [], params = noParams) => answers.cautions.push({ key, fields: placed(fields), params }),
  };
}

/** Params of a moment: words turn the instant into a wall time of the zone. */
export const momentParams = (at: string, zone: string): Params => ({ at, zone });

/** An act that needs its reason written down. */
export function needsWhy({ fact, refuse }: Ask): void {
  if (fact.why === null || fact.why.trim() === '') refuse('whyNeeded', ['why']);
}
