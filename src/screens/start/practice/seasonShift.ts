/** One shift of the season as facts: opened, asked, who was there, and for whoever was measured all that a sound sample needs. */
import type { NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { nextFreeNumber } from '#store/write.ts';
import { practice } from '#words/practice.ts';
import { season as words } from '#words/practiceSeason.ts';
import type { SeasonClock } from './seasonClock.ts';
import type { SeasonIds, Worker } from './seasonIds.ts';
import type { Measured, Shift } from './seasonPlan.ts';

const methodId = 'niosh-7082';
const reportingLimitUg = 2.5;
/** Both readings alike; with 480 minutes exactly 960 L. */
const flowLPerMin = 2;

export interface ShiftFacts {
  readonly facts: readonly NewFact[];
  /** Sample and void, where one was voided, so that somebody can say what becomes of it. */
  readonly voidedSampleId: string | null;
  /** What the laboratory sends a bill for; null where nothing was sent, or no result is there. */
  readonly billed: { readonly boxId: string; readonly count: number; readonly daysAgo: number } | null;
}

const jobOf = (worker: Worker, ids: SeasonIds): string =>
  worker === 'first' ? ids.restorer : worker === 'second' || worker === 'dora' ? ids.painter : ids.steelPainter;

function presence(shift: Shift, shiftId: string, ids: SeasonIds, clock: SeasonClock): NewFact[] {
  const { at, fact, on } = clock;
  const { daysAgo, conditions, crew, tasks, respirator, asked } = shift;
  const open = fact(at(daysAgo, '06:20'), 'shiftOpened.v1', { shiftId, siteId: ids[shift.site], workOn: on(daysAgo) });
  const no = { equipment: 'no', process: 'no', control: 'no', personnel: 'no', newTask: 'no' } as const;
  const isNoted = asked !== undefined || shift.measured !== undefined;
  return [
    open,
    ...(asked ? [fact(at(daysAgo, '06:25'), 'changesAsked.v1', { shiftId, ...no, ...asked })] : []),
    ...(isNoted ? [fact(at(daysAgo, '15:20'), 'conditionsNoted.v1', { shiftId, ...conditions, remark: null })] : []),
    ...crew.map((worker) =>
      fact(at(daysAgo, '15:25'), 'workNoted.v1', {
        workdayId: `${ids[worker]}.${on(daysAgo)}`,
        shiftId,
        taskIds: [...tasks],
        jobClassificationId: jobOf(worker, ids),
        respirator,
      }),
    ),
  ];
}

const pumpNames = ['pumpFour', 'pumpFive', 'pumpSix'] as const;

function sampled(given: Measured, index: number, shift: Shift, ids: SeasonIds, clock: SeasonClock) {
  const { at, fact, on } = clock;
  const { daysAgo, tasks, lot = 'lot' } = shift;
  const { worker } = given;
  const lotId = ids[lot];
  const [sampleId, shiftId, pumpId] = [
    newId(),
    `${ids[shift.site]}.${on(daysAgo)}`,
    ids[pumpNames[index] ?? 'pumpFour'],
  ];
  const workdayId = `${ids[worker]}.${on(daysAgo)}`;
  const time = (text: string): string => at(daysAgo, text);
  const [endTime, pumpMin] = given.cutShort ? ['11:00', 240] : ['15:00', 480];
  const check = (when: string, purpose: 'before' | 'after'): NewFact =>
    fact(time(when), 'flowChecked.v1', {
      ...{ flowCheckId: newId(), shiftId, pumpId, meterId: ids.oldPiston, lotId, purpose },
      inLine: 'representativeCassette',
      readings: [flowLPerMin, flowLPerMin, flowLPerMin].map((flow) => ({ lowLPerMin: flow, highLPerMin: flow })),
      ...{ temperatureC: null, pressureKPa: null, remark: null },
    });
  const points = { pumpSecured: true, tubingSecured: true, breathingZone: true, outsideRespirator: true };
  const facts: NewFact[] = [
    check('06:30', 'before'),
    fact(time('06:40'), 'samplePrepared.v1', {
      ...{ sampleId, sampleNumber: nextFreeNumber, shiftId, workerId: ids[worker], pumpId, lotId },
      ...{ taskIds: [...tasks], jobClassificationId: jobOf(worker, ids), follows: null },
    }),
    fact(time('06:50'), 'fittingChecked.v1', {
      ...{ sampleId, mode: 'fitted', observationOffered: true, initials: words.initials[worker] },
      points: { ...points, insideHelmet: null, inletDown: true, plugsOff: true, running: true },
      language: worker === 'second' || worker === 'maya' ? 'es' : 'en',
    }),
    fact(time('07:00'), 'pumpPutOn.v1', { sampleId }),
    fact(time(endTime), 'pumpStopped.v1', { sampleId, pumpMin }),
    check('15:10', 'after'),
    ...(given.void
      ? [
          fact(time('15:11'), 'mishapNoted.v1', { sampleId, mishap: 'wet', remark: words.foundWet }),
          { ...fact(time('15:12'), 'sampleVoided.v1', { sampleId }), why: words.foundWet },
        ]
      : []),
    fact(time('15:14'), 'cassetteSealed.v1', {
      ...{ sampleId, labelled: true, lockedIn: practice.lockedIn, lockedById: ids.supervisor },
    }),
    fact(time('15:30'), 'workHoursStated.v1', {
      workdayId,
      pieces: [{ startedAt: time('07:00'), endedAt: time(endTime), place: null, employer: null }],
    }),
    fact(time('15:31'), 'otherWorkAsked.v1', { workdayId, callOut: 'no', secondSite: 'no', secondEmployer: 'no' }),
    fact(time('15:32'), 'dayDescribed.v1', {
      ...{ workdayId, regular: given.cutShort ? 'no' : 'yes', reason: given.cutShort ? words[given.cutShort] : null },
    }),
  ];
  return { sampleId, facts };
}

function sent(
  boxId: string,
  sampleIds: readonly string[],
  count: number,
  shift: Shift,
  ids: SeasonIds,
  clock: SeasonClock,
): NewFact[] {
  const { at, fact } = clock;
  const { daysAgo } = shift;
  return [
    fact(at(daysAgo, '16:00'), 'boxPacked.v1', {
      ...{ boxId, siteId: ids[shift.site], sampleIds: [...sampleIds], laboratoryId: ids.laboratory },
      ...{ samplerId: ids.supervisor, analysis: practice.analysis, methodId, reportingLimitUg },
      ...{ includeWallDeposit: true, callBeforeReanalysis: true, turnaround: practice.turnaround },
      ...{ workersShownAs: 'identifier', remark: null },
    }),
    fact(at(daysAgo, '16:30'), 'boxHandedOver.v1', {
      ...{ boxId, to: practice.courier, trackingNumber: words.track(count), sealed: true },
    }),
    fact(at(daysAgo - 2, '09:00'), 'boxArrived.v1', { boxId, remark: null }),
  ];
}

const resultDaysAgo = (shift: Shift): number => shift.resultDaysAgo ?? shift.daysAgo - 7;

function result(
  sampleId: string,
  count: number,
  { massUg }: Measured,
  shift: Shift,
  ids: SeasonIds,
  clock: SeasonClock,
) {
  const { at, fact, on } = clock;
  const daysAgo = resultDaysAgo(shift);
  return fact(at(daysAgo, '10:00'), 'resultReceived.v1', {
    ...{
      sampleId,
      reportNumber: words.report(count),
      laboratoryId: ids.laboratory,
      accreditation: practice.accreditation,
    },
    ...{ methodId, receivedOn: on(daysAgo), reportedOn: on(daysAgo), analysedOn: on(daysAgo + 1) },
    mass:
      typeof massUg === 'number'
        ? { kind: 'measured', massUg }
        : { kind: 'lessThan', reportingLimitUg: massUg.lessThanUg },
    ...{ reportingLimitUg, blankCorrected: 'yes', wallDeposit: 'yes', laboratoryVolumeL: null },
    ...{ laboratoryConcentrationUgPerM3: null, saeFraction: null, remark: null },
  });
}

/** `count`: place in the season, for the numbers of reports and boxes. */
export function seasonShift(shift: Shift, count: number, ids: SeasonIds, clock: SeasonClock): ShiftFacts {
  const shiftId = `${ids[shift.site]}.${clock.on(shift.daysAgo)}`;
  const measured = shift.measured ?? [];
  const taken = measured.map((given, index) => sampled(given, index, shift, ids, clock));
  const voided = measured.findIndex((given) => given.void === true);
  const sampleIds = taken.map(({ sampleId }) => sampleId);
  const boxed = sampleIds.filter((_, index) => measured[index]?.waits !== 'notSent');
  const boxId = newId();
  const resultsCount = measured.filter(({ waits }) => waits === undefined).length;
  return {
    facts: [
      ...presence(shift, shiftId, ids, clock),
      ...taken.flatMap(({ facts }) => facts),
      ...(boxed.length > 0 ? sent(boxId, boxed, count, shift, ids, clock) : []),
      ...measured.flatMap((given, index) =>
        given.waits ? [] : [result(sampleIds[index] ?? '', count, given, shift, ids, clock)],
      ),
    ],
    voidedSampleId: sampleIds[voided] ?? null,
    billed: resultsCount === 0 ? null : { boxId, count: resultsCount, daysAgo: resultDaysAgo(shift) },
  };
}
