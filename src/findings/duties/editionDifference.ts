/** What differs between the rules that an act was made with and those held today. The act keeps its own; nothing is rewritten. */
import { editions } from '#reference/editions.ts';
import { limitSetOn } from '#reference/limits.ts';

/** What an act that left the firm says of the rules it was made with. */
export interface ActEdition {
  /** Edition of rules and reference data, as it stands on the paper. */
  readonly rules: string;
  /** Day and state whose limits the act was made with; left out where it names none. */
  readonly on?: string;
  readonly stateCode?: string;
  readonly actionLevelUgPerM3?: number | null;
  readonly pelUgPerM3?: number | null;
}

export interface EditionDifference {
  readonly rulesThen: string;
  readonly rulesNow: string;
  /** Limits that today's edition gives for the same day and state, where they are not those of the act. */
  readonly limits: readonly {
    readonly which: 'actionLevel' | 'pel';
    readonly thenUgPerM3: number;
    readonly nowUgPerM3: number;
  }[];
}

/** null: the same edition. `now` only in tests: the editions held otherwise. */
export function editionDifference(
  act: ActEdition,
  now: { readonly rules: string } = editions(),
): EditionDifference | null {
  if (act.rules === now.rules) return null;
  return { rulesThen: act.rules, rulesNow: now.rules, limits: limitsChanged(act) };
}

function limitsChanged(act: ActEdition): EditionDifference['limits'] {
  if (act.on === undefined) return [];
  const { set } = limitSetOn(act.on, act.stateCode ?? '');
  const then = { actionLevel: act.actionLevelUgPerM3 ?? null, pel: act.pelUgPerM3 ?? null };
  return (['actionLevel', 'pel'] as const).flatMap((which) => {
    const thenUgPerM3 = then[which];
    const nowUgPerM3 = set[which].value;
    return thenUgPerM3 === null || thenUgPerM3 === nowUgPerM3 ? [] : [{ which, thenUgPerM3, nowUgPerM3 }];
  });
}
