/** The struck-through correction that paper had: names the fact and field, the old value, the new one, and (in the envelope) why. */
import { z } from 'zod';
import { factId } from '../common.ts';

const path = z
  .string()
  .regex(/^(\/[^/]+)+$/)
  .describe('JSON pointer into the body, or /happened/at');

export const correctionFacts = {
  'valueCorrected.v1': z.looseObject({
    replaces: factId,
    path,
    old: z.json(),
    new: z.json(),
    supersedes: factId.nullable().describe('An earlier correction of the same field that this one knew of'),
  }),
  'correctionSettled.v1': z
    .looseObject({
      replaces: factId,
      path,
      chosen: factId.describe('The correction that stands; the replaced fact itself when its first value stands'),
      over: z
        .array(factId)
        .optional()
        .describe('The candidates that this one knew of. Without it: all that were recorded before'),
    })
    .describe('A person settled a conflict'),
} as const;
