/** Every formula by its name: for the page that shows how the arithmetic was checked, and for the edition printed on papers. */
import { asFoundFlow } from './asFound.ts';
import { blankCorrectedMass } from './blankCorrectedMass.ts';
import { blanksNeeded } from './blanksNeeded.ts';
import { certificateFlow } from './certificate.ts';
import { concentration, volumeNeeded } from './concentration.ts';
import { chanceOfOneMostExposed, mostExposedOfCrew } from './crewSample.ts';
import { filterLoading } from './filterLoading.ts';
import { averageFlow, flowChange, lowerFlow } from './flow.ts';
import type { FormulaText } from './formula.ts';
import { geometricSd } from './geometricSd.ts';
import { kelvin, rotameterFlow } from './meterCorrection.ts';
import { maximumUseConcentration, neededFactor } from './protection.ts';
import { meanOfReadings, readingHalfWidth, readingMidpoint } from './reading.ts';
import { errorOfConsecutive, lowerConfidence, saeFromVariation, shareOfLimit, upperConfidence } from './saeLimits.ts';
import { boundOfMinutes, dustOnFilter, flowForLevel, minutesForLevel, reportingLimitForLevel } from './sampleAhead.ts';
import { sampledVolume } from './sampledVolume.ts';
import { dayBound, sampleShareOfTwa } from './sampleShareOfTwa.ts';
import { stationPressure } from './stationPressure.ts';
import { stillShown } from './stillShown.ts';
import { allowableAverage, averageToReach, hoursWorked, shiftAverage, twa8 } from './twa.ts';
import { wornTime } from './wornTime.ts';

/** A formula taken from the list: what its inputs are is known only to whoever names it. */
export interface ListedFormula extends FormulaText {
  readonly compute: (inputs: never) => number;
}

const all: readonly ListedFormula[] = [
  readingMidpoint,
  readingHalfWidth,
  meanOfReadings,
  kelvin,
  rotameterFlow,
  certificateFlow,
  stationPressure,
  asFoundFlow,
  averageFlow,
  lowerFlow,
  flowChange,
  wornTime,
  sampledVolume,
  blankCorrectedMass,
  concentration,
  stillShown,
  volumeNeeded,
  twa8,
  shiftAverage,
  hoursWorked,
  allowableAverage,
  averageToReach,
  shareOfLimit,
  lowerConfidence,
  upperConfidence,
  errorOfConsecutive,
  saeFromVariation,
  sampleShareOfTwa,
  dayBound,
  boundOfMinutes,
  minutesForLevel,
  reportingLimitForLevel,
  flowForLevel,
  filterLoading,
  dustOnFilter,
  geometricSd,
  blanksNeeded,
  maximumUseConcentration,
  neededFactor,
  mostExposedOfCrew,
  chanceOfOneMostExposed,
];

export const formulary: ReadonlyMap<string, ListedFormula> = new Map(all.map((one) => [one.name, one]));

/**
 * Computes a formula of the list from numbers by symbol: for published examples, whose inputs are data. Throws when an input is
 * missing, extra, or a list where a number is due.
 */
export function computeByName(name: string, inputs: Readonly<Record<string, number | readonly number[]>>): number {
  const found = formulary.get(name);
  if (!found) throw new Error(`no formula named ${name}`);
  const symbols = Object.keys(found.inputs);
  const given = Object.keys(inputs);
  if (symbols.length !== given.length) throw new Error(`${name} takes ${symbols.join(', ')}, not ${given.join(', ')}`);
  for (const [symbol, input] of Object.entries(found.inputs)) {
    const value = inputs[symbol];
    if (value === undefined || Array.isArray(value) !== (input.list === true)) throw new Error(`${name}: ${symbol}`);
  }
  return (found.compute as (numbers: typeof inputs) => number)(inputs);
}
