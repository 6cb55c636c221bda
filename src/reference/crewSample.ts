/** How sure to be that one of the most exposed is among those measured, where nobody can say who they are. */
import { z } from 'zod';
import crewSampleFile from '#shared/strategy/crewSample.json';
import { period } from './dated.ts';
import { quantity, readOnce } from './source.ts';

export const crewSampleRuleFile = z.strictObject({
  effective: period,
  topShare: quantity('%').describe('The most exposed part of the crew'),
  confidence: quantity('%').describe('Chance that at least one of them is among those measured'),
  everyoneUnder: quantity('').describe('Smaller crews are measured whole'),
});
export type CrewSampleRule = z.infer<typeof crewSampleRuleFile>;

const read = readOnce(crewSampleRuleFile, crewSampleFile);

export const crewSampleRule = (): CrewSampleRule => read();
