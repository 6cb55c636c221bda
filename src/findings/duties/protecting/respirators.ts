/**
 * Which respirator is enough, 29 CFR 1926.62(f) and 1910.134 Table 1. The 8-hour average is held against the PEL itself at any length
 * of the day; 400 / h is only used for a presumed level, which is an average over the shift: never both. The air of the task's minutes
 * is held against the PEL too, and the higher factor is recommended. Doubt never lowers a factor.
 */
import { exactly, lowerOf, upperOf } from '#core/estimate.ts';
import { type Recorded, recorded, type Term } from '#core/formula.ts';
import { neededFactor } from '#core/protection.ts';
import type { LimitsHere } from '#reference/limits.ts';
import type { Presumption } from '#reference/presumption.ts';
import { respiratorSelection, respirators } from '#reference/respirators.ts';
import type { ReadSource } from '#reference/source.ts';
import type { Measurement } from '../measuring/measurement.ts';
import { decidedFactor } from './decidedFactor.ts';
import { isOwnJudging, judgingPel } from './judgingPel.ts';
import { presumedFactor, presumptionEnds } from './presumedFactor.ts';
import { factorFor, higherOf, isDangerous } from './protectionFactor.ts';
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
  const { measurement, presumption, limits } = question;
  const A = judgingPel(question);
  const figures = figuresOf(question, A);
  const { day, task, byDay, byTask } = figures;
  const ended = presumptionEnds(question);
  const presumed = ended ? null : presumedFactor(presumption, A, limits, question.hoursWorked ?? null);
  const known = higherOf(factorFor(byDay), factorFor(byTask));
  const found = decidedFactor({ known, presumed, day, task, measurement, tier: presumption.tier });
  const beyond = known.outOfTable || figures.dangerous;
  const kept = beyond ? beyondAll : found;
  const notNeeded = !beyond && ended && factorFor(byDay).apf === null && measurement?.provesNotAbovePel === true;
  return {
    from: notNeeded ? 'notNeededByResult' : found.byResult ? 'result' : 'presumed',
    leastApf: found.unbounded === 'noFactor' ? null : kept.floorApf,
    byDay,
    byTask,
    presumedWorking: presumed?.working ?? null,
    beyond,
    unbounded: found.unbounded !== 'no',
    floorApf: kept.floorApf,
    exactlyAt: kept.exactlyAt,
    apfByRule: kept.apfByRule,
    byOwnLimit: ended && kept.floorApf !== null && isOwnJudging(question) && !crossesRule(question, day, task),
    ...choicesFor(kept.floorApf, question.eyeIrritation === true),
    hepaClass: true,
    sources: [...sourcesOfChoice(), ...(ended ? [] : presumption.sources)],
    because: measurement?.because ?? [],
  };
}

const beyondAll = { floorApf: null, exactlyAt: null, apfByRule: null } as const;

interface Figures {
  readonly day: Term | null;
  readonly task: Term | null;
  readonly byDay: Term | null;
  readonly byTask: Term | null;
  readonly dangerous: boolean;
}

function figuresOf({ measurement, taskUgPerM3 }: RespiratorQuestion, A: Recorded): Figures {
  const day = dayTerm(measurement);
  const task = taskUgPerM3 === undefined ? highestOfSamples(measurement) : taskUgPerM3;
  return {
    day,
    task,
    byDay: day && neededFactor.of({ C: day, A }),
    byTask: task && neededFactor.of({ C: task, A }),
    dangerous: [day, task].some((term) => term !== null && isDangerous(term.estimate)),
  };
}

/** Respirators that reach the floor; of helmets and hoods those that do so only with the maker's evidence stand apart. */
export function choicesFor(
  floorApf: number | null,
  eyeIrritation: boolean,
): Pick<RespiratorAdvice, 'choices' | 'powered' | 'withEvidence'> {
  if (floorApf === null) return { choices: [], powered: [], withEvidence: [] };
  const fit = respirators().filter(
    ({ facepiece }) => !(eyeIrritation && (facepiece === 'half' || facepiece === 'quarter')),
  );
  const choices = fit.filter(({ apf }) => apf.value >= floorApf);
  return {
    choices,
    powered: choices.filter(({ supply }) => supply === 'poweredAirPurifying'),
    withEvidence: fit.filter(
      ({ apf, apfWithEvidence }) => apf.value < floorApf && (apfWithEvidence?.value ?? 0) >= floorApf,
    ),
  };
}

const sourcesOfChoice = (): ReadSource[] => [
  ...respiratorSelection().flatMap(({ key, source }) => (key === 'abovePel' || key === 'hepaClass' ? [source] : [])),
  ...respirators()
    .slice(0, 1)
    .map(({ source }) => source),
];

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
