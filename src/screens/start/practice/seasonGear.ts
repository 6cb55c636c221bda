/**
 * Gear of the season beside the entries: rented, lent and out of use, a newer certificate, a lot that was found bad and nobody has decided
 * on, a pump that fell and was shown to be as before, and what was charged last evening.
 */
import type { FactBody, NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { practice } from '#words/practice.ts';
import { season as words } from '#words/practiceSeason.ts';
import type { PracticeIds } from '../practiceBook.ts';
import type { PracticeClock } from '../practiceClock.ts';
import type { SeasonClock } from './seasonClock.ts';
import type { SeasonIds } from './seasonIds.ts';
import { beganDaysAgo } from './seasonRegisters.ts';

const { gear: named } = words;

/** Before the first shift, since one of the lots is worn in it. */
export function seasonGearEntries(ids: SeasonIds, { at, fact, on }: SeasonClock): NewFact[] {
  const then = at(beganDaysAgo, '06:00');
  const pump = (pumpId: string, serial: string): NewFact =>
    fact(then, 'pumpAdded.v1', { pumpId, serial, model: practice.pumpModel });
  const lot = (lotId: string, lotNumber: string, expiresOn: string): NewFact =>
    fact(then, 'lotAdded.v1', { lotId, lotNumber, media: practice.media, expiresOn });
  return [
    pump(ids.pumpSeven, named.rentedPump),
    lot(ids.oldLot, named.lots.old, on(-20)),
    lot(ids.newLot, named.lots.newer, on(-640)),
    fact(then, 'meterAdded.v1', {
      ...{ meterId: ids.tubeTwo, meterKind: 'rotameter', serial: named.tube },
      ...{ certificateOn: on(400), dueOn: on(35), calibrationTemperatureC: 21, calibrationPressureKPa: 101.3 },
      pairs: [
        { readLPerMin: 1, trueLPerMin: 1.01 },
        { readLPerMin: 2, trueLPerMin: 2.02 },
        { readLPerMin: 4, trueLPerMin: 4.04 },
      ],
    }),
    fact(then, 'meterAdded.v1', {
      ...{ meterId: ids.oldMeter, meterKind: 'dryPiston', serial: named.oldMeter, certificateOn: on(700) },
      ...{ dueOn: on(335), calibrationTemperatureC: null, calibrationPressureKPa: null, pairs: [] },
    }),
    fact(then, 'meterAdded.v1', {
      ...{ meterId: ids.lentPiston, meterKind: 'dryPiston', serial: named.lentPiston },
      ...{ certificateOn: on(350), dueOn: on(-15), calibrationTemperatureC: null, calibrationPressureKPa: null },
      pairs: [],
    }),
  ];
}

/** What came to be known of it in the course of the season. */
export function seasonGear(ids: SeasonIds, { at, fact, on }: SeasonClock): NewFact[] {
  const held = (daysAgo: number, body: FactBody<'gearHeld.v1'>, why: string | null = null): NewFact => ({
    ...fact(at(daysAgo, '17:00'), 'gearHeld.v1', body),
    why,
  });
  const pump = { gear: 'pump', from: null, backOn: null, retired: false } as const;
  const [fallen, leaking] = [newId(), newId()];
  return [
    held(118, { ...pump, gearId: ids.pumpOne, held: 'owned' }),
    held(30, { ...pump, gear: 'meter', gearId: ids.oldMeter, held: 'owned', retired: true }, named.retired),
    held(12, { ...pump, gearId: ids.pumpSeven, held: 'rented', from: named.hire, backOn: on(-9) }),
    held(40, { ...pump, gear: 'meter', gearId: ids.lentPiston, held: 'lent', from: words.subcontractor }),
    fact(at(38, '17:00'), 'certificateEntered.v1', {
      ...{ meterId: ids.tubeTwo, certificateOn: on(38), dueOn: on(-327), by: named.calibratedBy },
      ...{ calibrationTemperatureC: 20, calibrationPressureKPa: 100.8 },
      pairs: [
        { readLPerMin: 1, trueLPerMin: 0.98 },
        { readLPerMin: 2, trueLPerMin: 1.97 },
        { readLPerMin: 4, trueLPerMin: 3.95 },
      ],
    }),
    fact(at(27, '08:00'), 'gearDoubted.v1', {
      ...{ gear: 'pump', gearId: ids.pumpFive, doubtId: fallen, found: named.fell },
      ...{ foundOn: on(27), fromOn: on(28), untilOn: on(28) },
    }),
    {
      ...fact(at(26, '08:00'), 'gearDoubtSettled.v1', {
        ...{ gear: 'pump', gearId: ids.pumpFive, doubtId: fallen, decision: 'noEffect', trueOverRead: null },
      }),
      why: named.noEffect,
    },
    fact(at(15, '12:00'), 'gearDoubted.v1', {
      ...{ gear: 'lot', gearId: ids.oldLot, doubtId: leaking, found: named.leaking },
      ...{ foundOn: on(15), fromOn: null, untilOn: null },
    }),
  ];
}

/** Put on their chargers: last evening, and one of them again today. */
export function chargedPumps(ids: SeasonIds & PracticeIds, { ago, at, fact }: PracticeClock): NewFact[] {
  const charged = (instant: string, pumpId: string, remark: string | null = null): NewFact =>
    fact(instant, 'pumpCharged.v1', { pumpId, full: remark === null, remark });
  return [
    charged(at('18:20'), ids.pumpOne),
    charged(at('18:25'), ids.pumpTwo),
    charged(at('18:30'), ids.pumpSix, named.halfCharged),
    charged(ago(60), ids.pumpThree),
    charged(ago(55), ids.pumpSeven),
  ];
}
