/** People, places and gear: entered where first needed, then reused. Used to be the first pages of the notebook. */
import { z } from 'zod';
import { day, factId, language, note, recordId, text } from '../common.ts';

export const registerFacts = {
  'bookOpened.v1': z.looseObject({
    bookId: recordId,
    firmName: text,
    practice: z.boolean().describe('A practice book never mixes with a real one; EXAMPLE stands across its papers'),
  }),
  'siteAdded.v1': z.looseObject({
    siteId: recordId,
    name: text,
    stateCode: z
      .string()
      .regex(/^[A-Z]{2}$/)
      .describe('US state or territory, two letters: whose rule governs'),
    setting: z.enum(['indoors', 'outdoors']),
    altitudeM: z
      .number()
      .min(-500)
      .max(9000)
      .nullable()
      .describe('Site altitude, for station pressure; null = not known'),
    zone: text.describe('IANA time zone of the site'),
  }),
  'personAdded.v1': z.looseObject({
    personId: recordId,
    name: text,
    identifier: text.nullable().describe("The firm's own identifier. Never a social security number"),
    language: language.describe('The language this person reads'),
    jobClassificationId: recordId.nullable(),
    employer: text.nullable().describe('Another employer; null = this firm'),
  }),
  'jobClassificationAdded.v1': z.looseObject({ jobClassificationId: recordId, name: text }),
  'pumpAdded.v1': z.looseObject({ pumpId: recordId, serial: text, model: text.nullable() }),
  'meterAdded.v1': z.looseObject({
    meterId: recordId,
    meterKind: z.enum(['soapFilm', 'dryPiston', 'rotameter', 'other']),
    serial: text,
    certificateOn: day.nullable(),
    dueOn: day.nullable().describe('Next calibration due'),
    calibrationTemperatureC: z.number().min(-40).max(60).nullable(),
    calibrationPressureKPa: z.number().min(30).max(120).nullable(),
    pairs: z
      .array(z.looseObject({ readLPerMin: z.number().positive(), trueLPerMin: z.number().positive() }))
      .max(6)
      .describe("The certificate's read-against-true pairs, applied linearly, refused outside"),
  }),
  'lotAdded.v1': z.looseObject({
    lotId: recordId,
    lotNumber: text,
    media: text.describe('Filter and cassette, e.g. MCE 0.8 µm, 37 mm, closed face'),
    expiresOn: day.nullable(),
  }),
  'laboratoryAdded.v1': z.looseObject({
    laboratoryId: recordId,
    name: text,
    address: note.nullable(),
    accreditation: text.nullable(),
  }),
  'nameChanged.v1': z.looseObject({
    name: text.describe('The new name of the record that the fact is about; the last writer wins, and it is listed'),
    supersedes: factId.nullable().optional().describe('The name fact that this one knew of; a later name replaces it'),
  }),
  'noteMade.v1': z.looseObject({ text: note }),
} as const;
