/** What the rule asks for once its trigger is met: the duties of one limit set, from shared/duties. The only door to that folder. */
import { z } from 'zod';
import type { Limit } from '#core/comparison.ts';
import federalDuties from '#shared/duties/us-fed-constr-lead.json';
import { holdsOn, period } from './dated.ts';
import { quantity, readOnce, source } from './source.ts';

/** What must be so for a duty to appear. How each is found stands in the findings. */
export const dutyTriggers = [
  'notAssessed',
  'positiveNotMeasured',
  'provesNothing',
  'sixMonthly',
  'quarterly',
  'change',
  'monitoring',
  'result',
  'resultAtOrAbovePel',
  'negativeNotWritten',
  'determinationDiffers',
  'abovePel',
  'abovePelMeasured',
  'abovePelNotAboveDaily',
  'aboveDaily',
  'leadWork',
  'actionLevelAnyDay',
  'afterBloodTests',
  'moreThanThirtyDays',
  'measured',
  'ownWorker',
  'asked',
] as const;
export type DutyTrigger = (typeof dutyTriggers)[number];

const kind = z.string().regex(/^[a-z][A-Za-z]{2,29}$/);
const said = z.strictObject({ text: z.string().min(3), source });

/**
 * `once`: done is done. `continuous`: what was seen to counts until the next day of work. `yearly`: owed again some months after it
 * was done. `untilItFalls`: it goes when its trigger does, by a measurement, a notice or a determination.
 */
const dutyRow = z.strictObject({
  kind,
  document: z.string().min(3).describe('The document whose paragraph it is'),
  paragraph: z.string().regex(/^(\([a-zA-Z0-9]+\))+$/),
  trigger: z.enum(dutyTriggers),
  per: z.enum(['site', 'siteGroup', 'worker', 'course', 'measurement', 'request']).describe('What it is about'),
  when: z.enum([
    'by',
    'asSoonAsPossible',
    'beforeWorkStarts',
    'beforeOrOnFirstDayAgain',
    'whileItLasts',
    'atTheNextShift',
  ]),
  lasts: z.enum(['once', 'continuous', 'yearly', 'untilItFalls']),
  decidedBy: z.enum(['firm', 'competentPerson', 'physician', 'worker', 'laboratory']).describe('Whose decision it is'),
  fulfilledBy: z.enum(['notice', 'measurement', 'determination', 'note', 'respirator', 'sign', 'roster', 'jobStart']),
  presumed: z
    .strictObject({ paragraph: z.string().nullable().describe('null: that of the duty itself'), source })
    .nullable()
    .describe('Asked on a presumption too, and by what'),
  repeats: z.strictObject({ after: kind.describe('The duty that it follows'), months: quantity('months') }).nullable(),
  effective: period.exactOptional().describe('Where it differs from that of the file'),
  source,
});
export type DutyRow = z.infer<typeof dutyRow>;

export const dutiesFile = z
  .strictObject({
    limitSetId: z.string().regex(/^[a-z0-9-]+$/),
    effective: period,
    cleanDailyAbove: z.strictObject({
      paragraph: z.string(),
      value: z.number().positive(),
      unit: z.literal('µg/m³'),
      reachedWhen: z.enum(['atOrAbove', 'above']),
      source,
      presumed: said,
    }),
    surveillanceAfter: z.strictObject({ paragraph: z.string(), moreThan: quantity('d'), within: quantity('months') }),
    bloodTestsEvery: z.strictObject({
      paragraph: z.string(),
      first: quantity('months'),
      forFirst: quantity('months'),
      afterwards: quantity('months'),
    }),
    bloodResultsWithin: z.strictObject({ paragraph: z.string(), days: quantity('d') }),
    accessWithin: z.strictObject({ paragraph: z.string(), days: quantity('d'), dayType: said }),
    keepYears: z.strictObject({ paragraph: z.string(), years: quantity('years') }),
    quietAfter: quantity('d').describe('Days without work at a site after which a line speaks of the next time'),
    duties: z.array(dutyRow).min(1),
  })
  .superRefine(({ duties }, context) => {
    const kinds = new Set(duties.map((row) => row.kind));
    if (kinds.size !== duties.length) context.addIssue({ code: 'custom', message: 'a kind stands twice' });
    for (const { kind: own, repeats, lasts } of duties) {
      if (repeats && !kinds.has(repeats.after))
        context.addIssue({ code: 'custom', message: `${own} follows ${repeats.after}, which is no duty` });
      if ((lasts === 'yearly') !== (repeats !== null))
        context.addIssue({
          code: 'custom',
          message: `${own} is yearly without what it follows, or the other way round`,
        });
    }
  });
export type DutiesFile = z.infer<typeof dutiesFile>;

const read = readOnce(dutiesFile, federalDuties);

/** Every duty table held. */
export const allDutyTables = (): readonly DutiesFile[] => [read()];

/** The duties of a limit set, or null where none are held for it. */
export const dutiesOfSet = (limitSetId: string): DutiesFile | null =>
  allDutyTables().find((table) => table.limitSetId === limitSetId) ?? null;

/** The duties of a table that hold on a day; before the first day of a row it is not asked. */
export const rowsOn = (on: string, table: DutiesFile): readonly DutyRow[] =>
  table.duties.filter(({ effective }) => holdsOn(on, effective ?? table.effective));

/** The level above which protective clothing is cleaned daily, ready for a comparison; (g)(2)(i). */
export const dailyCleaningLimit = ({ cleanDailyAbove: { value, unit, reachedWhen } }: DutiesFile): Limit => ({
  id: 'cleanDailyAbove',
  value,
  unit,
  reachedWhen,
});
