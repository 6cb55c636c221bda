/** Papers that tell: notices, written determinations, exposure records. Acts that leave the firm keep values, editions and bytes. */
import { z } from 'zod';
import { day, factId, language, note, recordId, shiftId, text, workdayId } from '../common.ts';
import { measurementId } from './measurement.ts';

const issued = {
  pdfHash: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .describe('SHA-256 of the PDF that was handed out; its bytes are kept'),
  editions: z.looseObject({ app: text, rules: text, formulas: text }),
  heads: z.array(z.looseObject({ factId: text, link: text })).describe('Head of each writer chain when it was issued'),
};
const revision = z.string().regex(/^[1-9]\d*$/);

export const tellingFacts = {
  'noticeIssued.v1': z
    .looseObject({
      noticeId: recordId,
      measurementId,
      revision: revision.describe('Counted from 1 for each measurement'),
      resultFactIds: z.array(factId).max(50).describe('The results that it tells'),
      receivedOn: day.describe('Day of receipt from which its days were counted'),
      workerIds: z.array(recordId).min(1).max(200).describe('Everyone it stands for'),
      form: z.enum(['inWriting', 'posted']),
      places: z.array(text).max(20).describe('Where it is posted'),
      shownAs: z.enum(['name', 'identifier']),
      languages: z.array(language).min(1).max(2),
      pelStatement: z.boolean().describe('It states that the exposure was at or above the PEL'),
      correctiveAction: note.nullable(),
      notice: z.looseObject({}).describe('The values that it was made with'),
      ...issued,
    })
    .describe('A notice of results was made for the workers that it concerns'),
  'noticeGiven.v1': z
    .looseObject({
      noticeId: recordId,
      workerId: recordId.nullable().describe('null = posted for everyone it stands for'),
      how: z.enum(['handedOver', 'readAloud', 'posted', 'refusedToSign']),
      place: text.nullable(),
      language,
      initials: z.string().max(8).nullable(),
    })
    .describe('A worker was given the notice, or it was posted'),
  'determinationWritten.v1': z
    .looseObject({
      determinationId: recordId,
      outcome: z.enum(['negative', 'positive']),
      siteId: recordId,
      shiftId: shiftId.nullable().describe('The job that it is about; null = the site'),
      location: text.describe('Where within the worksite'),
      determinedOn: day,
      taskIds: z.array(text).min(1).max(12),
      jobClassificationId: recordId.nullable(),
      measurementIds: z.array(measurementId).max(100),
      relianceIds: z.array(recordId).max(20),
      monitoredIds: z.array(recordId).max(100).describe('Each worker who was monitored'),
      standsForIds: z.array(recordId).max(200),
      observations: note.nullable().describe('Information, observations, calculations'),
      earlierMeasurements: note.nullable(),
      complaints: note.nullable().describe('Complaints that workers attributed to lead; no medical values'),
      determination: z.looseObject({}).describe('The values that it was made with'),
      ...issued,
    })
    .describe('An initial determination was written'),
  'exposureRecordIssued.v1': z
    .looseObject({ workdayId, revision, to: text, record: z.looseObject({}), ...issued })
    .describe("The exposure record of a worker's day was handed out"),
} as const;
