/** A site's day: opened by the supervisor, flow checks, conditions of the day. Used to be the flow log and the day sheet. */
import { z } from 'zod';
import { day, note, recordId, shiftId } from '../common.ts';

export const shiftFacts = {
  'shiftOpened.v1': z.looseObject({ shiftId, siteId: recordId, workOn: day }),
  'flowChecked.v1': z.looseObject({
    flowCheckId: recordId,
    shiftId,
    pumpId: recordId,
    meterId: recordId,
    lotId: recordId.nullable().describe('Lot of the cassette in line; null when nothing was in line'),
    inLine: z
      .enum(['representativeCassette', 'sampleCassette', 'nothing'])
      .describe('What was in line. Nothing in line is not a flow check'),
    purpose: z.enum(['before', 'after', 'between']),
    readings: z
      .array(z.looseObject({ lowLPerMin: z.number().positive(), highLPerMin: z.number().positive() }))
      .min(1)
      .max(20)
      .describe('Each reading as read; a float that bounces has two ends, a steady one has the same number twice'),
    temperatureC: z.number().min(-40).max(60).nullable(),
    pressureKPa: z.number().min(30).max(120).nullable().describe('Station pressure, not reduced to sea level'),
    remark: note.nullable(),
  }),
  'conditionsNoted.v1': z.looseObject({
    shiftId,
    tool: z.enum(['hand', 'power', 'heat', 'blast', 'torch', 'other']),
    method: z.enum(['wet', 'dry', 'mixed']),
    dustCollection: z.enum(['none', 'shroud', 'shroudHepa']),
    containment: z.enum(['none', 'partial', 'full']),
    ventilation: z.enum(['still', 'natural', 'exhaust']),
    weather: z.enum(['indoors', 'dryCalm', 'dryWindy', 'damp', 'rain']),
    paintLead: z.enum(['tested', 'presumed', 'notKnown']),
    area: z.enum(['small', 'room', 'large']),
    remark: note.nullable(),
  }),
} as const;
