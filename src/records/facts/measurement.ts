/** Measurements that others made, and earlier ones that a new job rests on. Keyed in by the office. */
import { z } from 'zod';
import { day, note, recordId, shiftId, text, yesNoNotStated } from '../common.ts';

/** A measurement as duties name it: a worker's measured day, or one that was reported to us. */
export const measurementId = z.string().regex(/^[0-9a-hjkmnp-tv-z]{12}(\.\d{4}-\d{2}-\d{2})?$/);

export const average = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('measured'), twa8UgPerM3: z.number().min(0) }),
  z.looseObject({ kind: z.literal('lessThan'), twa8UgPerM3: z.number().positive() }),
]);

const alike = z.enum(['alike', 'unlike', 'notKnown']);

export const measurementFacts = {
  'measurementReported.v1': z
    .looseObject({
      reportedId: recordId,
      from: z.enum(['consultant', 'ownEarlier', 'inspector', 'otherEmployer', 'other']),
      fromName: text.describe('Who measured'),
      reportNumber: text.nullable(),
      workerId: recordId.nullable().describe('null = a worker who is not in the book'),
      siteId: recordId.nullable(),
      setting: z.enum(['indoors', 'outdoors']),
      workOn: day,
      receivedOn: day.describe('Day on which the firm had it: the clock of the notice'),
      taskIds: z.array(text).min(1).max(12),
      jobClassificationId: recordId.nullable(),
      average,
      workedHours: z.number().positive().max(24).nullable(),
      fullShift: yesNoNotStated.describe('Do the samples represent a full shift?'),
      ownFirm: yesNoNotStated.describe("Our own firm's workers, in our own work"),
      accuracy: yesNoNotStated.describe('Is the method stated to be within 25 % at 95 % confidence?'),
      remark: note.nullable(),
    })
    .describe('A measurement that was reported to us, without flow readings of our own'),
  'measurementReliedOn.v1': z
    .looseObject({
      relianceId: recordId,
      measurementId,
      shiftId: shiftId.describe('The job that rests on it, and the day on which it does'),
      taskIds: z.array(text).min(1).max(12),
      jobClassificationId: recordId.nullable(),
      processes: alike,
      material: alike,
      controls: alike,
      practices: alike,
      environment: alike,
      ownFirm: yesNoNotStated.describe("The employer's own earlier monitoring"),
    })
    .describe('A job rests on an earlier measurement; five comparisons answered, 29 CFR 1926.62(d)(3)(iii)'),
} as const;
