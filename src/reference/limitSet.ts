/** One limit set of shared/limits: the limits with their signs, and, where the whole rule is held, what it asks for. */
import { z } from 'zod';
import type { Limit } from '#core/comparison.ts';
import { type DatedValue, datedValues, period, valueOn } from './dated.ts';
import { quantity, source } from './source.ts';

const datedLimit = z.strictObject({
  paragraph: z.string(),
  unit: z.literal('µg/m³'),
  reachedWhen: z.enum(['atOrAbove', 'above']),
  twaMin: quantity('min'),
  values: datedValues,
});

/** Above `aboveHours` of work in the day the average over the shift may reach no more than dose / hours worked. */
const extendedShift = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('doseOverHours'),
    paragraph: z.string(),
    dose: quantity('µg·h/m³'),
    aboveHours: quantity('h'),
    adjustsActionLevel: z.literal(false),
    source,
  }),
  z.strictObject({ kind: z.literal('none'), source }),
]);

const edge = z.enum(['actionLevel', 'pel']);
const runOfMeasurements = z.strictObject({
  paragraph: z.string(),
  consecutive: quantity(''),
  daysApart: quantity('d'),
  each: z.enum(['belowActionLevel', 'atOrBelowPel']),
});

export const duties = z.strictObject({
  bands: z.array(
    z.strictObject({
      from: edge,
      fromIncluded: z.boolean(),
      to: edge.nullable(),
      toIncluded: z.boolean(),
      everyMonths: quantity('months'),
      paragraph: z.string(),
    }),
  ),
  stop: runOfMeasurements,
  stepDown: runOfMeasurements,
  notice: z.strictObject({
    paragraph: z.string(),
    days: quantity('d'),
    dayType: z.literal('working'),
    dayTypeSource: source,
    clock: z.literal('receiptOfResults'),
    statementWhen: z.literal('atOrAbovePel'),
  }),
  historical: z.strictObject({ paragraph: z.string(), months: quantity('months') }),
  accuracy: z.strictObject({ paragraph: z.string(), pct: quantity('%'), confidencePct: quantity('%'), from: edge }),
  retention: z.strictObject({ paragraph: z.string(), years: quantity('years') }),
});

/** A limit of its own that one task has for some years. It is shown with its end date; the set's own limit judges. */
const exception = z.strictObject({
  key: z.enum(['abrasiveBlasting']),
  taskIds: z.array(z.string()).min(1),
  which: edge,
  paragraph: z.string(),
  unit: z.literal('µg/m³'),
  values: datedValues,
});
/** Hours a day that a task may take, in words of its own. */
const workLimit = z.strictObject({
  key: z.enum(['dryBlastingBeforeAssessment']),
  taskIds: z.array(z.string()).min(1),
  unit: z.literal('h'),
  values: datedValues,
});

export const limitSetFile = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  jurisdiction: z.string(),
  document: z.string(),
  substance: z.literal('lead'),
  textHeld: z.string(),
  heldComplete: z.boolean(),
  effective: period,
  amendments: z.array(z.strictObject({ on: z.string(), what: z.string(), source })),
  actionLevel: datedLimit,
  pel: datedLimit,
  exceptions: z.array(exception).default([]),
  workLimits: z.array(workLimit).default([]),
  extendedShift,
  duties: duties.nullable(),
});
export type LimitSetFile = z.infer<typeof limitSetFile>;

/** A limit as it stood on one day. */
export interface SetLimit extends Limit, Pick<DatedValue, 'from' | 'to' | 'source'> {
  readonly paragraph: string;
  readonly twaMin: LimitSetFile['pel']['twaMin'];
}

/** A limit set as it stood on one day. `duties` is null where the rule is not held complete: figures only. */
export interface LimitSet extends Omit<LimitSetFile, 'actionLevel' | 'pel'> {
  readonly actionLevel: SetLimit;
  readonly pel: SetLimit;
}

function limitOn(on: string, id: string, dated: LimitSetFile['pel']): SetLimit {
  const { value, from, to, source: cited } = valueOn(on, dated.values);
  const { unit, reachedWhen, paragraph, twaMin } = dated;
  return { id, value, unit, reachedWhen, paragraph, twaMin, from, to, source: cited };
}

/** The set as it stood on a day. */
export const setOn = (on: string, file: LimitSetFile): LimitSet => ({
  ...file,
  actionLevel: limitOn(on, 'actionLevel', file.actionLevel),
  pel: limitOn(on, 'pel', file.pel),
});
