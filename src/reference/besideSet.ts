/** Limits that are shown beside the rule and judge nothing: other rules, advice. Exactly what was read of each, with its mark. */
import { z } from 'zod';
import type { Limit } from '#core/comparison.ts';
import { datesProblem, type Period } from './dated.ts';
import { day, quantity, type ReadSource, source } from './source.ts';

/** From when a value holds may not be known. */
const openPeriod = { from: day.nullable(), to: day.nullable() };
const first = '0001-01-01';

const besideLimit = z.strictObject({
  which: z.enum(['actionLevel', 'pel']),
  paragraph: z.string().nullable(),
  unit: z.literal('µg/m³'),
  reachedWhen: z.enum(['atOrAbove', 'above']),
  twaMin: quantity('min'),
  values: z
    .array(z.strictObject({ ...openPeriod, value: z.number().positive(), source }))
    .superRefine((values, context) => {
      const problem = datesProblem(values.map(dated));
      if (problem) context.addIssue({ code: 'custom', message: problem });
    }),
});

const dated = ({ from, to }: { readonly from: string | null; readonly to: string | null }): Period => ({
  from: from ?? first,
  to,
});

/** How another rule differs from the construction rule, each as read; the sentences stand in words. */
export const differenceKeys = [
  'notConstruction',
  'sevenHours',
  'noTriggerTasks',
  'bandBelowPel',
  'noticeFifteen',
  'noticeExceeded',
  'accuracyTwenty',
  'retentionForty',
] as const;

export const besideSetFile = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  jurisdiction: z.string(),
  document: z.string(),
  substance: z.literal('lead'),
  kind: z.enum(['otherRule', 'advice']),
  effective: z.strictObject(openPeriod),
  limits: z.array(besideLimit).min(1),
  differs: z.array(z.strictObject({ key: z.enum(differenceKeys), source })),
});
export type BesideSetFile = z.infer<typeof besideSetFile>;

/** One limit as it stands on a day, ready for a comparison. */
export interface BesideLimit extends Limit {
  readonly which: 'actionLevel' | 'pel';
  readonly paragraph: string | null;
  readonly from: string | null;
  readonly to: string | null;
  readonly source: ReadSource;
}

/** The limits of a set that are known for a day; none where its values ended before, or begin later. */
export function besideLimitsOn(on: string, { limits }: Pick<BesideSetFile, 'limits'>): readonly BesideLimit[] {
  return limits.flatMap(({ which, paragraph, unit, reachedWhen, values }) => {
    const value = values.find((one) => dated(one).from <= on && (one.to === null || on <= one.to));
    return value === undefined ? [] : [{ id: which, which, paragraph, unit, reachedWhen, ...value }];
  });
}
