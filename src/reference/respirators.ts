/** Assigned protection factors: 29 CFR 1910.134 Table 1. They hold only with a full programme, fit test and training. */
import { z } from 'zod';
import respiratorFile from '#shared/respirators/apf.json';
import { period } from './dated.ts';
import { quantity, readOnce, source } from './source.ts';

const respirator = z.strictObject({
  id: z.string(),
  supply: z.enum([
    'airPurifying',
    'poweredAirPurifying',
    'suppliedDemand',
    'suppliedContinuous',
    'suppliedPressureDemand',
    'scbaDemand',
    'scbaPressureDemand',
  ]),
  facepiece: z.enum(['quarter', 'half', 'full', 'helmetHood', 'looseFitting']),
  apf: quantity(''),
  apfWithEvidence: quantity('').nullable().describe("With the maker's evidence"),
  source,
});
export type Respirator = z.infer<typeof respirator>;

export const respiratorsFile = z.strictObject({
  effective: period,
  immediatelyDangerous: quantity('µg/m³').describe('Above this no maximum use concentration holds'),
  respirators: z.array(respirator),
});

const read = readOnce(respiratorsFile, respiratorFile);

/** Rows of the table, the least protective first. */
export const respirators = (): readonly Respirator[] => read().respirators;
export const immediatelyDangerous = () => read().immediatelyDangerous;
