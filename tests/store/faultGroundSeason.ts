/** What the acts about plans, days made ready, gear and money act upon, and one write for each of their kinds: see faultGround.ts. */
import type { FactBody, FactKind, NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { theSession } from '#store/session.ts';
import { nextFreeNumber } from '#store/write.ts';
import { entry } from './scenario.ts';

interface Laying {
  readonly day: { readonly [K in 'siteId' | 'personId' | 'shiftId' | 'pumpId' | 'meterId' | 'lotId']: string };
  readonly workOn: string;
  readonly write: (facts: readonly NewFact[]) => Promise<void>;
}

interface Act {
  readonly kind: FactKind;
  readonly fact: NewFact;
}

/** Lays a plan, a doubt and an entry of money; hands back what can be written next. */
export async function laySeason({ day, workOn, write }: Laying): Promise<readonly Act[]> {
  const { siteId, personId, shiftId, pumpId, meterId, lotId } = day;
  const planOf = (planId: string): FactBody<'measurementPlanned.v1'> => ({
    ...{ planId, jobClassificationId: null, setting: 'indoors', taskIds: ['handScraping'], siteId, season: null },
    ...{ crewCount: 1, choice: 'all', reason: null, slots: [{ workerId: personId, workOn }], methodId: null },
    ...{ reportingLimitUg: null, flowLPerMin: null, cassettesCount: 1, remark: null },
  });
  const spentOf = (spendingId: string): FactBody<'moneySpent.v1'> => ({
    ...{ spendingId, spentOn: workOn, spentFor: 'analysis', amountUsd: 24.5, count: 1, siteId, boxId: null },
    ...{ bill: null, remark: null },
  });
  const doubtOf = (doubtId: string): FactBody<'gearDoubted.v1'> => ({
    ...{ gear: 'meter', gearId: meterId, doubtId, foundOn: workOn, fromOn: null, untilOn: null, found: 'read high' },
  });
  const [planId, spendingId, doubtId] = [newId(), newId(), newId()];
  await write([newFact('measurementPlanned.v1', planOf(planId), entry())]);
  await write([newFact('moneySpent.v1', spentOf(spendingId), entry())]);
  await write([newFact('gearDoubted.v1', doubtOf(doubtId), entry())]);

  const acts: Act[] = [];
  const act = <K extends FactKind>(kind: K, body: FactBody<K>, why: string | null = null) =>
    acts.push({ kind, fact: newFact(kind, body, { ...entry(), why }) });
  act('measurementPlanned.v1', planOf(newId()));
  act('plannedDayMissed.v1', { planId, workerId: personId, workOn, because: 'rainedOff', remark: null });
  act('planDropped.v1', { planId }, 'the work was given to others');
  const wearer = { workerId: personId, planId, taskIds: ['handScraping'], jobClassificationId: null, pumpId, lotId };
  act('dayPrepared.v1', {
    ...{ shiftId, asked: 'evening', wearers: [wearer], sparePumpIds: [], spareCassettesCount: 1 },
    ...{ chargedById: null, remark: null },
  });
  act('labelsMade.v1', { shiftId, labels: [{ sampleNumber: nextFreeNumber, workerId: personId, blank: false }] });
  const rented = { held: 'rented', from: 'Quern Hill', backOn: null, retired: false } as const;
  act('gearHeld.v1', { gear: 'pump', gearId: pumpId, ...rented });
  act('pumpCharged.v1', { pumpId, full: true, remark: null });
  act('certificateEntered.v1', {
    ...{ meterId, certificateOn: workOn, dueOn: null, by: null, calibrationTemperatureC: null },
    ...{ calibrationPressureKPa: null, pairs: [] },
  });
  act('gearDoubted.v1', doubtOf(newId()));
  const settling = { gear: 'meter', gearId: meterId, doubtId, decision: 'noEffect', trueOverRead: null } as const;
  act('gearDoubtSettled.v1', settling, 'checked against the film: it read right');
  act('pricesStated.v1', {
    ...{ bookId: theSession().bookId, fromOn: workOn, analysisUsd: 24, blankUsd: null, cassetteUsd: null },
    ...{ courierUsd: null, rushUsd: null, pumpRentalUsd: null, meterRentalUsd: null, consultantUsd: null },
  });
  act('moneySpent.v1', spentOf(newId()));
  act('spendingStruck.v1', { spendingId }, 'entered twice');
  return acts;
}
