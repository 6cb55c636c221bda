/** Pictures kept beside a record, and what a person settles after two devices came together. The envelope says why. */
import { z } from 'zod';
import { factId, recordId, text } from '../common.ts';

const sha256Hex = z.string().regex(/^[0-9a-f]{64}$/);
const count = z.number().int().min(1);

export const keepingFacts = {
  'photoTaken.v1': z
    .looseObject({
      photoId: recordId,
      of: z.enum(['meterReading', 'label', 'certificate', 'site', 'other']),
      hash: sha256Hex.describe('SHA-256 of the picture that is kept: shrunk, without the place it was taken at'),
      type: z.literal('image/jpeg'),
      widthPx: count,
      heightPx: count,
      bytesCount: z.number().int().min(1).max(300_000),
    })
    .describe('A picture beside a record; the bytes lie with the files and may be missing on a device'),
  'voidReviewed.v1': z
    .looseObject({
      sampleId: recordId,
      voidFactId: factId,
      stands: z.boolean().describe('Whether the sample stays void'),
      knew: z
        .array(factId)
        .max(50)
        .describe('The results, and what was said of the void before, that whoever says so knew of'),
    })
    .describe('A sample was voided and a result came in: a person said, knowing both, whether it stays void'),
  'sheetDifferenceKept.v1': z
    .looseObject({
      boxId: recordId,
      revision: z.string().regex(/^[1-9]\d*$/),
      recordHash: sha256Hex.describe(
        'Of what a sheet would say now; when the record changes again, the question is open again',
      ),
    })
    .describe('The sheet differs from the record, and a person said that no new revision is needed'),
  'missingEntriesAccepted.v1': z
    .looseObject({ bookId: recordId, writer: text, fromCount: count, toCount: count })
    .describe('Entries of a lost device that will never come: a person said so'),
} as const;
