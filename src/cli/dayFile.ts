/**
 * The file that `npm run -s assess` reads: work days in JSON, as someone would write them down from paper. Times are local with their
 * offset (2026-11-25T07:12:00-06:00). What is not known is null or left out; nothing is guessed. The JSON schema is made from this.
 */
import { z } from 'zod';
import { isZone } from '#core/calendar.ts';
import { stateByCode } from '#reference/states.ts';
import { en as words } from '#words/assess.ts';
import { blankable, day, flowLPerMin, text, time, yesNo } from './resultInFile.ts';
import { blankInFile, sampleInFile } from './sampleInFile.ts';

const siteInFile = z
  .strictObject({
    name: text.describe('Name by which days and blanks refer to it'),
    stateCode: z
      .string()
      .regex(/^[A-Z]{2}$/, words.refusals.notAState)
      .refine((code) => stateByCode(code) !== undefined, words.refusals.notAState)
      .describe('US state or territory, two letters: whose rule governs'),
    setting: z.enum(['indoors', 'outdoors']).describe('Where the work was; carried, not judged'),
    zone: text.refine(isZone, words.refusals.notAZone).describe('IANA time zone, such as America/Chicago'),
    altitudeM: blankable(z.number().min(-500).max(9000)).describe(
      'Altitude in metres, for station pressure where a rotameter was used and the pressure was not read',
    ),
  })
  .describe('Where the work was');

const pair = z.strictObject({
  readLPerMin: flowLPerMin.describe('What the meter showed'),
  trueLPerMin: flowLPerMin.describe('What the flow was'),
});

const meterInFile = z
  .strictObject({
    name: text.describe('Name or serial by which flow checks refer to it'),
    meterKind: z
      .enum(['soapFilm', 'dryPiston', 'rotameter', 'other'])
      .describe('A rotameter reading is corrected for the air at the site'),
    certificateOn: blankable(day).describe('Day of the certificate'),
    dueOn: blankable(day).describe('Next calibration due'),
    calibrationTemperatureC: blankable(z.number().min(-40).max(60)).describe('Air at which a rotameter was calibrated'),
    calibrationPressureKPa: blankable(z.number().min(30).max(120)).describe('Air at which a rotameter was calibrated'),
    pairs: z.array(pair).max(6).optional().describe("The certificate's read-against-true pairs; refused outside them"),
  })
  .describe('A flow meter');

const reading = z
  .strictObject({
    lowLPerMin: flowLPerMin.describe('Low end of a bouncing float; the same as the high end when steady'),
    highLPerMin: flowLPerMin.describe('High end'),
  })
  .refine(({ lowLPerMin, highLPerMin }) => lowLPerMin <= highLPerMin, words.refusals.lowAboveHigh)
  .describe('One reading, as read');

const checkInFile = z
  .strictObject({
    at: time,
    pump: text.describe('Name or serial of the pump'),
    meter: text.describe('Name of a flow meter of this file'),
    purpose: z.enum(['before', 'after', 'between']).describe('Between: after one cassette and before the next'),
    inLine: z
      .enum(['representativeCassette', 'sampleCassette', 'nothing'])
      .describe('What was in line. With nothing in line it is not a flow check'),
    lot: blankable(text).describe('Media lot of the cassette in line'),
    readings: z.array(reading).min(1).max(20).describe('Every reading; their mean counts'),
    temperatureC: blankable(z.number().min(-40).max(60)).describe('Air at the check, for a rotameter'),
    pressureKPa: blankable(z.number().min(30).max(120)).describe('Station pressure, not reduced to sea level'),
  })
  .describe('A flow check of one pump');

const inOrder = { message: words.refusals.endBeforeStart, path: ['to'] };
const ordered = ({ from, to }: { readonly from: string; readonly to: string }): boolean =>
  Date.parse(to) > Date.parse(from);

const piece = z
  .strictObject({
    from: time,
    to: time,
    place: blankable(text).describe('Where, if not at the site of the day'),
    employer: blankable(text).describe('For whom, if not for this firm'),
  })
  .refine(ordered, inOrder)
  .describe('A piece of work; an unpaid break lies between two');

const explained = z
  .strictObject({
    from: time,
    to: time,
    as: z
      .enum(['away', 'sameAs', 'unknown'])
      .describe('Away from the lead area (0, needs a reason); the same as a sample (needs a reason); not known'),
    sample: blankable(sampleInFile.shape.number).describe('Number of the sample of that day that the minutes are like'),
    reason: blankable(text).describe('How it is known'),
  })
  .refine(ordered, inOrder)
  .describe('What minutes without a sample were; minutes that nobody explains are unknown');

const otherWork = z
  .strictObject({
    callOut: yesNo.describe('A call-out before or after the shift'),
    secondSite: yesNo.describe('Work at a second site'),
    secondEmployer: yesNo.describe('Work for a second employer'),
  })
  .describe('Asked of the worker: anything else that counts into the same day');

const dayInFile = z
  .strictObject({
    worker: text.describe('Name or identifier of the worker'),
    workOn: day.describe('The work day; a night shift has the day on which it began'),
    site: text.describe('Name of a site of this file'),
    pieces: blankable(z.array(piece).min(1).max(12)).describe('Every piece of work of the day, for any employer'),
    otherWork: blankable(otherWork).describe('null: not asked'),
    regular: blankable(yesNo).describe('Was it a regular day? No keeps it from showing that less protection is enough'),
    notRegularWhy: blankable(text).describe('What was different'),
    tasks: z
      .array(text)
      .max(12)
      .optional()
      .describe(
        'Ids of tasks done that day, also without a sample: then a measurement of the same shift may stand for it',
      ),
    explained: z.array(explained).max(60).optional(),
    samples: z.array(sampleInFile).max(20),
  })
  .describe("One worker's work day");

export const dayFile = z.strictObject({
  format: z.literal('fullshift.days.v1').describe('Says what the file is'),
  note: text.optional().describe('Anything; it is not read'),
  sites: z.array(siteInFile).min(1).max(200),
  meters: z.array(meterInFile).max(200),
  flowChecks: z
    .array(checkInFile)
    .max(5000)
    .describe('They belong to a pump; which sample they go with is found from it and the time'),
  blanks: z.array(blankInFile).max(2000),
  days: z.array(dayInFile).min(1).max(2000),
});
export type DayFile = z.infer<typeof dayFile>;
export type DayInFile = DayFile['days'][number];
export type SampleInFile = DayInFile['samples'][number];
export type ResultInFile = NonNullable<SampleInFile['result']>;
