/** What others measured at such tasks: planning hints that prove nothing. */
import { z } from 'zod';
import publishedFile from '#shared/tasks/publishedExposures.json';
import { period } from './dated.ts';
import { isCitable, readOnce, source } from './source.ts';

const unit = z.literal('µg/m³');

/** One figure of a publication. `text`: only words were printed, no number. A range with no low end began below detection. */
const figure = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.enum(['mean', 'meanUnder', 'geometricMean', 'maximum']),
    value: z.number().positive(),
    unit,
  }),
  z
    .strictObject({ kind: z.literal('range'), low: z.number().nullable(), high: z.number().positive(), unit })
    .refine(({ low, high }) => low === null || low <= high, 'the low end is above the high end'),
  z.strictObject({ kind: z.literal('text'), key: z.enum(['oftenHigh']) }),
]);
export type PublishedFigure = z.infer<typeof figure>;

const exposure = z
  .strictObject({
    id: z.string().regex(/^E\d[a-z]?\d?$/),
    taskIds: z.array(z.string()).min(1).describe('Everyday tasks of shared/tasks/everyday.json'),
    work: z.string().min(3).describe('The work, in our words'),
    control: z.enum(['none', 'water', 'dustBag', 'hepaExhaust', 'notStated']),
    setting: z.enum(['indoors', 'outdoors', 'notStated']),
    lasting: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('fullShift') }),
      z.strictObject({
        kind: z.literal('taskSample'),
        value: z.number().positive().nullable(),
        unit: z.literal('min'),
      }),
      z.strictObject({ kind: z.literal('notStated') }),
    ]),
    samples: z
      .strictObject({
        count: z.number().int().positive().nullable(),
        ofCount: z.number().int().positive().nullable(),
        unit: z.literal(''),
      })
      .describe('Of this row, and of the whole study; null where it was not printed'),
    figures: z.array(figure).min(1),
    paintLead: z.string().nullable().describe('Lead in the paint as printed'),
    remark: z.string().nullable(),
    source,
  })
  .refine((one) => isCitable(one.source), 'only what was read is a hint');
export type PublishedExposure = z.infer<typeof exposure>;

export const publishedExposuresFile = z.strictObject({
  effective: period,
  leftOut: z
    .array(z.strictObject({ id: z.string(), why: z.string() }))
    .describe('Rows of the reference that are no hints'),
  exposures: z.array(exposure).min(1),
});

const read = readOnce(publishedExposuresFile, publishedFile);

export const publishedExposures = (): readonly PublishedExposure[] => read().exposures;
