/** The laboratory's figure for one cassette, as its report states it. Keyed in by the office. */
import { z } from 'zod';
import { day, note, recordId, text, yesNoNotStated } from '../common.ts';

export const mass = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('measured'), massUg: z.number().min(0) }),
  z.looseObject({ kind: z.literal('lessThan'), reportingLimitUg: z.number().positive() }),
]);

export const resultFacts = {
  'resultReceived.v1': z.looseObject({
    sampleId: recordId,
    reportNumber: text,
    laboratoryId: recordId.nullable(),
    accreditation: text.nullable(),
    methodId: text.nullable(),
    receivedOn: day,
    reportedOn: day.nullable(),
    analysedOn: day.nullable(),
    mass,
    reportingLimitUg: z.number().positive().nullable(),
    blankCorrected: yesNoNotStated,
    wallDeposit: yesNoNotStated.describe('Interior wall deposit included?'),
    laboratoryVolumeL: z.number().positive().nullable(),
    laboratoryConcentrationUgPerM3: z.number().min(0).nullable(),
    saeFraction: z
      .number()
      .positive()
      .max(1)
      .nullable()
      .describe('Sampling and analytical error, if the laboratory gives it'),
    remark: note.nullable(),
  }),
} as const;
