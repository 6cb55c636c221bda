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

/** When one is asked for, and how it is chosen: 29 CFR 1926.62(f). */
const selection = z.strictObject({
  key: z.enum(['abovePel', 'controlsNotEnough', 'onWish', 'interim', 'hepaClass', 'poweredOnWish', 'eyeIrritation']),
  paragraph: z.string(),
  source,
});
/** What must be there for a factor to hold. */
const condition = z.strictObject({ key: z.enum(['programme', 'fitTest', 'training', 'medicalEvaluation']), source });
export type RespiratorSelection = z.infer<typeof selection>;
export type RespiratorCondition = z.infer<typeof condition>;

export const respiratorsFile = z.strictObject({
  effective: period,
  selection: z.array(selection),
  conditions: z.array(condition),
  immediatelyDangerous: quantity('µg/m³').describe('Above this no maximum use concentration holds'),
  respirators: z.array(respirator),
});

const read = readOnce(respiratorsFile, respiratorFile);

/** Rows of the table, the least protective first. */
export const respirators = (): readonly Respirator[] => read().respirators;
export const immediatelyDangerous = () => read().immediatelyDangerous;
export const respiratorSelection = (): readonly RespiratorSelection[] => read().selection;
export const respiratorConditions = (): readonly RespiratorCondition[] => read().conditions;
