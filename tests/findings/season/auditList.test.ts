/** Drawn books: every open duty to measure has its group in the list above what is known; plans, days made ready and money change no duty. */
import { expect, it } from 'vitest';
import { addDays } from '#core/calendar.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDuties } from '#findings/duties/findDuties.ts';
import { dueSoonDays } from '#findings/practice.ts';
import { needKinds } from '#findings/season/need.ts';
import { needsByDuty } from '#findings/season/needsOf.ts';
import { nextToMeasure } from '#findings/season/nextToMeasure.ts';
import type { Book, DayPlanRecord, ShiftRecord, SpendingRecord } from '#records/book.ts';
import { seededRandom } from '../../store/seeded.ts';
import {
  type Day,
  jobBook,
  olga,
  reliance,
  reported,
  rosterDay,
  shiftOn,
  tess,
  vic,
  worked,
} from '../duties/jobBook.ts';
import { base, factId, site, siteId } from '../sliceRegisters.ts';
import { missed, plan } from './seasonBook.ts';

const seed = Number(process.env.SEED ?? 20261125);
console.info(`what to measure next: seed ${seed} (SEED=… to change)`);
const { between, pick } = seededRandom(seed);
const times = Number(process.env.TIMES ?? 1);
const today = '2026-12-20';
const other = 's00000000002';
const crew = [tess, vic, olga];
const sites = (stateCode: string) => [
  site(),
  {
    ...site({ siteId: other, stateCode, setting: pick(['indoors', 'outdoors'] as const) }),
    id: other,
    key: `site:${other}`,
  },
];
const tasks = [['handScraping'], ['dustCleanup'], ['handScraping', 'windowTakeOut'], ['torchCutting']];
const someDay = () => addDays(today, -between(0, 300));
const someAt = () => pick([siteId, siteId, other]);

function drawnDay(): Day {
  return {
    workerId: pick(crew),
    workOn: someDay(),
    averageUgPerM3: pick([null, 4, 12, 29, 30, 33, 49, 50, 51, 400]),
    siteId: someAt(),
    taskIds: pick(tasks),
    regular: pick(['yes', 'yes', 'yes', 'no', null] as const),
    ...(between(0, 5) === 0 ? { flowAfter: false } : {}),
    ...(between(0, 6) === 0 ? { sample: { voided: { why: 'wet', factId: factId() } } } : {}),
  };
}
const answers = ['no', 'no', 'yes', 'notKnown'] as const;
function drawnShift(): ShiftRecord {
  const one = () => pick(answers);
  const changes = {
    equipment: one(),
    process: one(),
    control: one(),
    personnel: one(),
    newTask: one(),
    factId: factId(),
  };
  return shiftOn(someDay(), { changes } as Partial<ShiftRecord>, {}, someAt());
}
function drawnBook(): Book {
  const days = new Map<string, Day>();
  for (let i = between(0, 6); i > 0; i--) {
    const one = drawnDay();
    days.set(`${one.workerId} ${one.workOn}`, one);
  }
  const roster = new Map(
    Array.from({ length: between(0, 6) }, () => {
      const [who, on, at] = [pick(crew), someDay(), someAt()];
      return [`${who} ${on}`, { ...rosterDay(who, on, at), worked: [worked(on, at, pick(tasks))] }] as const;
    }).filter(([key]) => !days.has(key)),
  );
  const rep = Array.from({ length: between(0, 1) }, () =>
    reported({
      workOn: someDay(),
      workerId: pick([...crew, null]),
      siteId: pick([siteId, other, null]),
      from: pick(['consultant', 'otherEmployer', 'ownEarlier'] as const),
      average: pick([
        { kind: 'measured', twa8UgPerM3: pick([8, 30, 60]) },
        { kind: 'lessThan', twa8UgPerM3: 3 },
      ] as const) as never,
    }),
  );
  const rel = Array.from({ length: between(0, 1) }, () =>
    reliance({ shiftId: `${someAt()}.${someDay()}`, processes: pick(['alike', 'notKnown', 'unlike'] as const) }),
  );
  const shifts = Array.from({ length: between(0, 2) }, drawnShift);
  return jobBook({
    days: [...days.values()],
    roster: [...roster.values()],
    reported: rep,
    reliances: rel,
    sites: sites(pick(['TX', 'TX', 'CA'])) as never,
    shifts: shifts as never,
  });
}
const q = 'q00000000077';
const held = {
  held: 'rented',
  from: 'A hire',
  backOn: '2026-12-24',
  retired: true,
  factId: 'wwwwwwwwwwww.99999999',
} as const;
function withSeason(book: Book): Book {
  const slots = crew.map((workerId) => ({ workerId, workOn: someDay() }));
  const plans = [plan({ slots, taskIds: pick(tasks), missed: [missed(tess, someDay(), 'rainedOff')] })];
  const shiftId = `${siteId}.${someDay()}`;
  const wearer = {
    workerId: tess,
    planId: null,
    taskIds: pick(tasks),
    jobClassificationId: null,
    pumpId: q,
    lotId: null,
  };
  const prepared = {
    ...{
      asked: 'evening' as const,
      wearers: [wearer],
      sparePumpIds: [],
      spareCassettesCount: 1,
      chargedById: null,
      remark: null,
    },
    factId: factId(),
  };
  const labels = [{ sampleNumber: '120019', workerId: null, blank: false, factId: factId() }];
  const dayPlan: DayPlanRecord = { ...base('dayPlan', shiftId), siteId, workOn: shiftId.slice(-10), prepared, labels };
  const spending: SpendingRecord = {
    ...{
      ...base('spending', 'v00000000001'),
      spendingId: 'v00000000001',
      spentOn: someDay(),
      spentFor: 'analysis' as const,
    },
    ...{
      amountUsd: 26.5,
      count: null,
      siteId,
      boxId: null,
      bill: null,
      remark: null,
      spentFactId: factId(),
      struck: null,
    },
  };
  const charges = [{ at: `${someDay()}T12:00:00.000Z`, full: false, by: null, factId: factId() }];
  const pump = { ...base('pump', q), pumpId: q, serial: 'Q', model: null, held, charges };
  return {
    ...book,
    book: book.book && { ...book.book, prices: [] },
    plans: new Map(plans.map((one) => [one.id, one])),
    dayPlans: new Map([[shiftId, dayPlan]]),
    spendings: new Map([[spending.id, spending]]),
    pumps: new Map([[q, pump]]),
    meters: new Map([...book.meters].map(([id, one]) => [id, { ...one, held }])),
    lots: new Map([...book.lots].map(([id, one]) => [id, { ...one, held }])),
  };
}

function missing(book: Book, duties: DutiesOfBook): string[] {
  const byGroup = new Map(nextToMeasure(book, duties).map((one) => [one.groupKey, one]));
  return duties.duties.flatMap((duty) => {
    if (!needsByDuty[duty.kind] || duty.done) return [];
    const line = byGroup.get(duty.groupKey ?? '');
    const far =
      (duty.kind === 'sixMonthly' || duty.kind === 'quarterly') &&
      !duty.overdue &&
      duty.when === 'by' &&
      (duty.dueOn ?? '') > addDays(today, dueSoonDays.value);
    if (!line) return [`${duty.kind} of ${duty.groupKey}: no line`];
    if (far) return [];
    if (needKinds.indexOf(line.need.kind) >= needKinds.indexOf('known'))
      return [`${duty.kind} of ${duty.groupKey}: known`];
    const who = new Set(line.needs.flatMap(({ workerIds }) => workerIds));
    const lost = duty.workerIds.filter((id) => !who.has(id));
    return lost.length > 0 ? [`${duty.kind} of ${duty.groupKey}: not ${lost}`] : [];
  });
}
it('every open duty to measure has its group in the list, above what is known, with each of its workers', () => {
  let owed = 0;
  for (let i = 0; i < 25 * times; i++) {
    const book = drawnBook();
    const duties = findDuties(book, today);
    owed += duties.duties.filter((d) => needsByDuty[d.kind] && !d.done).length;
    expect(missing(book, duties)).toEqual([]);
  }
  expect(owed).toBeGreaterThan(100);
});

it('nothing that is planned, made ready, rented, charged or paid for changes what is found', () => {
  for (let i = 0; i < 10 * times; i++) {
    const book = drawnBook();
    expect(findDuties(withSeason(book), today)).toEqual(findDuties(book, today));
  }
});

it('the last of a site whose rule is not held speaks for that site alone', () => {
  const ca = { ...site({ siteId: other, stateCode: 'CA' }), id: other, key: `site:${other}` };
  const at = (job: Parameters<typeof jobBook>[0]) => {
    const book = jobBook({ ...job, sites: [site(), ca] });
    const [line] = nextToMeasure(book, findDuties(book, today));
    return line?.needs.map((one) => [one.kind, one.siteId]);
  };
  const known = { workerId: tess, workOn: '2026-12-15', averageUgPerM3: 4 };
  // measured in Texas; in California the same work was done yesterday and nobody measured it there
  expect(at({ days: [known], roster: [rosterDay(vic, '2026-12-19', other)] })).toContainEqual(['neverMeasured', other]);
  // 1 lies below the action level of 2 there (8 CCR 1532.1); it was no regular day
  const inVain = { workerId: vic, workOn: '2026-12-10', averageUgPerM3: 1, siteId: other, regular: 'no' } as const;
  expect(at({ days: [inVain, known] })).toContainEqual(['again', other]);
});
