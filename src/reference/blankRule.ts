/** How many field blanks go with a set of samples. */
import { z } from 'zod';
import blankFile from '#shared/blanks/fieldBlanks.json';
import { period } from './dated.ts';
import { quantity, readOnce, source } from './source.ts';

export const blankRuleFile = z.strictObject({
  effective: period,
  least: quantity(''),
  share: quantity('%').describe('Of the samples, rounded up'),
  openForSeconds: z.strictObject({ text: z.string(), source }),
  positions: z.array(z.strictObject({ key: z.string(), says: z.string(), source })).min(2),
});
export type BlankRule = z.infer<typeof blankRuleFile>;

const read = readOnce(blankRuleFile, blankFile);

export const blankRule = (): BlankRule => read();
