/** How long each wearer of a day must wear the pump until a result below the reporting limit can show anything, as far as a plan says. */
import type { Book } from '#records/book.ts';
import { limitSetOn } from '#reference/limits.ts';
import { sampleAhead } from './sampleAhead.ts';
import type { Tomorrow } from './tomorrowDay.ts';

/** `minutes` null: at that flow and limit no time of an eight-hour day suffices. */
export type LeastMinutes = { readonly kind: 'known'; readonly minutes: number | null } | { readonly kind: 'notKnown' };

/** Stands for the day's length while nobody worked it yet: eight hours, as the averages are over eight. */
const shiftMin = 480;

export function leastMinutes(planId: string | null, workOn: string, siteId: string, book: Book): LeastMinutes {
  const plan = planId === null ? undefined : book.plans.get(planId);
  if (plan === undefined || plan.reportingLimitUg === null || plan.flowLPerMin === null) return { kind: 'notKnown' };
  const { set } = limitSetOn(workOn, book.sites.get(siteId)?.stateCode ?? '');
  const ahead = sampleAhead({
    methodId: plan.methodId,
    reportingLimitUg: plan.reportingLimitUg,
    flowLPerMin: plan.flowLPerMin,
    shiftMin,
    cassettesCount: plan.cassettesCount,
    shareOfActionLevel: 1,
    dustMgPerM3: null,
    actionLevelUgPerM3: set.actionLevel.value,
    pelUgPerM3: set.pel.value,
    on: workOn,
  });
  return { kind: 'known', minutes: ahead.actionLevel.minutesNeededMin };
}

/** By worker, where it is known and can be reached. */
export function leastMinByWorker(day: Tomorrow, book: Book): ReadonlyMap<string, number> {
  const found = day.wearers.flatMap(({ workerId, planId }) => {
    const least = leastMinutes(planId, day.workOn, day.siteId, book);
    return least.kind === 'known' && least.minutes !== null ? [[workerId, least.minutes] as const] : [];
  });
  return new Map(found);
}
