/** The average over the hours worked, and what it may be in a shift over 8 hours: the same test as TWA8 against the PEL. */
import { type Comparison, compareWithLimit, sideOf } from '#core/comparison.ts';
import { atLeast, exactly } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { allowableAverage, shiftAverage } from '#core/twa.ts';
import type { LimitsHere } from '#reference/limits.ts';
import type { Part } from './dayAverages.ts';

export interface ShiftAverages {
  readonly shiftAverage: Term | null;
  readonly allowableAverage: Term | null;
  readonly shiftComparison: Comparison | null;
}

const away = recorded('awayFromLead', 'µg/m³', exactly(0), []);
const notKnown = recorded('notKnown', 'µg/m³', atLeast(0), []);

function concentrationOf({ as, sample }: Part, protective: boolean): Term {
  if (as === 'away') return away;
  return (protective ? sample?.protectiveConcentration : sample?.judged) ?? notKnown;
}

/** The same hours in the average over the shift and in 400 / h. */
export function shiftOf(h: Term | null, parts: readonly Part[], limits: LimitsHere): ShiftAverages {
  const hours = h?.estimate.kind === 'exact' ? h.estimate.value : 0;
  if (!h || hours <= 0) return { shiftAverage: null, allowableAverage: null, shiftComparison: null };
  const inputs = (protective: boolean) => ({
    C: parts.map((part) => concentrationOf(part, protective)),
    t: parts.map(({ minutes }) => minutes),
    h,
  });
  const average = shiftAverage.of(inputs(false));
  const { extendedShift, pel, id } = limits.set;
  if (extendedShift.kind === 'none' || sideOf(hours, extendedShift.aboveHours.value) <= 0)
    return { shiftAverage: average, allowableAverage: null, shiftComparison: null };
  const because = [`limit:${id}`];
  const allowable = allowableAverage.of({
    L: recorded('pel', 'µg/m³', exactly(pel.value), because),
    D: recorded('allowableDose', 'µg·h/m³', exactly(extendedShift.dose.value), because),
    h,
  });
  const value = allowable.estimate.kind === 'exact' ? allowable.estimate.value : pel.value;
  const shiftComparison = compareWithLimit(shiftAverage.of(inputs(true)).estimate, { ...pel, value });
  return { shiftAverage: average, allowableAverage: allowable, shiftComparison };
}
