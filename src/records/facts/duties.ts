/** What was done of what the rule asks, which limits the firm holds itself to, and who asked for records. No medical value, ever. */
import { z } from 'zod';
import { day, factId, note, recordId, text } from '../common.ts';

export const dutyFacts = {
  'dutyDone.v1': z
    .looseObject({
      dutyId: z
        .string()
        .regex(/^[0-9a-zA-Z.-]{3,120}$/)
        .describe('Made of what the duty is, so that two devices mean the same'),
      doneOn: day,
      doneById: recordId.nullable(),
      whereItLies: text.nullable().describe('Where the paper lies; no medical values'),
      remark: note.nullable(),
    })
    .describe('Something that the rule asks was done'),
  'dutyReopened.v1': z
    .looseObject({
      dutyId: z.string().regex(/^[0-9a-zA-Z.-]{3,120}$/),
      knew: z
        .array(factId)
        .max(200)
        .optional()
        .describe('Entries of its being done that were known: only these count no more'),
    })
    .describe('It was not done after all; the envelope says why'),
  'limitsChosen.v1': z
    .looseObject({
      bookId: recordId,
      besideIds: z.array(text).max(20).describe('Limit sets that are shown beside the rule'),
      ownActionLevelUgPerM3: z.number().positive().nullable(),
      ownPelUgPerM3: z.number().positive().nullable(),
      knew: z.array(factId).max(50).optional().describe('Earlier choices that were known: this one follows them'),
    })
    .describe("Limits shown beside the rule, and the firm's own stricter ones"),
  'recordsRequested.v1': z
    .looseObject({
      requestId: recordId,
      askedOn: day,
      by: text.describe('Who asked'),
      personId: recordId.nullable().describe('Whose records; null = of no single person'),
      as: z.enum(['worker', 'formerWorker', 'representative', 'agency', 'other']),
      remark: note.nullable(),
    })
    .describe('Somebody asked to see records'),
} as const;
