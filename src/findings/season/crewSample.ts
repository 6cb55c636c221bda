/** How many of a crew to measure, so that with nine chances in ten at least one of the most exposed tenth is among them. */
import type { Working } from '#core/formula.ts';

export interface CrewSample {
  readonly crewCount: number;
  readonly sampleCount: number;
  readonly everyone: boolean;
  /** With the numbers in it; null where everyone is measured because the crew is small. */
  readonly working: Working | null;
  /** Chance that at least one of the top share is among them, in percent. */
  readonly chancePct: number;
}

export function crewSample(crewCount: number): CrewSample {
  return { crewCount, sampleCount: crewCount, everyone: true, working: null, chancePct: 100 };
}
