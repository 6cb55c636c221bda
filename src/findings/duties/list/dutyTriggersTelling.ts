/** Triggers of telling: notices of results (d)(8), and records that are kept and shown (n)(1)(iii), 1910.1020(d), (e), (g). */
import { addMonths, dayOf } from '#core/calendar.ts';
import { noHolidays, workingDayAfter } from '#core/workingDays.ts';
import type { Book } from '#records/book.ts';
import { isFederalHoliday } from '#reference/holidays.ts';
import type { NoticeOwed } from '../telling/notice.ts';
import type { Duty } from './duty.ts';
import { figureOf } from './dutyTriggersMeasuring.ts';
import { earliest, fewOf, latest, type Met, type Trigger, type Triggers } from './dutyTriggersMet.ts';

/** When the last of them was told, and by whom: the last time that any of the notices was given. */
function toldOf(notice: NoticeOwed, book: Book, siteId: string | null): Duty['done'] {
  if (notice.openIds.length > 0) return null;
  const given = notice.noticeIds.flatMap((id) => book.notices.get(id)?.given ?? []);
  const last = given.reduce<(typeof given)[number] | null>((a, b) => (a === null || b.at > a.at ? b : a), null);
  const zone = (siteId === null ? undefined : book.sites.get(siteId)?.zone) ?? 'UTC';
  return last ? { on: dayOf(last.at, zone), byId: last.by, whereItLies: null } : null;
}

/** Made once for a notice, which is never changed, while what else it is made from is the same. */
const made = new WeakMap<NoticeOwed, { readonly from: readonly unknown[]; readonly met: Met | null }>();

function ofNotice(notice: NoticeOwed, sight: Parameters<Trigger>[0]): Met | null {
  const { parts, book } = sight.ground;
  const from = [parts.measurements.get(notice.measurementId), book.notices, book.sites];
  const before = made.get(notice);
  if (before && from.every((one, i) => one === before.from[i])) return before.met;
  const met = metOf(notice, sight);
  made.set(notice, { from, met });
  return met;
}

function metOf(notice: NoticeOwed, sight: Parameters<Trigger>[0]): Met | null {
  const { parts, book } = sight.ground;
  const measurement = parts.measurements.get(notice.measurementId);
  if (!measurement?.limits.heldComplete) return null;
  const done = toldOf(notice, book, measurement.siteId);
  return {
    subjects: [notice.measurementId, notice.receivedOn],
    workerIds: done ? notice.affectedIds : notice.openIds,
    siteId: measurement.siteId,
    groupKey: measurement.groupKey,
    measurementIds: [notice.measurementId],
    params: {
      ...figureOf(measurement.twa8UgPerM3),
      workOn: measurement.workOn,
      receivedOn: notice.receivedOn,
      revised: notice.kind === 'revised' ? 'yes' : 'no',
      atOrAbovePel: measurement.atOrAbovePel,
    },
    presumed: false,
    because: fewOf(notice.because),
    startsOn: notice.receivedOn,
    lastOn: null,
    due: {
      when: 'asSoonAsPossible',
      dueOn: notice.dueOn,
      laterReadingOn: notice.laterReadingOn,
      overdue: notice.overdue,
      late: notice.overdue || notice.toldLate,
      done,
    },
  };
}

const result: Trigger = (sight) => sight.ground.parts.notices.flatMap((notice) => ofNotice(notice, sight) ?? []);

const resultAtOrAbovePel: Trigger = (sight) =>
  sight.ground.parts.notices.flatMap((notice) =>
    notice.correctiveActionNeeded ? (ofNotice(notice, sight) ?? []) : [],
  );

/** Exposure records of a site, and until when they are kept: some years after the newest was made. */
const measured: Trigger = ({ ground: { parts, table, isHeld } }) => {
  const bySite = new Map<string, { on: string[]; because: string[] }>();
  for (const { siteId, workOn, receipts, because } of parts.measurements.values()) {
    if (siteId === null || !isHeld(siteId)) continue;
    const held = bySite.get(siteId) ?? { on: [], because: [] };
    held.on.push(workOn, ...receipts.map(({ receivedOn }) => receivedOn));
    if (held.because.length < 4) held.because.push(...because.slice(0, 1));
    bySite.set(siteId, held);
  }
  const { years } = table.keepYears;
  return [...bySite].map(([siteId, { on, because }]) => {
    const newestOn = latest(on) ?? '';
    return {
      subjects: [siteId],
      workerIds: [],
      siteId,
      groupKey: null,
      measurementIds: [],
      params: { keepUntilOn: addMonths(newestOn, years.value * 12), newestOn, keepYears: years.value },
      presumed: false,
      because: fewOf(because),
      startsOn: earliest(on),
      lastOn: null,
    };
  });
};

/** Requests to see records. Where no site's rule is held, the words say whose rule governs instead. */
const asked: Trigger = ({ ground: { book, table, jobs, parts } }) =>
  [...(jobs.length === 0 && parts.days.length > 0 ? [] : book.requests.values())].map((request) => {
    const daysCount = table.accessWithin.days.value;
    const dueOn = workingDayAfter(request.askedOn, daysCount, noHolidays);
    const laterOn = workingDayAfter(request.askedOn, daysCount, isFederalHoliday);
    return {
      subjects: [request.id],
      workerIds: request.personId === null ? [] : [request.personId],
      siteId: null,
      groupKey: null,
      measurementIds: [],
      params: { by: request.by, askedOn: request.askedOn, as: request.as, workingDaysCount: daysCount },
      presumed: false,
      because: request.factIds,
      startsOn: request.askedOn,
      lastOn: null,
      due: {
        when: 'by' as const,
        dueOn,
        laterReadingOn: laterOn === dueOn ? null : laterOn,
        overdue: false,
      },
    };
  });

export const telling: Triggers = { result, resultAtOrAbovePel, measured, asked };
