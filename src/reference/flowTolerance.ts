/** How far the flow may change between before and after: a setting, because published practice disagrees. */
import { z } from 'zod';
import toleranceFile from '#shared/flow/tolerance.json';
import { period } from './dated.ts';
import { quantity, readOnce, source } from './source.ts';

export const flowToleranceFile = z.strictObject({
  effective: period,
  denominator: z.literal('flowBefore'),
  averageUpTo: quantity('%').describe('To here the average flow stands'),
  flaggedUpTo: quantity('%').describe(
    'To here it stands flagged, and the lower flow judges where the two straddle a limit',
  ),
  halfWidthUpTo: quantity('%').describe('A float that bounces more than this is told at once'),
  positions: z.array(z.strictObject({ key: z.string(), says: z.string(), source })).min(2),
});
export type FlowTolerance = z.infer<typeof flowToleranceFile>;

const read = readOnce(flowToleranceFile, toleranceFile);

export const flowTolerance = (): FlowTolerance => read();
