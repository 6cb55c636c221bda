/** What differs between the rules that an act was made with and those held today. The act keeps its own; nothing is rewritten. */
import { editions } from '#reference/editions.ts';
import { allLimitSets, setOn } from '#reference/limits.ts';

/** What an act that left the firm says of the rules it was made with. */
export interface ActEdition {
  /** Edition of rules and reference data, as it stands on the paper. */
  readonly rules: string;
  /** The rule that the act names, and the day whose limits it was made with; null where it rests on no limit. */
  readonly document: string | null;
  readonly on: string | null;
  readonly actionLevelUgPerM3: number | null;
  readonly pelUgPerM3: number | null;
}

export interface EditionDifference {
  readonly rulesThen: string;
  readonly rulesNow: string;
  /** Limits that today's edition gives for the same rule and day, where they are not those of the act; null: it rests on none. */
  readonly limits:
    | readonly { readonly which: 'actionLevel' | 'pel'; readonly thenUgPerM3: number; readonly nowUgPerM3: number }[]
    | null;
}

type Loose = Readonly<Record<string, unknown>>;
const textIn = (value: unknown): string | null => (typeof value === 'string' ? value : null);
const numberIn = (value: unknown): number | null => (typeof value === 'number' ? value : null);
const limitIn = (value: unknown): number | null =>
  typeof value === 'object' && value !== null ? numberIn((value as Loose).limitUgPerM3) : null;

/** From the values that a notice or a determination keeps; a custody sheet keeps none that rest on a limit. */
export function actEditionOf(made: { readonly rules: string }, values: Loose = {}): ActEdition {
  return {
    rules: made.rules,
    document: textIn(values.document),
    on: textIn(values.workOn) ?? textIn(values.determinedOn),
    actionLevelUgPerM3: numberIn(values.actionLevelUgPerM3) ?? limitIn(values.actionLevel),
    pelUgPerM3: numberIn(values.pelUgPerM3) ?? limitIn(values.pel),
  };
}

/** null: the same edition. `now` is the one held, otherwise only in tests. */
export function editionDifference(
  act: ActEdition,
  now: { readonly rules: string } = editions(),
): EditionDifference | null {
  if (act.rules === now.rules) return null;
  return { rulesThen: act.rules, rulesNow: now.rules, limits: limitsChanged(act) };
}

function limitsChanged({ document, on, actionLevelUgPerM3, pelUgPerM3 }: ActEdition): EditionDifference['limits'] {
  const file = allLimitSets().find((one) => one.document === document);
  if (!file || on === null) return null;
  const set = setOn(on, file);
  const then = { actionLevel: actionLevelUgPerM3, pel: pelUgPerM3 };
  return (['actionLevel', 'pel'] as const).flatMap((which) => {
    const thenUgPerM3 = then[which];
    const nowUgPerM3 = set[which].value;
    return thenUgPerM3 === null || thenUgPerM3 === nowUgPerM3 ? [] : [{ which, thenUgPerM3, nowUgPerM3 }];
  });
}
