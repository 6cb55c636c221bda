/** The shape of shared/blanks. */
import { z } from 'zod';
import { period } from './dated.ts';
import { quantity, source } from './source.ts';

export const blankRuleFile = z.strictObject({
  effective: period,
  least: quantity(''),
  share: quantity('%').describe('Of the samples, rounded up'),
  openForSeconds: z.strictObject({ text: z.string(), source }),
  positions: z.array(z.strictObject({ key: z.string(), says: z.string(), source })).min(2),
});
export type BlankRule = z.infer<typeof blankRuleFile>;
