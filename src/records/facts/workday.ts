/** One worker's work day: all pieces of work, and what every unsampled minute was. Written by the supervisor or the office. */
import { z } from 'zod';
import { instant, recordId, text, workdayId } from '../common.ts';
import { workPiece } from './sample.ts';

const asked = z.enum(['no', 'yes']);

export const workdayFacts = {
  'workHoursStated.v1': z.looseObject({ workdayId, pieces: z.array(workPiece).min(1).max(12) }),
  'otherWorkAsked.v1': z.looseObject({ workdayId, callOut: asked, secondSite: asked, secondEmployer: asked }),
  'minutesExplained.v1': z.looseObject({
    workdayId,
    fromAt: instant,
    toAt: instant,
    as: z.enum(['away', 'sameAs', 'unknown']).describe('Away from the lead area; the same as a sample; not known'),
    sampleId: recordId.nullable(),
    reason: text.nullable(),
  }),
  'dayDescribed.v1': z.looseObject({ workdayId, regular: z.enum(['yes', 'no']), reason: text.nullable() }),
} as const;
