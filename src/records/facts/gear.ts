/**
 * Whose the gear is, that it was charged, its yearly certificates, and that it was found bad later. A doubt touches every sample that
 * rests on the gear in its time; one recorded decision settles it, and nothing is worked out anew in silence.
 */
import { z } from 'zod';
import { day, factId, note, recordId, text } from '../common.ts';

const knew = z.array(factId).max(50).optional().describe('Earlier statements that were known: this one follows them');
const gear = z.enum(['pump', 'meter', 'lot']);

export const gearFacts = {
  'gearHeld.v1': z
    .looseObject({
      gear,
      gearId: recordId,
      held: z.enum(['owned', 'rented', 'lent']),
      from: text.nullable().describe('From whom it is rented or lent'),
      backOn: day.nullable().describe('When it goes back'),
      retired: z.boolean().describe('No longer in use; its records stay'),
      knew,
    })
    .describe('Owned, rented or lent'),
  'pumpCharged.v1': z
    .looseObject({ pumpId: recordId, full: z.boolean().describe('Charged to the full'), remark: note.nullable() })
    .describe('A pump was put on its charger or taken off it full'),
  'certificateEntered.v1': z
    .looseObject({
      meterId: recordId,
      certificateOn: day,
      dueOn: day.nullable().describe('Next calibration due; null = not said'),
      by: text.nullable().describe('Who calibrated it'),
      calibrationTemperatureC: z.number().min(-40).max(60).nullable(),
      calibrationPressureKPa: z.number().min(30).max(120).nullable(),
      pairs: z
        .array(z.looseObject({ readLPerMin: z.number().positive(), trueLPerMin: z.number().positive() }))
        .max(6)
        .describe("The certificate's read-against-true pairs"),
      knew,
    })
    .describe('A newer certificate of a flow meter: it holds for flow checks from its day on and changes none before'),
  'gearDoubted.v1': z
    .looseObject({
      gear,
      gearId: recordId,
      doubtId: recordId,
      foundOn: day,
      fromOn: day.nullable().describe('Doubtful from this day on; null = ever since it was entered'),
      untilOn: day
        .nullable()
        .describe('Up to this day; null = until it is shown to have had no effect, or a newer certificate'),
      found: text.describe('What was found'),
    })
    .describe('A pump, a flow meter or a lot was found bad: whatever rests on it in that time is doubtful'),
  'gearDoubtSettled.v1': z
    .looseObject({
      gear,
      gearId: recordId,
      doubtId: recordId,
      decision: z
        .enum(['noEffect', 'asFound', 'staysDoubtful'])
        .describe('Shown to have had no effect; corrected by what was found; or what rests on it proves nothing low'),
      trueOverRead: z
        .number()
        .min(0.5)
        .max(2)
        .nullable()
        .describe('With asFound, of a flow meter: true flow over the flow that it read'),
      knew: z.array(factId).max(50).optional().describe('Settlements of this doubt that were known'),
    })
    .describe('One decision with a reason settles the doubt; the envelope says why'),
} as const;
