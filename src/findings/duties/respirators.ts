/**
 * Which respirator is enough, 29 CFR 1926.62(f) and 1910.134 Table 1. The 8-hour average is held against the PEL itself at any length
 * of the day; 400 / h is only used for a presumed level, which is an average over the shift: never both. The air of the task's minutes
 * is held against the PEL too, and the higher factor is recommended. Doubt never lowers a factor.
 */
import { type Estimate, exactly, lowerOf, upperOf } from '#core/estimate.ts';
import { type Recorded, recorded, type Term } from '#core/formula.ts';
import { neededFactor } from '#core/protection.ts';
import type { LimitsHere } from '#reference/limits.ts';
import type { Presumption } from '#reference/presumption.ts';
import { type Respirator, respiratorSelection, respirators } from '#reference/respirators.ts';
import type { Measurement } from './measurement.ts';
import { highestPresumedApf, presumedFactor, presumptionEnds } from './presumedFactor.ts';
import { factorFor, higherOf, isDangerous, type NeededFactor } from './protectionFactor.ts';
import type { RespiratorAdvice } from './respirator.ts';

export interface RespiratorQuestion {
  /** null: nothing measured yet. */
  readonly measurement: Measurement | null;
  readonly presumption: Presumption;
  /** Whose limits hold. */
  readonly limits: LimitsHere;
  /** Hours worked, for a presumed level; left out or null: 8 hours or less. */
  readonly hoursWorked?: Term | null;
  /** The air while the task is done; left out: the highest of the measured day's samples. */
  readonly taskUgPerM3?: Term | null;
  /** The firm's own stricter limit. */
  readonly ownPelUgPerM3?: number | null;
  /** Dust that irritates the eyes: full facepieces instead of half masks. */
  readonly eyeIrritation?: boolean;
}

/** The least protective respirator that is enough. */
export function respiratorFor(question: RespiratorQuestion): RespiratorAdvice {
  const { measurement, presumption } = question;
  const pel = pelOf(question);
  const day = dayTerm(measurement);
  const task = question.taskUgPerM3 === undefined ? highestOfSamples(measurement) : question.taskUgPerM3;
  const byDay = day && neededFactor.of({ C: day, A: pel });
  const byTask = task && neededFactor.of({ C: task, A: pel });
  const ended = presumptionEnds(question, lowerOf(pel.estimate));
  const presumed = ended ? null : presumedFactor(presumption, pel, question.hoursWorked ?? null);
  const known = higherOf(factorFor(byDay), factorFor(byTask));
  const found = decided(known, presumed, { day, task, measurement, tierless: presumption.tier === 'none' });
  const beyond = [day, task].some((term) => term !== null && isDangerous(term.estimate)) || found.outOfTable;
  const notNeeded = ended && measurement !== null && factorFor(byDay).apf === null && !beyond;
  const floorApf = beyond ? null : found.floorApf;
  const choices = floorApf === null ? [] : enough(floorApf, question.eyeIrritation === true, ({ apf }) => apf.value);
  return {
    from: notNeeded ? 'notNeededByResult' : from(found, presumed),
    leastApf: beyond || found.unbounded === 'noFactor' ? null : floorApf,
    byDay,
    byTask,
    beyond,
    unbounded: found.unbounded !== 'no',
    floorApf,
    exactlyAt: beyond ? null : found.exactlyAt,
    apfByRule: beyond ? null : found.apfByRule,
    byOwnLimit: isOwn(question) && !crossesRule(question, day, task),
    choices,
    powered: choices.filter(({ supply }) => supply === 'poweredAirPurifying'),
    withEvidence:
      floorApf === null
        ? []
        : enough(floorApf, question.eyeIrritation === true, (one) => one.apfWithEvidence?.value ?? 0).filter(
            ({ id }) => !choices.some((one) => one.id === id),
          ),
    hepaClass: true,
    sources: [
      ...respiratorSelection()
        .filter(({ key }) => key === 'abovePel' || key === 'hepaClass')
        .map(({ source }) => source),
      ...respirators()
        .slice(0, 1)
        .map(({ source }) => source),
      ...(ended ? [] : presumption.sources),
    ],
    because: measurement?.because ?? [],
  };
}

const isOwn = ({ ownPelUgPerM3, limits }: RespiratorQuestion): boolean =>
  typeof ownPelUgPerM3 === 'number' && ownPelUgPerM3 < limits.set.pel.value;

/** The PEL that holds: the rule's, or the firm's own where that is stricter. Own limits never relax. */
function pelOf(question: RespiratorQuestion): Recorded {
  const { limits, ownPelUgPerM3 } = question;
  const own = isOwn(question) ? ownPelUgPerM3 : null;
  return typeof own === 'number'
    ? recorded('ownLimit', 'µg/m³', exactly(own), [])
    : recorded('pel', 'µg/m³', exactly(limits.set.pel.value), [`limit:${limits.set.id}`]);
}

function crossesRule({ limits }: RespiratorQuestion, ...terms: readonly (Term | null)[]): boolean {
  const A = recorded('pel', 'µg/m³', exactly(limits.set.pel.value), [`limit:${limits.set.id}`]);
  return terms.some((C) => C !== null && factorFor(neededFactor.of({ C, A })).apf !== null);
}

/** The protective 8-hour average. */
function dayTerm(measurement: Measurement | null): Term | null {
  if (!measurement?.twa8UgPerM3) return null;
  return (
    measurement.finding?.protectiveTwa8 ?? recorded('twa8', 'µg/m³', measurement.twa8UgPerM3, [...measurement.because])
  );
}

/** The highest air that any sample of the day found: the concentration while that task was done. */
function highestOfSamples(measurement: Measurement | null): Term | null {
  const terms = (measurement?.finding?.samples ?? []).flatMap(({ protectiveConcentration }) =>
    protectiveConcentration ? [protectiveConcentration] : [],
  );
  return terms.reduce<Term | null>((top, one) => (top === null || isHigher(one, top) ? one : top), null);
}

function isHigher({ estimate: a }: Term, { estimate: b }: Term): boolean {
  const [x, y] = [upperOf(a), upperOf(b)];
  return x === y ? lowerOf(a) > lowerOf(b) : x > y;
}

const enough = (floor: number, forEyes: boolean, factorOf: (one: Respirator) => number): Respirator[] =>
  respirators().filter(
    (one) => factorOf(one) >= floor && !(forEyes && (one.facepiece === 'half' || one.facepiece === 'quarter')),
  );

interface Decided {
  readonly floorApf: number | null;
  /** `noFactor`: the rule gives no bound, so that none can be named; `tier`: the factor stands on a tier. */
  readonly unbounded: 'no' | 'tier' | 'noFactor';
  readonly exactlyAt: RespiratorAdvice['exactlyAt'];
  readonly apfByRule: number | null;
  readonly outOfTable: boolean;
  readonly byResult: boolean;
}

interface Around {
  readonly day: Term | null;
  readonly task: Term | null;
  readonly measurement: Measurement | null;
  readonly tierless: boolean;
}

const isOpen = (estimate: Estimate | null | undefined): boolean => estimate?.kind === 'atLeast';

/** The higher of what the figures need and of what is presumed. A figure without an upper bound stands on the tier, or on the highest. */
function decided(known: NeededFactor, presumed: ReturnType<typeof presumedFactor>, around: Around): Decided {
  const { day, task, measurement, tierless } = around;
  const open = isOpen(day?.estimate) || isOpen(task?.estimate);
  const highest =
    open && tierless && measurement?.band !== 'open' && measurement !== null ? highestPresumedApf() : null;
  const fromTier = presumed?.apf ?? highest;
  const floorApf = Math.max(known.apf ?? 0, fromTier ?? 0) || null;
  const byResult = (known.apf ?? 0) > (fromTier ?? 0);
  const noFactor = presumed !== null && !presumed.bounded && (measurement === null || open || day === null);
  return {
    floorApf,
    unbounded: noFactor ? 'noFactor' : open ? 'tier' : 'no',
    exactlyAt: byResult || floorApf === null ? known.exactlyAt : null,
    apfByRule: byResult ? known.apfByRule : null,
    outOfTable: known.outOfTable,
    byResult,
  };
}

const from = (found: Decided, presumed: ReturnType<typeof presumedFactor>): RespiratorAdvice['from'] =>
  found.byResult || presumed === null ? 'result' : 'presumed';
