/** Facts about plans, days made ready, gear and money as somebody wants to write them down, for tests. Plainly invented. */
import type { FactBody } from '#records/fact.ts';
import { at, ids, shiftId, type When, wanted } from './facts.ts';

export const planId = 'k00000000001';
export const doubtId = 'd00000000001';
export const spendingId = 'e00000000001';

export const siteAdded = () =>
  wanted('siteAdded.v1', {
    ...{ siteId: ids.site, name: 'Public library', stateCode: 'OH', setting: 'indoors', altitudeM: null },
    zone: 'America/New_York',
  });
export const pumpAdded = (pumpId: string = ids.pumpA) => wanted('pumpAdded.v1', { pumpId, serial: 'P-1', model: null });
export const meterAdded = () =>
  wanted('meterAdded.v1', {
    ...{ meterId: ids.meter, meterKind: 'soapFilm', serial: 'M-1', certificateOn: '2026-01-02', dueOn: null },
    ...{ calibrationTemperatureC: null, calibrationPressureKPa: null, pairs: [] },
  });

type Slots = FactBody<'measurementPlanned.v1'>['slots'];
export const slot = (workerId: string = ids.ana, workOn: string | null = '2026-12-01'): Slots[number] => ({
  ...{ workerId, workOn },
});
export const planned = (
  slots: Slots = [slot()],
  more: Partial<FactBody<'measurementPlanned.v1'>> = {},
  when: When = {},
) =>
  wanted(
    'measurementPlanned.v1',
    {
      ...{ planId, jobClassificationId: null, setting: 'indoors', taskIds: ['handScraping'], siteId: ids.site },
      ...{ season: 'winter 2026', crewCount: 3, choice: 'all', reason: null, slots, methodId: null },
      ...{ reportingLimitUg: null, flowLPerMin: null, cassettesCount: 1, remark: null, ...more },
    },
    when,
  );
export const missed = (workerId: string = ids.ana, workOn = '2026-12-01', time = '12:00') =>
  wanted(
    'plannedDayMissed.v1',
    { ...{ planId, workerId, workOn, because: 'rainedOff', remark: null } },
    { at: at(time) },
  );
export const dropped = (knew?: readonly string[], why: string | null = 'the job went to others') =>
  wanted('planDropped.v1', { planId, ...(knew === undefined ? {} : { knew: [...knew] }) }, { why });

type Prepared = FactBody<'dayPrepared.v1'>;
export const wearer = (workerId: string = ids.ana, pumpId: string | null = ids.pumpA): Prepared['wearers'][number] => ({
  ...{ workerId, planId: null, taskIds: ['handScraping'], jobClassificationId: null, pumpId, lotId: ids.lot },
});
export const madeReady = (wearers: Prepared['wearers'], more: Partial<Prepared> = {}) =>
  wanted('dayPrepared.v1', {
    ...{ shiftId, asked: 'morning', wearers, sparePumpIds: [], spareCassettesCount: 1, chargedById: ids.ben },
    ...{ remark: null, ...more },
  });
export const labelled = (numbers: readonly string[], day: string = shiftId) =>
  wanted('labelsMade.v1', {
    shiftId: day,
    labels: numbers.map((sampleNumber) => ({ sampleNumber, workerId: null, blank: false })),
  });

export const held = (how: 'owned' | 'rented' | 'lent', more: Partial<FactBody<'gearHeld.v1'>> = {}) =>
  wanted('gearHeld.v1', {
    ...{ gear: 'pump', gearId: ids.pumpA, held: how, from: null, backOn: null, retired: false, ...more },
  });
export const certificate = (certificateOn: string, dueOn: string | null, more: { knew?: string[] } = {}) =>
  wanted('certificateEntered.v1', {
    ...{ meterId: ids.meter, certificateOn, dueOn, by: null, calibrationTemperatureC: null },
    ...{ calibrationPressureKPa: null, pairs: [], ...more },
  });
export const doubted = (more: Partial<FactBody<'gearDoubted.v1'>> = {}) =>
  wanted('gearDoubted.v1', {
    ...{ gear: 'meter', gearId: ids.meter, doubtId, foundOn: '2026-11-25', fromOn: null, untilOn: null },
    ...{ found: 'It read one tenth too much', ...more },
  });
type Decision = FactBody<'gearDoubtSettled.v1'>['decision'];
export const settled = (
  decision: Decision,
  trueOverRead: number | null = null,
  knew: readonly string[] = [],
  why: string | null = 'held against the film',
  more: Partial<FactBody<'gearDoubtSettled.v1'>> = {},
) =>
  wanted(
    'gearDoubtSettled.v1',
    { ...{ gear: 'meter', gearId: ids.meter, doubtId, decision, trueOverRead, knew: [...knew] }, ...more },
    { why },
  );

export const prices = (fromOn: string, analysisUsd: number | null, knew: readonly string[] = []) =>
  wanted('pricesStated.v1', {
    ...{ bookId: ids.book, fromOn, analysisUsd, blankUsd: null, cassetteUsd: null, courierUsd: null, rushUsd: null },
    ...{ pumpRentalUsd: null, meterRentalUsd: null, consultantUsd: null, knew: [...knew] },
  });
export const spent = (amountUsd: number, more: Partial<FactBody<'moneySpent.v1'>> = {}) =>
  wanted('moneySpent.v1', {
    ...{ spendingId, spentOn: '2026-11-25', spentFor: 'analysis', amountUsd, count: null, siteId: null },
    ...{ boxId: null, bill: null, remark: null, ...more },
  });
export const unspent = (why: string | null = 'entered twice') => wanted('spendingStruck.v1', { spendingId }, { why });
