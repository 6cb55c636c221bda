/** A firm's own limits. They count only where they are stricter than the rule's, and never relax anything. */
import { sideOf } from '#core/comparison.ts';
import type { LimitSet, SetLimit } from './limitSet.ts';
import type { ReadSource } from './source.ts';

export interface OwnLimits {
  readonly ownActionLevelUgPerM3: number | null;
  readonly ownPelUgPerM3: number | null;
}

export const noOwnLimits: OwnLimits = { ownActionLevelUgPerM3: null, ownPelUgPerM3: null };

export interface OwnLimitProblem {
  readonly field: keyof OwnLimits;
  /** `notStricter` than the rule's; `aboveOwnPel`: an action level above the PEL that the firm holds itself to. */
  readonly key: 'notStricter' | 'aboveOwnPel';
  readonly limitUgPerM3: number;
}

/** Why own limits cannot be taken; empty when they can. Own limits are held against the federal set, which every site has at least. */
export function ownLimitProblems(own: OwnLimits, set: Pick<LimitSet, 'actionLevel' | 'pel'>): OwnLimitProblem[] {
  const problems: OwnLimitProblem[] = [];
  const { ownActionLevelUgPerM3: level, ownPelUgPerM3: pel } = own;
  const stricter = (value: number, limit: SetLimit): boolean => sideOf(value, limit.value) < 0;
  if (level !== null && !stricter(level, set.actionLevel))
    problems.push({ field: 'ownActionLevelUgPerM3', key: 'notStricter', limitUgPerM3: set.actionLevel.value });
  if (pel !== null && !stricter(pel, set.pel))
    problems.push({ field: 'ownPelUgPerM3', key: 'notStricter', limitUgPerM3: set.pel.value });
  const judging = level ?? set.actionLevel.value;
  if (pel !== null && sideOf(judging, pel) > 0 && problems.length === 0)
    problems.push({ field: 'ownActionLevelUgPerM3', key: 'aboveOwnPel', limitUgPerM3: pel });
  return problems;
}

/** Not a rule: nobody may cite it. */
const ownSource: ReadSource = { title: "The firm's own limit", readOn: null, mark: 'DERIVED' };

const stricterOf = (limit: SetLimit, own: number | null): SetLimit =>
  own !== null && sideOf(own, limit.value) < 0 ? { ...limit, value: own, source: ownSource } : limit;

/** A set with the firm's own limits in place of the rule's wherever they are stricter; the dose of a long day follows the PEL. */
export function tightened(set: LimitSet, own: OwnLimits): LimitSet {
  const pel = stricterOf(set.pel, own.ownPelUgPerM3);
  // an action level above the PEL would leave days above the PEL below it
  const level = Math.min(own.ownActionLevelUgPerM3 ?? Number.POSITIVE_INFINITY, pel.value);
  const actionLevel = stricterOf(set.actionLevel, level);
  if (pel === set.pel && actionLevel === set.actionLevel) return set;
  return { ...set, actionLevel, pel, extendedShift: doseOf(set, pel) };
}

function doseOf({ extendedShift }: LimitSet, pel: SetLimit): LimitSet['extendedShift'] {
  if (extendedShift.kind === 'none') return extendedShift;
  const own = pel.value * (pel.twaMin.value / 60);
  const { dose } = extendedShift;
  return { ...extendedShift, dose: { ...dose, value: Math.min(dose.value, own) } };
}

/** Which of the two limits is the firm's own. */
export const isOwnLimit = (limit: SetLimit): boolean => limit.source === ownSource;
