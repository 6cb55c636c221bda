/** Prices and bills of the season. Every amount is invented; what one cassette costs nobody has worked out yet. */
import type { FactBody, NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { theSession } from '#store/session.ts';
import { season as words } from '#words/practiceSeason.ts';
import type { SeasonClock } from './seasonClock.ts';
import type { SeasonIds } from './seasonIds.ts';
import type { ShiftFacts } from './seasonShift.ts';

const { money: named } = words;

/** The laboratory asks for more from this day on. */
const dearerDaysAgo = 60;
const analysisUsd = (daysAgo: number): number => (daysAgo > dearerDaysAgo ? 22 : 23.5);
const courierUsd = 18.4;

function prices(daysAgo: number, { at, fact, on }: SeasonClock): NewFact {
  return fact(at(daysAgo, '17:30'), 'pricesStated.v1', {
    ...{ bookId: theSession().bookId, fromOn: on(daysAgo), cassetteUsd: null },
    ...{ analysisUsd: analysisUsd(daysAgo), blankUsd: analysisUsd(daysAgo), courierUsd, consultantUsd: 640 },
    ...{ rushUsd: 15, pumpRentalUsd: 12.5, meterRentalUsd: 9 },
  });
}

/** Whoever stated them knew of the ones before: written after the rest. */
export const pricesAnew = (clock: SeasonClock): NewFact => prices(dearerDaysAgo, clock);

export function seasonMoney(shifts: readonly ShiftFacts[], ids: SeasonIds, clock: SeasonClock): NewFact[] {
  const { at, fact, on } = clock;
  type Bill = Pick<FactBody<'moneySpent.v1'>, 'spentFor' | 'amountUsd'> & Partial<FactBody<'moneySpent.v1'>>;
  const spent = (daysAgo: number, bill: Bill): NewFact =>
    fact(at(daysAgo, '12:30'), 'moneySpent.v1', {
      ...{ spendingId: newId(), spentOn: on(daysAgo), count: null, siteId: null, boxId: null, bill: null },
      ...{ remark: null, ...bill },
    });
  const analyses = shifts.flatMap(({ billed }, place) => {
    if (billed === null) return [];
    const { boxId, count, daysAgo } = billed;
    const amountUsd = count * analysisUsd(daysAgo);
    return [spent(daysAgo, { spentFor: 'analysis', amountUsd, count, boxId, bill: named.bill(place) })];
  });
  const courier = (daysAgo: number, count: number, siteId: string, place: number): NewFact =>
    spent(daysAgo, {
      ...{ spentFor: 'courier', amountUsd: Math.round(count * courierUsd * 100) / 100, count, siteId },
      bill: named.courierBill(place),
    });
  const twice = newId();
  const { hireBill, calibrationBill, cassettesBill, rented, calibrated } = named;
  return [
    prices(118, clock),
    ...analyses,
    courier(70, 8, ids.bridge, 1),
    courier(45, 6, ids.site, 2),
    courier(13, 4, ids.bridge, 3),
    spent(110, { spentFor: 'cassettes', amountUsd: 210, count: 50, bill: cassettesBill }),
    spent(38, { spentFor: 'calibration', amountUsd: 145, bill: calibrationBill, remark: calibrated }),
    spent(8, { spentFor: 'rental', amountUsd: 62.5, count: 5, siteId: ids.bridge, bill: hireBill, remark: rented }),
    spent(12, { spendingId: twice, spentFor: 'courier', amountUsd: 73.6, count: 4, bill: named.courierBill(3) }),
    { ...fact(at(11, '09:00'), 'spendingStruck.v1', { spendingId: twice }), why: named.twice },
  ];
}
