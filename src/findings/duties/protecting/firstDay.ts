/**
 * What the crew must wear tomorrow and why, from state and task alone: no register, no book, no measurement. What is presumed stands until
 * it is measured, 29 CFR 1926.62(d)(2). Doubt about state, task or paint goes to the careful side.
 */
import { exactly } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { maximumUseConcentration } from '#core/protection.ts';
import { holdsOn } from '#reference/dated.ts';
import { type LimitSet, type LimitsHere, limitSetOn } from '#reference/limits.ts';
import { presumptionSign } from '#reference/presumption.ts';
import { immediatelyDangerous, type RespiratorCondition, respiratorConditions } from '#reference/respirators.ts';
import type { ReadSource } from '#reference/source.ts';
import { findPresumption, type PresumptionFinding } from '../../presumption.ts';
import { isOwnJudging, judgingPel, type PelQuestion } from './judgingPel.ts';
import { allowed, ofPel } from './presumedFactor.ts';
import type { RespiratorAdvice } from './respirator.ts';
import { respiratorFor } from './respirators.ts';

export interface FirstDayQuestion {
  /** Two letters; null: not known, and no promise is made. */
  readonly stateCode: string | null;
  /** Everyday tasks; none is read most carefully. */
  readonly taskIds: readonly string[];
  /** The day of the work. */
  readonly on: string;
  /** The length of the shift; 8 or less where nobody says. */
  readonly shiftHours?: number;
  readonly paintLead?: 'tested' | 'presumed' | 'notKnown' | null;
  readonly ownPelUgPerM3?: number | null;
}

/** A limit that one task has in this state, or the hours that it may take, with its last day. */
export interface TaskLimit {
  readonly key: string;
  readonly value: number;
  readonly unit: 'µg/m³' | 'h';
  readonly untilOn: string | null;
  readonly thenValue: number | null;
  readonly source: ReadSource;
}

export interface FirstDay {
  readonly limits: LimitsHere;
  readonly presumption: PresumptionFinding;
  readonly advice: RespiratorAdvice;
  /** What is presumed, in the limits that hold here. `ofState`: not the federal numbers, worked out from a state's own PEL. */
  readonly levels: {
    readonly aboveUgPerM3: number | null;
    readonly upToUgPerM3: number | null;
    readonly ofState: boolean;
  };
  /** What the least factor holds to on a shift of that length; null where no factor can be named. */
  readonly holdsTo: { readonly working: Term; readonly cappedUgPerM3: number | null } | null;
  /** The firm's own stricter limit, where the factor was worked out against it. */
  readonly ownPelUgPerM3: number | null;
  /** Presumed above the PEL: the area needs the sign. null where nothing is presumed. */
  readonly sign: { readonly paragraph: string; readonly source: ReadSource } | null;
  /** The level that a documented measurement must not exceed for the presumption to end. */
  readonly endsAt: { readonly levelUgPerM3: number; readonly paragraph: string | null } | null;
  readonly conditions: readonly RespiratorCondition[];
  readonly taskLimits: readonly TaskLimit[];
  readonly shiftHours: number;
}

export function findFirstDay(question: FirstDayQuestion): FirstDay {
  const { stateCode, taskIds, on, shiftHours = 8, paintLead = null, ownPelUgPerM3 = null } = question;
  const limits = limitSetOn(on, stateCode ?? '');
  const presumption = findPresumption(taskIds, paintLead);
  const hours = recorded('hoursWorked', 'h', exactly(shiftHours), []);
  const advice = respiratorFor({ measurement: null, presumption, limits, hoursWorked: hours, ownPelUgPerM3 });
  const { presumedAbove, presumedUpTo, tier } = presumption;
  const pel = limits.set.pel.value;
  const aboveUgPerM3 = presumedAbove && ofPel(presumedAbove.value, pel);
  const paragraph = presumption.sources[0]?.section ?? null;
  return {
    limits,
    presumption,
    advice,
    levels: {
      aboveUgPerM3,
      upToUgPerM3: presumedUpTo && ofPel(presumedUpTo.value, pel),
      ofState: aboveUgPerM3 !== null && aboveUgPerM3 !== presumedAbove?.value,
    },
    holdsTo: advice.leastApf === null ? null : holdsTo(advice.leastApf, { limits, ownPelUgPerM3 }, hours),
    ownPelUgPerM3: isOwnJudging({ limits, ownPelUgPerM3 }) ? ownPelUgPerM3 : null,
    sign: tier === 'none' ? null : presumptionSign(),
    endsAt:
      presumedAbove === null ? null : { levelUgPerM3: ofPel(presumedAbove.value, limits.set.pel.value), paragraph },
    conditions: respiratorConditions(),
    taskLimits: taskLimitsOn(on, taskIds, limits.set),
    shiftHours,
  };
}

/** Factor times what a shift of this length may reach, and never above what is immediately dangerous. */
function holdsTo(apf: number, question: PelQuestion, hours: Term): FirstDay['holdsTo'] {
  const F = recorded('assignedProtectionFactor', '', exactly(apf), ['limit:apf']);
  const working = maximumUseConcentration.of({ F, A: allowed(judgingPel(question), question.limits, hours) });
  const cap = immediatelyDangerous().value;
  const { estimate } = working;
  return { working, cappedUgPerM3: estimate.kind === 'exact' && estimate.value > cap ? cap : null };
}

function taskLimitsOn(on: string, taskIds: readonly string[], set: LimitSet): TaskLimit[] {
  return [...set.exceptions, ...set.workLimits].flatMap(({ key, taskIds: of, unit, values }): TaskLimit[] => {
    const at = values.findIndex((one) => holdsOn(on, one));
    const value = values[at];
    if (!value || !taskIds.some((id) => of.includes(id))) return [];
    const thenValue = values[at + 1]?.value ?? null;
    return [{ key, value: value.value, unit, untilOn: value.to, thenValue, source: value.source }];
  });
}
