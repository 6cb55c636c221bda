/** Papers that tell: each revision the next one of its measurement, and given only to whom it is for. */
import type { AnyRecord, NoticeRecord, WorkdayRecord } from '../book.ts';
import { keyOf } from '../common.ts';
import type { Ask } from './ask.ts';
import { knownMeasurement } from './measurement.ts';
import { refuseLaterDay } from './roster.ts';

const isNotice = (record: AnyRecord): record is NoticeRecord => record.key.startsWith('notice:');
const nextOf = (revisions: readonly string[]): string => String(Math.max(0, ...revisions.map(Number)) + 1);

/** Whoever it names may be known by another device only; whether it names everyone is told by findings. */
function noticeIssued(ask: Ask<'noticeIssued.v1'>): void {
  const { refuse, view, fact } = ask;
  const { noticeId, measurementId, revision, receivedOn, form, places, pelStatement, correctiveAction } = fact.body;
  const key = keyOf('notice', noticeId);
  if (view.record(key)) refuse('alreadyInBook', ['body/noticeId'], { key });
  knownMeasurement(ask as Ask, measurementId, 'body/measurementId');
  const others = view
    .all()
    .filter(isNotice)
    .filter(({ issued }) => issued.measurementId === measurementId);
  const next = nextOf(others.map(({ issued }) => issued.revision));
  if (revision !== next) refuse('noticeRevisionNotNext', ['body/revision'], { revision, next });
  refuseLaterDay(ask as Ask, 'body/receivedOn', receivedOn);
  if (form === 'posted' && places.length === 0) refuse('entryNotComplete', ['body/places']);
  if (pelStatement && (correctiveAction === null || correctiveAction.trim() === ''))
    refuse('entryNotComplete', ['body/correctiveAction']);
}

/** Typed moments have whole minutes. */
export const minuteOf = (at: string): string => at.slice(0, 16);

function noticeGiven(ask: Ask<'noticeGiven.v1'>): void {
  const { refuse, view, fact } = ask;
  const { noticeId, workerId, how, place, initials } = fact.body;
  const key = keyOf('notice', noticeId);
  const notice = view.record(key) as NoticeRecord | null;
  if (!notice) {
    refuse('recordUnknown', ['body/noticeId'], { key });
    return;
  }
  const { issued } = notice;
  if (workerId !== null && !issued.workerIds.includes(workerId)) refuse('notNamedInNotice', ['body/workerId']);
  if ((workerId === null || how === 'posted') && issued.form !== 'posted') refuse('noticeNotPosted', ['body/how']);
  // Posted is for everyone; whatever else was done was done with one person.
  if ((workerId === null) !== (how === 'posted')) refuse('entryNotComplete', ['body/workerId']);
  if (how === 'posted' && (place === null || !issued.places.includes(place)))
    refuse('entryNotComplete', ['body/place']);
  if (how === 'refusedToSign' && initials !== null && initials.trim() !== '')
    refuse('entryNotComplete', ['body/initials']);
  if (minuteOf(fact.happened.at) < minuteOf(issued.at))
    refuse('givenBeforeIssued', ['happened/at'], { at: issued.at, zone: fact.happened.zone });
}

/** What it stands on is found by findings; here only that a negative one stands on something. */
function determinationWritten(ask: Ask<'determinationWritten.v1'>): void {
  const { determinationId, outcome, determinedOn, measurementIds, relianceIds } = ask.fact.body;
  const key = keyOf('determination', determinationId);
  if (ask.view.record(key)) ask.refuse('alreadyInBook', ['body/determinationId'], { key });
  refuseLaterDay(ask as Ask, 'body/determinedOn', determinedOn);
  if (outcome === 'negative' && measurementIds.length === 0 && relianceIds.length === 0)
    ask.refuse('negativeWithoutMeasurement', ['body/measurementIds']);
}

/** A day of which only samples are known has a record too: nothing has been issued of it yet. */
function recordIssued(ask: Ask<'exposureRecordIssued.v1'>): void {
  const { workdayId, revision } = ask.fact.body;
  const key = keyOf('workday', workdayId);
  const workday = ask.view.record(key) as WorkdayRecord | null;
  const next = nextOf((workday?.recordsIssued ?? []).map((issued) => issued.revision));
  if (revision !== next) ask.refuse('noticeRevisionNotNext', ['body/revision'], { revision, next });
}

export const tellingCases = {
  'noticeIssued.v1': noticeIssued,
  'noticeGiven.v1': noticeGiven,
  'determinationWritten.v1': determinationWritten,
  'exposureRecordIssued.v1': recordIssued,
};
