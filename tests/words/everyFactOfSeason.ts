/** Bodies of the kinds about plans, days made ready, gear and money, for sentences. Plainly invented; see everyFact.ts. */
import type { FactBody, FactKind } from '#records/fact.ts';
import { ids, shiftId } from '../records/facts.ts';

const planId = 'p90000000001';
const doubtId = 'd90000000001';
const spendingId = 'e90000000001';
const factId = 'wwwwwwwwwwww.00000001';

export const everyBodyOfSeason = {
  'measurementPlanned.v1': {
    ...{ planId, jobClassificationId: null, setting: 'indoors', taskIds: ['handScraping'], siteId: ids.site },
    ...{ season: 'winter 2026', crewCount: 12, choice: 'highest', reason: 'He scrapes the ceilings' },
    slots: [
      { workerId: ids.ana, workOn: '2026-12-01' },
      { workerId: ids.ben, workOn: null },
    ],
    ...{ methodId: null, reportingLimitUg: 2.5, flowLPerMin: 2, cassettesCount: 2, remark: 'Before the frost' },
    knew: [factId],
  },
  'plannedDayMissed.v1': { planId, workerId: ids.ana, workOn: '2026-12-01', because: 'rainedOff', remark: null },
  'planDropped.v1': { planId, knew: [] },
  'dayPrepared.v1': {
    ...{ shiftId, asked: 'evening', sparePumpIds: [ids.pumpB], spareCassettesCount: 2, chargedById: ids.ben },
    wearers: [
      {
        ...{ workerId: ids.ana, planId, taskIds: ['handScraping'], jobClassificationId: null },
        ...{ pumpId: ids.pumpA, lotId: ids.lot },
      },
    ],
    remark: null,
    knew: [],
  },
  'labelsMade.v1': {
    shiftId,
    labels: [
      { sampleNumber: '120019', workerId: ids.ana, blank: false },
      { sampleNumber: '120027', workerId: null, blank: true },
    ],
  },
  'gearHeld.v1': {
    ...{ gear: 'pump', gearId: ids.pumpA, held: 'rented', from: 'Quern Hill Rental', backOn: '2026-12-10' },
    ...{ retired: false, knew: [] },
  },
  'pumpCharged.v1': { pumpId: ids.pumpA, full: true, remark: null },
  'certificateEntered.v1': {
    ...{ meterId: ids.meter, certificateOn: '2026-11-20', dueOn: null, by: 'Quern Hill', calibrationTemperatureC: 20 },
    ...{ calibrationPressureKPa: null, pairs: [{ readLPerMin: 2, trueLPerMin: 2.1 }], knew: [] },
  },
  'gearDoubted.v1': {
    ...{ gear: 'meter', gearId: ids.meter, doubtId, foundOn: '2026-11-25', fromOn: null, untilOn: '2026-11-24' },
    found: 'It read one tenth too much',
  },
  'gearDoubtSettled.v1': {
    ...{ gear: 'meter', gearId: ids.meter, doubtId, decision: 'asFound', trueOverRead: 0.9, knew: [] },
  },
  'pricesStated.v1': {
    ...{ bookId: ids.book, fromOn: '2026-11-01', analysisUsd: 24, blankUsd: null, cassetteUsd: 3.5, courierUsd: 60 },
    ...{ rushUsd: null, pumpRentalUsd: 12, meterRentalUsd: 9, consultantUsd: null, knew: [] },
  },
  'moneySpent.v1': {
    ...{ spendingId, spentOn: '2026-11-25', spentFor: 'analysis', amountUsd: 168, count: 7, siteId: ids.site },
    ...{ boxId: ids.box, bill: 'B-12', remark: null },
  },
  'spendingStruck.v1': { spendingId, knew: [] },
} satisfies { readonly [K in FactKind]?: FactBody<K> };
