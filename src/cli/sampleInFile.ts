/** One air sample and one field blank of a day file. */
import { z } from 'zod';
import { mishap } from '#records/facts/sample.ts';
import { en as words } from '#words/assess.ts';
import { blankable, day, resultInFile, sampleNumber, text, time, voidInFile } from './resultInFile.ts';

const fitting = z
  .strictObject({
    pumpSecured: z.boolean().describe('Pump secured to the worker'),
    tubingSecured: z.boolean().describe('Tubing secured'),
    breathingZone: z.boolean().describe('Filter in the breathing zone'),
    outsideRespirator: z.boolean().describe('Filter outside any respirator'),
    insideHelmet: blankable(z.boolean()).describe('Hot work only: inside the helmet, outside the respirator'),
    inletDown: z.boolean().describe('Inlet points down'),
    plugsOff: z.boolean().describe('Plugs taken off'),
    running: z.boolean().describe('Pump seen to run'),
  })
  .describe('Points checked at the fitting');

const stretch = z
  .strictObject({
    from: time,
    to: time,
    as: z
      .enum(['offRunning', 'offStopped', 'doubtful'])
      .describe('Off the worker and running; off and stopped; on the worker and not known to run'),
    awayFromLead: z.boolean().describe('Off the worker: was the worker away from the lead area meanwhile?'),
    reason: blankable(text).describe('Why; off and away without a reason counts as unknown'),
  })
  .describe('Minutes between put-on and stop that were not plainly on the worker with the pump running');

const ends = { message: words.refusals.stopBeforePutOn, path: ['stopped'] };

export const sampleInFile = z
  .strictObject({
    number: sampleNumber,
    pump: text.describe('Name or serial of the pump, the same as in its flow checks'),
    lot: text.describe('Media lot of the cassette'),
    tasks: z
      .array(text)
      .min(1)
      .describe('Ids of tasks held, such as handScraping, one for each task done while it ran'),
    putOn: time,
    stopped: blankable(time).describe('When the pump was stopped; null while it runs'),
    pumpMin: blankable(z.number().min(0).max(6000)).describe("The pump's own elapsed minutes, an independent witness"),
    stretches: z.array(stretch).max(40).optional(),
    fitting: blankable(fitting).describe('null: not checked, or not written down'),
    sealed: blankable(z.boolean()).describe('Cassette sealed and labelled after the stop'),
    mishaps: z.array(mishap).optional().describe('What happened to the cassette'),
    flowDecision: blankable(
      z.strictObject({
        use: z.enum(['average', 'lower']).describe('Which flow somebody decided to use'),
        why: text.describe('The reason; a decision without one does not count'),
      }),
    ).describe('Where the flow changed too much, or a reading is missing: what somebody decided'),
    void: voidInFile,
    result: blankable(resultInFile).describe('null: not in yet'),
  })
  .refine(({ putOn, stopped }) => !stopped || Date.parse(stopped) >= Date.parse(putOn), ends)
  .describe('One filter cassette on one worker');

export const blankInFile = z
  .strictObject({
    workOn: day,
    site: text.describe('Name of a site of this file'),
    number: sampleNumber,
    lot: text.describe('Media lot of the cassette'),
    void: voidInFile,
    result: blankable(resultInFile).describe('null: not in yet'),
  })
  .describe('A field blank: opened and closed at the site, no air drawn');
