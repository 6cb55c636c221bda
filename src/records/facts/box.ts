/** The box for the laboratory and its custody sheet. Acts that leave the firm store the values and editions they were made with. */
import { z } from 'zod';
import { note, recordId, text } from '../common.ts';

export const boxFacts = {
  'boxPacked.v1': z.looseObject({
    boxId: recordId,
    siteId: recordId,
    sampleIds: z.array(recordId).min(1).max(200),
    laboratoryId: recordId,
    samplerId: recordId,
    analysis: text,
    methodId: text.nullable(),
    reportingLimitUg: z.number().positive().nullable().describe('Reporting limit asked of the laboratory'),
    includeWallDeposit: z.boolean(),
    callBeforeReanalysis: z.boolean(),
    turnaround: text,
    workersShownAs: z.enum(['name', 'identifier']),
    remark: note.nullable(),
  }),
  'custodySheetIssued.v1': z.looseObject({
    boxId: recordId,
    revision: z.string().regex(/^[1-9]\d*$/),
    paper: z.enum(['letter', 'a4']),
    sheet: z.looseObject({}).describe('The values the sheet was made with: the same JSON that is attached to the PDF'),
    pdfHash: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .describe('SHA-256 of the PDF that was handed out; its bytes are kept'),
    editions: z.looseObject({ app: text, rules: text, formulas: text }),
    heads: z
      .array(z.looseObject({ factId: text, link: text }))
      .describe('Head of each writer chain when it was issued'),
  }),
  'boxHandedOver.v1': z.looseObject({
    boxId: recordId,
    to: text,
    trackingNumber: text.nullable(),
    sealed: z.boolean(),
  }),
  'boxArrived.v1': z.looseObject({ boxId: recordId, remark: note.nullable() }),
} as const;
