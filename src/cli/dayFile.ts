/**
 * The file that `npm run -s assess` reads: work days in JSON, as someone would write them down from paper. Times are local with their
 * offset (2026-11-25T07:12:00-06:00). What is not known is null or left out; nothing is guessed. The JSON schema is made from this.
 */
import { z } from 'zod';
import { stateByCode } from '#reference/states.ts';

const text = z.string().trim().min(1).max(400);
const time = z.iso.datetime({ offset: true }).describe('Local time with its offset: 2026-11-25T07:12:00-06:00');
const day = z.iso.date();
const yesNo = z.enum(['yes', 'no']);
const blankable = <T extends z.ZodType>(schema: T) => schema.nullable().optional();

export const siteInFile = z.strictObject({
  name: text,
  stateCode: z
    .string()
    .regex(/^[A-Z]{2}$/)
    .refine((code) => stateByCode(code) !== undefined, 'not a state or territory of the United States')
    .describe('Two letters: whose rule governs'),
  altitudeM: blankable(z.number().min(-500).max(9000)),
});

export const meterInFile = z.strictObject({
  name: text,
  meterKind: z.enum(['soapFilm', 'dryPiston', 'rotameter', 'other']),
  certificateOn: blankable(day),
  dueOn: blankable(day),
  calibrationTemperatureC: blankable(z.number().min(-40).max(60)),
  calibrationPressureKPa: blankable(z.number().min(30).max(120)),
  pairs: z
    .array(z.strictObject({ readLPerMin: z.number().positive(), trueLPerMin: z.number().positive() }))
    .max(6)
    .optional()
    .describe("The certificate's read-against-true pairs"),
});

const reading = z
  .strictObject({ lowLPerMin: z.number().positive(), highLPerMin: z.number().positive() })
  .refine(({ lowLPerMin, highLPerMin }) => lowLPerMin <= highLPerMin, 'the low end is above the high end');

export const checkInFile = z.strictObject({
  at: time,
  pump: text,
  meter: text.describe('Name of a meter of this file'),
  purpose: z.enum(['before', 'after', 'between']),
  inLine: z.enum(['representativeCassette', 'sampleCassette', 'nothing']),
  lot: blankable(text),
  readings: z.array(reading).min(1).max(20),
  temperatureC: blankable(z.number().min(-40).max(60)),
  pressureKPa: blankable(z.number().min(30).max(120)).describe('Station pressure, not reduced to sea level'),
});

export const resultInFile = z.strictObject({
  reportNumber: text,
  receivedOn: day,
  massUg: z
    .union([z.number().min(0), z.strictObject({ lessThanUg: z.number().positive() })])
    .describe('A number, or { "lessThanUg": reporting limit }'),
  reportingLimitUg: blankable(z.number().positive()),
  blankCorrected: z.enum(['yes', 'no', 'notStated']),
  wallDeposit: z.enum(['yes', 'no', 'notStated']),
  method: blankable(text).describe('Id of a method of shared/methods, such as niosh-7082'),
  accreditation: blankable(text),
  laboratoryVolumeL: blankable(z.number().positive()),
  laboratoryConcentrationUgPerM3: blankable(z.number().min(0)),
  saeFraction: blankable(z.number().positive().max(1)),
});

const fitting = z.strictObject({
  pumpSecured: z.boolean(),
  tubingSecured: z.boolean(),
  breathingZone: z.boolean(),
  outsideRespirator: z.boolean(),
  insideHelmet: blankable(z.boolean()).describe('Hot work only'),
  inletDown: z.boolean(),
  plugsOff: z.boolean(),
  running: z.boolean(),
});

/** A stretch between put-on and stop that was not plainly worn and running. */
const stretch = z.strictObject({
  from: time,
  to: time,
  as: z
    .enum(['offRunning', 'offStopped', 'doubtful'])
    .describe('Off the worker, running or not; or on the worker and not known to run'),
  awayFromLead: z.boolean(),
  reason: blankable(text),
});

export const sampleInFile = z
  .strictObject({
    number: z.string().regex(/^\d{4,10}$/),
    pump: text,
    lot: text,
    tasks: z.array(text).min(1).describe('Ids of shared/tasks, such as handScraping'),
    putOn: time,
    stopped: blankable(time),
    pumpMin: blankable(z.number().min(0).max(6000)).describe("The pump's own elapsed minutes"),
    stretches: z.array(stretch).max(40).optional(),
    fitting: blankable(fitting),
    mishaps: z.array(z.enum(['wet', 'dropped', 'overloaded', 'inletUp', 'opened', 'other'])).optional(),
    flowDecision: blankable(z.strictObject({ use: z.enum(['average', 'lower']), why: text })),
    void: blankable(z.strictObject({ why: text })),
    result: blankable(resultInFile),
  })
  .refine(({ putOn, stopped }) => !stopped || Date.parse(stopped) >= Date.parse(putOn), {
    message: 'stopped before it was put on',
    path: ['stopped'],
  });

export const blankInFile = z.strictObject({
  number: z.string().regex(/^\d{4,10}$/),
  lot: text,
  void: blankable(z.strictObject({ why: text })),
  result: blankable(resultInFile),
});

const piece = z
  .strictObject({ from: time, to: time, place: blankable(text), employer: blankable(text) })
  .refine(({ from, to }) => Date.parse(to) > Date.parse(from), { message: 'ends before it begins', path: ['to'] });

const explained = z
  .strictObject({
    from: time,
    to: time,
    as: z.enum(['away', 'sameAs', 'unknown']),
    sample: blankable(text).describe('Number of the sample that the minutes are like'),
    reason: blankable(text),
  })
  .refine(({ from, to }) => Date.parse(to) > Date.parse(from), { message: 'ends before it begins', path: ['to'] });

export const dayInFile = z.strictObject({
  worker: text,
  workOn: day,
  site: text.describe('Name of a site of this file'),
  pieces: blankable(z.array(piece).min(1).max(12)).describe('Every piece of work of the day, for any employer'),
  otherWork: blankable(z.strictObject({ callOut: yesNo, secondSite: yesNo, secondEmployer: yesNo })),
  regular: blankable(yesNo),
  explained: z.array(explained).max(60).optional(),
  samples: z.array(sampleInFile).max(20),
});

export const dayFile = z.strictObject({
  format: z.literal('fullshift.days.v1'),
  note: text.optional(),
  sites: z.array(siteInFile).min(1).max(200),
  meters: z.array(meterInFile).max(200),
  flowChecks: z.array(checkInFile).max(5000),
  blanks: z.array(z.strictObject({ workOn: day, site: text, ...blankInFile.shape })).max(2000),
  days: z.array(dayInFile).min(1).max(2000),
});
export type DayFile = z.infer<typeof dayFile>;
