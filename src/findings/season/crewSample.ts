/** How many of a crew to measure, so that with nine chances in ten at least one of the most exposed tenth is among them. */
import { chanceOfOneMostExposed, fewestToDraw, mostExposedOfCrew } from '#core/crewSample.ts';
import { exactly } from '#core/estimate.ts';
import { recorded, type Working } from '#core/formula.ts';
import { crewSampleRule } from '#reference/crewSample.ts';

export interface CrewSample {
  readonly crewCount: number;
  readonly sampleCount: number;
  readonly everyone: boolean;
  /** The chance with the numbers in it; null for a small crew, which is measured whole. */
  readonly working: Working | null;
  /** That at least one of the most exposed is among them, in percent. */
  readonly chancePct: number;
}

/** `crewCount`: a whole number of workers, 0 or more. Throws (a bug) on anything else. */
export function crewSample(crewCount: number): CrewSample {
  if (!Number.isInteger(crewCount) || crewCount < 0) throw new Error(`no crew of ${crewCount}`);
  const { everyoneUnder, topShare, confidence } = crewSampleRule();
  if (crewCount < everyoneUnder.value)
    return { crewCount, sampleCount: crewCount, everyone: true, working: null, chancePct: 100 };
  const sampleCount = fewestToDraw(crewCount, topShare.value, confidence.value);
  const N = recorded('crew', '', exactly(crewCount), []);
  const n = recorded('drawn', '', exactly(sampleCount), []);
  const N0 = mostExposedOfCrew.of({ N, p: recorded('topShare', '%', exactly(topShare.value), []) });
  const working = chanceOfOneMostExposed.of({ N, N0, n });
  const chancePct = chanceOfOneMostExposed.compute({
    N: crewCount,
    N0: (crewCount * topShare.value) / 100,
    n: sampleCount,
  });
  return { crewCount, sampleCount, everyone: sampleCount === crewCount, working, chancePct };
}
