/**
 * Who did what where, each day; who works here from when to when; what was new when a job started. Written by the supervisor in ten
 * seconds. Without it nobody can say whom a measurement stands for, whom to tell, or who reached thirty days.
 */
import { z } from 'zod';
import { day, factId, recordId, shiftId, text, workdayId } from '../common.ts';

const said = z.enum(['no', 'yes', 'notKnown']);

export const rosterFacts = {
  'workNoted.v1': z
    .looseObject({
      workdayId,
      shiftId: shiftId.describe('The site and the day'),
      taskIds: z.array(text).min(1).max(12).describe('Everyday task names of shared/tasks, as ids'),
      jobClassificationId: recordId.nullable(),
      respirator: text.nullable().describe('What was worn: id of shared/respirators, none, or null = not noted'),
    })
    .describe('A worker was at a site on a day and did these tasks'),
  'workStruck.v1': z
    .looseObject({
      workdayId,
      noted: factId.describe('The entry that is struck; the envelope says why'),
      knew: z.array(factId).max(50).optional().describe('Corrections of the entry that were known'),
    })
    .describe('An entry of the roster was wrong: the worker was not there'),
  'employmentStated.v1': z
    .looseObject({
      personId: recordId,
      fromOn: day.nullable(),
      toOn: day.nullable().describe('null = still here'),
      knew: z.array(factId).max(50).optional().describe('Earlier statements that were known: this one follows them'),
    })
    .describe('From when to when a person works here'),
  'changesAsked.v1': z
    .looseObject({ shiftId, equipment: said, process: said, control: said, personnel: said, newTask: said })
    .describe('Asked at the start of a job: what is new since the measurement that it rests on, 29 CFR 1926.62(d)(7)'),
  'representsStated.v1': z
    .looseObject({ workdayId: workdayId.describe('The measured day'), workerIds: z.array(recordId).min(1).max(100) })
    .describe('In writing: this measurement stands for these workers too'),
} as const;
