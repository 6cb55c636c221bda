/** What every piece of gear has: whose it is, whether it is in use, what was found of it; and when something of it is due. */
import { addDays } from '#core/calendar.ts';
import { type GearKind, type GearRecord, gearNumberOf, isDoubted } from './doubtsOf.ts';
import { doubtOf } from './gearDoubtsOf.ts';
import { dueSoonDays } from './gearNumbers.ts';
import type { GearHeadStanding, MeterDue } from './standings.ts';
import type { GearDoubtOf } from './touched.ts';

export const newestFirst = (a: GearDoubtOf, b: GearDoubtOf): number => (a.doubt.foundOn > b.doubt.foundOn ? -1 : 1);

export function headOf(gear: GearKind, record: GearRecord, today: string): GearHeadStanding {
  const { held = null, doubts = [] } = record;
  return {
    id: record.id,
    number: gearNumberOf(record),
    held,
    backOverdue: held !== null && held.held !== 'owned' && held.backOn !== null && held.backOn <= today,
    retired: held?.retired ?? false,
    doubts: doubts.map((doubt) => doubtOf(gear, record, doubt)).sort(newestFirst),
    doubtful: doubts.some(isDoubted),
  };
}

export function dueOf(dueOn: string | null, today: string): MeterDue {
  if (dueOn === null) return 'notKnown';
  if (dueOn < today) return 'overdue';
  return dueOn <= addDays(today, dueSoonDays.value) ? 'soon' : 'later';
}
