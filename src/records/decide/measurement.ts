/** Measurements that others made, and earlier ones that a job rests on. */

import type { ReportedRecord, WorkdayRecord } from '../book.ts';
import { keyOf, type RecordKey } from '../common.ts';
import type { Ask } from './ask.ts';
import { knownPerson, refuseLaterDay } from './roster.ts';

/** A measurement is a worker's day, named by worker and day, or one that was reported to us. */
export const measurementKey = (id: string): RecordKey =>
  id.includes('.') ? keyOf('workday', id) : keyOf('reported', id);

/** The measurement, or a refusal that it is not in this book. A day of which only samples are known is one. */
export function knownMeasurement(ask: Ask, id: string, field: string): WorkdayRecord | ReportedRecord | null {
  const key = measurementKey(id);
  const record = ask.view.record(key) as WorkdayRecord | ReportedRecord | null;
  const isKnown = record !== null || ask.view.samples().some(({ workdayId }) => workdayId === id);
  if (!isKnown) ask.refuse('recordUnknown', [field], { key });
  return record;
}

function reported(ask: Ask<'measurementReported.v1'>): void {
  const { reportedId, workOn, receivedOn, workerId } = ask.fact.body;
  const key = keyOf('reported', reportedId);
  if (ask.view.record(key)) ask.refuse('alreadyInBook', ['body/reportedId'], { key });
  if (workerId !== null) knownPerson(ask as Ask, workerId, 'body/workerId');
  refuseLaterDay(ask as Ask, 'body/workOn', workOn);
  refuseLaterDay(ask as Ask, 'body/receivedOn', receivedOn);
  if (receivedOn < workOn) ask.refuse('receivedBeforeWork', ['body/receivedOn'], { workOn, receivedOn });
}

/** Nothing rests on what was measured after it. */
function reliedOn(ask: Ask<'measurementReliedOn.v1'>): void {
  const { relianceId, measurementId, shiftId } = ask.fact.body;
  const key = keyOf('reliance', relianceId);
  if (ask.view.record(key)) ask.refuse('alreadyInBook', ['body/relianceId'], { key });
  const measurement = knownMeasurement(ask as Ask, measurementId, 'body/measurementId');
  const jobOn = shiftId.slice(13);
  if (measurement && measurement.workOn > jobOn)
    ask.refuse('measuredAfterJob', ['body/measurementId'], { workOn: measurement.workOn, jobOn });
}

export const measurementCases = { 'measurementReported.v1': reported, 'measurementReliedOn.v1': reliedOn };
