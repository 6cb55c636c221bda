/**
 * What is to be measured, by whom, on which days; who wears what tomorrow; which labels were made. Written by the office ahead of the
 * season and by the supervisor on the evening before, and asked again in the morning. A plan proves nothing and ends no duty.
 */
import { z } from 'zod';
import { day, factId, note, recordId, shiftId, text } from '../common.ts';

const knew = z.array(factId).max(50).optional().describe('Earlier statements that were known: this one follows them');

export const seasonFacts = {
  'measurementPlanned.v1': z
    .looseObject({
      planId: recordId,
      jobClassificationId: recordId.nullable(),
      setting: z.enum(['indoors', 'outdoors']),
      taskIds: z.array(text).min(1).max(12).describe('Everyday task names of shared/tasks, as ids'),
      siteId: recordId.nullable().describe('null = wherever this work is done next'),
      season: text.nullable().describe("The firm's own word for it, e.g. winter 2026"),
      crewCount: z.number().int().min(1).max(5000).describe('How many workers do this work'),
      choice: z
        .enum(['all', 'random', 'highest'])
        .describe('Everyone; drawn by lot from a larger crew; or the worker expected to breathe most, with the reason'),
      reason: note.nullable().describe('Why this worker is expected to breathe most; asked for with that choice'),
      slots: z
        .array(z.looseObject({ workerId: recordId, workOn: day.nullable().describe('null = the day is still open') }))
        .min(1)
        .max(200)
        .describe('One for each worker and day'),
      methodId: text.nullable(),
      reportingLimitUg: z.number().positive().nullable(),
      flowLPerMin: z.number().positive().max(10).nullable(),
      cassettesCount: z.number().int().min(1).max(12).describe('A worker and day, one after the other'),
      remark: note.nullable(),
      knew,
    })
    .describe('Who of a task group is to be measured, and on how many days'),
  'plannedDayMissed.v1': z
    .looseObject({
      planId: recordId,
      workerId: recordId,
      workOn: day,
      because: z.enum(['declined', 'rainedOff', 'otherWork', 'notAtWork', 'gear', 'other']),
      remark: note.nullable(),
    })
    .describe('A planned measurement did not come about; it is still to do'),
  'planDropped.v1': z
    .looseObject({ planId: recordId, knew })
    .describe('The plan is given up; the envelope says why. What the rule asks stays'),
  'dayPrepared.v1': z
    .looseObject({
      shiftId: shiftId.describe('The site and the day, which need not be opened yet'),
      asked: z.enum(['evening', 'morning']),
      wearers: z
        .array(
          z.looseObject({
            workerId: recordId,
            planId: recordId.nullable(),
            taskIds: z.array(text).min(1).max(12),
            jobClassificationId: recordId.nullable(),
            pumpId: recordId.nullable(),
            lotId: recordId.nullable(),
          }),
        )
        .max(60),
      sparePumpIds: z.array(recordId).max(20),
      spareCassettesCount: z.number().int().min(0).max(200),
      chargedById: recordId.nullable().describe('Who charges the pumps'),
      remark: note.nullable(),
      knew,
    })
    .describe('Who wears which pump and cassette on a day: said the evening before, asked again in the morning'),
  'labelsMade.v1': z
    .looseObject({
      shiftId,
      labels: z
        .array(
          z.looseObject({
            sampleNumber: z.string().regex(/^\d{4,10}$/),
            workerId: recordId.nullable().describe('null = a spare or a field blank'),
            blank: z.boolean(),
          }),
        )
        .min(1)
        .max(120),
    })
    .describe('Labels were printed; their numbers belong to this day and are not given again'),
} as const;
