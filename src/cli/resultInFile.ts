/** What a day file says of one cassette from the laboratory, and the small schemas that its other parts share. */
import { z } from 'zod';
import { en as words } from '#words/assess.ts';

export const text = z.string().trim().min(1).max(400);
export const time = z.iso
  .datetime({ offset: true, error: words.refusals.notATime })
  .describe(
    'Local time with its offset from UTC: 2026-11-25T07:12:00-06:00. The offset must be that of the zone of the site',
  );
export const day = z.iso.date({ error: words.refusals.notADay }).describe('Calendar day: 2026-11-25');
export const yesNo = z.enum(['yes', 'no']);
/** May be null or left out: not known. */
export const blankable = <T extends z.ZodType>(schema: T) => schema.nullable().optional();

/** Wide enough for any pump and any filter; what lies outside is a slip of the keyboard. */
export const flowLPerMin = z.number().min(0.001).max(100);
const massUg = z.number().min(0).max(1e9);

const yesNoNotStated = z.enum(['yes', 'no', 'notStated']);

const lessThan = z
  .strictObject({ lessThanUg: z.number().positive().max(1e9).describe("The laboratory's reporting limit, in µg") })
  .describe('Less than the reporting limit');

export const resultInFile = z
  .strictObject({
    reportNumber: text.describe("Number of the laboratory's report"),
    receivedOn: day.describe('Day on which the report was received'),
    massUg: z
      .union([massUg.describe('Mass of lead on the filter, in µg'), lessThan], words.refusals.notAMass)
      .describe('Mass of lead in µg, or { "lessThanUg": reporting limit }'),
    reportingLimitUg: blankable(z.number().positive().max(1e9)).describe('Reporting limit of a measured mass, in µg'),
    blankCorrected: yesNoNotStated.describe('Did the laboratory subtract field blanks already?'),
    wallDeposit: yesNoNotStated.describe("Is the deposit on the cassette's inner wall in the mass?"),
    method: blankable(text).describe(
      'Id of a method held, such as niosh-7082; without it flow and volume are not checked',
    ),
    accreditation: blankable(text).describe("The laboratory's accreditation, as its report states it"),
    laboratoryVolumeL: blankable(z.number().min(0.001).max(1e6)).describe(
      'Volume that the report shows, compared with ours',
    ),
    laboratoryConcentrationUgPerM3: blankable(z.number().min(0).max(1e12)).describe(
      'Concentration that the report shows, compared with ours',
    ),
    saeFraction: blankable(z.number().positive().max(1)).describe(
      'Sampling and analytical error, if the laboratory gives it: 0.12 for 12 %. Never made up',
    ),
  })
  .describe("The laboratory's figure for one cassette");

export const voidInFile = blankable(z.strictObject({ why: text.describe('Why the sample is void') })).describe(
  'A void sample stays in the file and keeps what it still shows',
);

export const sampleNumber = z
  .string()
  .regex(/^\d{4,10}$/, words.refusals.notANumber)
  .describe('The number on the cassette: 4 to 10 digits, as text');
