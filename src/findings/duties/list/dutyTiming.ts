/** When a duty is due, whether it was done, and what stays visible when it was late. */
import { addMonths, daysBetween } from '#core/calendar.ts';
import type { Book, DutyRecord } from '#records/book.ts';
import type { DutyRow } from '#reference/duties.ts';
import type { DueWhen, Duty } from './duty.ts';
import { dutyIdOf } from './dutyIds.ts';
import type { Met } from './dutyTriggersMet.ts';

export interface Timing extends Pick<Duty, 'when' | 'dueOn' | 'laterReadingOn' | 'overdue' | 'late' | 'done'> {
  readonly params: Duty['params'];
}
type Done = DutyRecord['done'][number];

const byDay = (a: Done, b: Done): number =>
  a.doneOn < b.doneOn ? -1 : a.doneOn > b.doneOn ? 1 : a.factId < b.factId ? -1 : 1;

/** What a newer version says of it may take it back: it counts for nothing until it is understood. */
function doneOf(id: string, book: Book): readonly Done[] {
  const record = book.duties.get(id);
  return !record || record.notUnderstood.length > 0 ? [] : [...record.done].sort(byDay);
}

const told = (one: Done | undefined): Duty['done'] =>
  one ? { on: one.doneOn, byId: one.doneById, whereItLies: one.whereItLies } : null;

/** What was known of it last, for a duty that is open again. */
const lastTime = (one: Done | undefined): Duty['params'] =>
  one
    ? {
        lastDoneOn: one.doneOn,
        ...(one.doneById === null ? {} : { lastDoneById: one.doneById }),
        ...(one.whereItLies === null ? {} : { lastWhereItLies: one.whereItLies }),
      }
    : {};

/** Owed again some months after it was done. null: what it follows was not done yet, so that one is owed. */
function yearly(row: DutyRow, met: Met, id: string, book: Book, today: string): Timing | null {
  if (!row.repeats) return null;
  const { after, months } = row.repeats;
  const times = [...doneOf(dutyIdOf(after, met.subjects), book), ...doneOf(id, book)].sort(byDay);
  const [last, before] = [times.at(-1), times.at(-2)];
  if (!last) return null;
  const dueOn = addMonths(last.doneOn, months.value);
  const overdue = dueOn < today;
  const lastDueOn = before ? addMonths(before.doneOn, months.value) : null;
  const lastLate = lastDueOn !== null && last.doneOn > lastDueOn;
  return {
    when: row.when,
    dueOn,
    laterReadingOn: null,
    overdue,
    late: overdue || lastLate,
    done: null,
    params: { ...lastTime(last), everyMonths: months.value, ...(lastLate ? { lastDueOn } : {}) },
  };
}

/** What was seen to counts until the next day of work. */
function continuous(row: DutyRow, met: Met, times: readonly Done[]): Timing {
  const last = times.at(-1);
  const counts = last !== undefined && (met.lastOn === null || last.doneOn >= met.lastOn);
  return {
    when: row.when,
    dueOn: null,
    laterReadingOn: null,
    overdue: false,
    late: false,
    done: counts ? told(last) : null,
    params: counts ? {} : lastTime(last),
  };
}

/** Owed once: before the work, or by a day. Done afterwards it stays marked as late. What it was done for may have grown since. */
function once(row: DutyRow, met: Met, all: readonly Done[], today: string): Timing {
  const { newSince = null } = met;
  const times = all.filter(({ doneOn }) => newSince === null || doneOn >= newSince);
  const first = times[0];
  const dated = row.when === 'beforeWorkStarts' || row.when === 'by';
  const dueOn = met.due ? met.due.dueOn : dated ? met.startsOn : null;
  const overdue = !first && dueOn !== null && dueOn < today;
  return {
    when: met.due?.when ?? row.when,
    dueOn,
    laterReadingOn: met.due?.laterReadingOn ?? null,
    overdue,
    late: overdue || (first !== undefined && dueOn !== null && first.doneOn > dueOn),
    done: told(times.at(-1)),
    params: times.length === 0 ? lastTime(all.at(-1)) : {},
  };
}

const untilItFalls = (row: DutyRow, { due }: Met): Timing => ({
  when: due?.when ?? row.when,
  dueOn: due?.dueOn ?? null,
  laterReadingOn: due?.laterReadingOn ?? null,
  overdue: due?.overdue ?? false,
  late: due?.late ?? due?.overdue ?? false,
  done: due?.done ?? null,
  params: {},
});

function byRow(row: DutyRow, met: Met, id: string, book: Book, today: string): Timing | null {
  if (row.lasts === 'yearly') return yearly(row, met, id, book, today);
  if (row.lasts === 'untilItFalls') return untilItFalls(row, met);
  const times = doneOf(id, book);
  return row.lasts === 'continuous' ? continuous(row, met, times) : once(row, met, times, today);
}

const again: DueWhen = 'beforeOrOnFirstDayAgain';

/** Where nobody worked for a while, what lasts with the work is owed before it goes on; what was missed stays visible as late. */
function quieted(timing: Timing, row: DutyRow, met: Met, today: string, quietDays: number): Timing {
  const withWork = row.per === 'site' || row.per === 'siteGroup';
  if (!withWork || timing.done || met.lastOn === null || daysBetween(met.lastOn, today) <= quietDays) return timing;
  return { ...timing, when: again, overdue: false, late: timing.late || timing.overdue };
}

/** null: not owed (yet). */
export function timingOf(
  row: DutyRow,
  met: Met,
  id: string,
  { book, today, quietDays }: { readonly book: Book; readonly today: string; readonly quietDays: number },
): Timing | null {
  const timing = byRow(row, met, id, book, today);
  return timing && row.lasts !== 'untilItFalls' ? quieted(timing, row, met, today, quietDays) : timing;
}
