/**
 * One filter cassette, from the fitting to the locked box. Written by the supervisor before entering and after leaving the work
 * area; used to be the sampling form. `happened.at` of each fact is the moment itself.
 */
import { z } from 'zod';
import { factId, instant, language, note, recordId, shiftId, text } from '../common.ts';

const sampleId = recordId;

/** What can happen to a cassette. */
export const mishap = z.enum(['wet', 'dropped', 'overloaded', 'inletUp', 'opened', 'other']);

export const sampleFacts = {
  'samplePrepared.v1': z.looseObject({
    sampleId,
    sampleNumber: z
      .string()
      .regex(/^\d{4,10}$/)
      .describe('The label on the cassette, with its check digit; not the identity'),
    shiftId,
    workerId: recordId,
    pumpId: recordId,
    lotId: recordId,
    taskIds: z.array(text).min(1).describe('Everyday task names of shared/tasks, as ids'),
    jobClassificationId: recordId.nullable(),
    follows: sampleId.nullable().describe('The sample before a cassette change on the same worker and day'),
  }),
  'fittingChecked.v1': z.looseObject({
    sampleId,
    mode: z.enum(['fitted', 'declined', 'fittedBySelf']),
    points: z.looseObject({
      pumpSecured: z.boolean(),
      tubingSecured: z.boolean(),
      breathingZone: z.boolean(),
      outsideRespirator: z.boolean(),
      insideHelmet: z.boolean().nullable().describe('Hot work only: inside the helmet, outside the respirator'),
      inletDown: z.boolean(),
      plugsOff: z.boolean(),
      running: z.boolean(),
    }),
    observationOffered: z.boolean().describe('The right to watch the monitoring, 29 CFR 1926.62(o)'),
    initials: z.string().max(8).nullable(),
    language,
  }),
  'pumpPutOn.v1': z.looseObject({ sampleId }),
  'pumpLookedAt.v1': z.looseObject({ sampleId, running: z.boolean(), inPlace: z.boolean(), remark: note.nullable() }),
  'leadAreaLeft.v1': z.looseObject({ sampleId, reason: text }).describe('Away, with the pump still worn and running'),
  'leadAreaEntered.v1': z.looseObject({ sampleId }),
  'pumpTakenOff.v1': z.looseObject({
    sampleId,
    stillRunning: z.boolean(),
    awayFromLead: z.boolean().describe('The worker is away from the lead area meanwhile'),
    reason: text,
  }),
  'pumpPutBackOn.v1': z.looseObject({ sampleId }),
  'pumpFaulted.v1': z.looseObject({
    sampleId,
    fault: z.enum(['stopped', 'flowDropped', 'tubingOff', 'other']),
    pumpMin: z.number().min(0).max(6000).nullable().describe("The pump's own elapsed minutes when found"),
    remark: note.nullable(),
  }),
  'mishapNoted.v1': z.looseObject({
    sampleId,
    mishap,
    remark: note.nullable(),
  }),
  'pumpStopped.v1': z.looseObject({
    sampleId,
    pumpMin: z.number().min(0).max(6000).nullable().describe("The pump's own elapsed minutes, an independent witness"),
  }),
  'stoppedByMistake.v1': z.looseObject({ sampleId, stopFactId: factId }),
  'cassetteSealed.v1': z.looseObject({
    sampleId,
    labelled: z.boolean(),
    lockedIn: text.nullable(),
    lockedById: recordId.nullable(),
  }),
  'blankOpened.v1': z.looseObject({
    sampleId,
    sampleNumber: z.string().regex(/^\d{4,10}$/),
    shiftId,
    lotId: recordId,
    openedWhere: text,
  }),
  'flowDecided.v1': z
    .looseObject({
      sampleId,
      use: z.enum(['average', 'lower']),
      knew: z.array(factId).max(50).optional().describe('The flow checks that whoever decided knew of'),
    })
    .describe('Someone decided, with a reason'),
  'sampleVoided.v1': z
    .looseObject({ sampleId })
    .describe('The envelope says why. A void sample keeps what it still shows'),
  'remarkMade.v1': z.looseObject({ sampleId, text: note }),
  'clockSetBackNoticed.v1': z
    .looseObject({
      sampleId,
      setBackMin: z
        .number()
        .positive()
        .describe('By how much, against the latest wall time that the device had passed'),
    })
    .describe('Noticed by the device while the pump ran: its clock now stands before what it had passed'),
} as const;

export const workPiece = z.looseObject({
  startedAt: instant,
  endedAt: instant,
  place: text.nullable().describe('A second site, a call-out; null = the site of the shift'),
  employer: text.nullable(),
});
