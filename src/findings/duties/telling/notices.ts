/**
 * Which notices of results are owed, to whom and by when: 29 CFR 1926.62(d)(8). For any result, below the action level too, and for what
 * a void sample still shows. Each receipt has its own clock; a revised report is a receipt of its own and asks for a notice of its own.
 */

import { noHolidays, workingDayAfter } from '#core/workingDays.ts';
import type { Book, NoticeRecord } from '#records/book.ts';
import { isFederalHoliday } from '#reference/holidays.ts';
import { limitSetOn } from '#reference/limits.ts';
import { standsFor } from '../groups/standsFor.ts';
import type { GroupDay } from '../groups/taskGroup.ts';
import type { Measurement, Receipt } from '../measuring/measurement.ts';
import type { NoticeOwed } from './notice.ts';
import { statementAsked, type Telling, tellingsOf } from './noticesTold.ts';

/** Days of the rule; where the state's own rule is not held, those of the federal one: a courtesy, and told as such. */
function noticeDays({ limits, workOn }: Measurement): number {
  const duties = limits.set.duties ?? limitSetOn(workOn, '').set.duties;
  if (!duties) throw new Error('no rule on notices is held');
  return duties.notice.days.value;
}

const byReceipt = (a: Receipt, b: Receipt): number =>
  a.receivedOn < b.receivedOn ? -1 : a.receivedOn > b.receivedOn ? 1 : a.factId < b.factId ? -1 : 1;

/** The first day on which the worker was told of this result; null: not yet. */
function toldOfOn(factId: string, workerId: string, tellings: readonly Telling[]): string | null {
  const days = tellings.flatMap(({ tells, toldOn }) => (tells.has(factId) ? (toldOn.get(workerId) ?? []) : [])).flat();
  return days.sort()[0] ?? null;
}

interface LastDays {
  readonly dueOn: string;
  /** Federal holidays not counted. */
  readonly laterOn: string;
}

/** Days of receipt are few and results many. */
const lastDaysBy = new Map<string, LastDays>();

function lastDaysOf(receivedOn: string, daysCount: number): LastDays {
  const name = `${receivedOn} ${daysCount}`;
  const held = lastDaysBy.get(name);
  if (held) return held;
  if (lastDaysBy.size > 5000) lastDaysBy.clear();
  const found = {
    dueOn: workingDayAfter(receivedOn, daysCount, noHolidays),
    laterOn: workingDayAfter(receivedOn, daysCount, isFederalHoliday),
  };
  lastDaysBy.set(name, found);
  return found;
}

interface Clock {
  readonly receipt: Receipt;
  readonly dueOn: string;
  readonly open: boolean;
  readonly late: boolean;
}

function clockOf(
  receipt: Receipt,
  daysCount: number,
  affectedIds: readonly string[],
  tellings: readonly Telling[],
): Clock {
  const { dueOn } = lastDaysOf(receipt.receivedOn, daysCount);
  const told = affectedIds.map((workerId) => toldOfOn(receipt.factId, workerId, tellings));
  return { receipt, dueOn, open: told.includes(null), late: told.some((on) => on !== null && on > dueOn) };
}

/** The clock that runs: of the first receipt that somebody was not told of, else of the last one. */
function running(clocks: readonly Clock[]): Clock {
  const found = clocks.find(({ open }) => open) ?? clocks.at(-1);
  if (!found) throw new Error('a notice without a result');
  return found;
}

function noticeOwed(
  measurement: Measurement,
  notices: readonly NoticeRecord[],
  book: Book,
  days: readonly GroupDay[],
  today: string,
): NoticeOwed {
  const affectedIds = standsFor(measurement, book, days);
  const tellings = tellingsOf(measurement, notices, book);
  const daysCount = noticeDays(measurement);
  const clocks = [...measurement.receipts]
    .sort(byReceipt)
    .map((receipt) => clockOf(receipt, daysCount, affectedIds, tellings));
  const { receipt, dueOn } = running(clocks);
  const { laterOn } = lastDaysOf(receipt.receivedOn, daysCount);
  const toldIds = affectedIds.filter((id) => tellings.some(({ whole, toldOn }) => whole && toldOn.has(id)));
  const openIds = affectedIds.filter((id) => !toldIds.includes(id));
  const asked = statementAsked(measurement);
  return {
    measurementId: measurement.id,
    receivedOn: receipt.receivedOn,
    dueOn,
    laterReadingOn: laterOn === dueOn ? null : laterOn,
    affectedIds,
    toldIds,
    openIds,
    pelStatement: asked,
    correctiveActionNeeded: asked,
    kind: tellings.some(({ whole }) => !whole) ? 'revised' : 'first',
    noticeIds: tellings.map(({ notice }) => notice.id),
    overdue: openIds.length > 0 && dueOn < today,
    toldLate: clocks.some(({ late }) => late),
    because: [
      ...measurement.receipts.map(({ factId }) => factId),
      ...tellings.flatMap(({ notice }) => [notice.issued.factId, ...notice.given.map(({ factId }) => factId)]),
    ],
  };
}

function noticesByMeasurement(book: Book): ReadonlyMap<string, NoticeRecord[]> {
  const found = new Map<string, NoticeRecord[]>();
  for (const notice of book.notices.values()) {
    const { measurementId } = notice.issued;
    const held = found.get(measurementId);
    if (held) held.push(notice);
    else found.set(measurementId, [notice]);
  }
  return found;
}

/** One for each measurement with a result, in the order of last days, then of measurements. */
export function noticesOwed(
  measurements: ReadonlyMap<string, Measurement>,
  book: Book,
  days: readonly GroupDay[],
  today: string,
): readonly NoticeOwed[] {
  const notices = noticesByMeasurement(book);
  const owed: NoticeOwed[] = [];
  for (const measurement of measurements.values())
    if (measurement.receipts.length > 0)
      owed.push(noticeOwed(measurement, notices.get(measurement.id) ?? [], book, days, today));
  return owed.sort((a, b) =>
    a.dueOn < b.dueOn ? -1 : a.dueOn > b.dueOn ? 1 : a.measurementId < b.measurementId ? -1 : 1,
  );
}
