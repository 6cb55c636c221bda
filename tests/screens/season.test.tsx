/**
 * The season of the practice book as it opens: what must be found in it so that every duty and paper can be reached from it. Figures by
 * hand: mass over 0.96 m³, which is 480 minutes at 2 L/min.
 */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { daysBetween } from '#core/calendar.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDuties } from '#findings/duties/findDuties.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import { gearStanding } from '#findings/gear/gearStanding.ts';
import { touchedBy } from '#findings/gear/touchedBy.ts';
import { moneyOfSeason } from '#findings/season/money.ts';
import { needKinds } from '#findings/season/need.ts';
import { nextToMeasure } from '#findings/season/nextToMeasure.ts';
import { planStanding } from '#findings/season/plan.ts';
import { tomorrowOf } from '#findings/season/tomorrow.ts';
import type { Book } from '#records/book.ts';
import { gearFacts } from '#records/facts/gear.ts';
import { moneyFacts } from '#records/facts/money.ts';
import { seasonFacts } from '#records/facts/season.ts';
import { checkSampleNumber } from '#records/sampleNumber.ts';
import { openPractice } from '#screens/start/begin.ts';
import shared from '#shared/duties/us-fed-constr-lead.json' with { type: 'json' };
import { hashOf } from '#store/files.ts';
import { theSession } from '#store/session.ts';
import { wholeBook } from '#store/wholeBook.ts';
import { emptyOffice, leaveOffice } from './office.tsx';

const today = '2026-11-25';
let book: Book;
let found: DutiesOfBook;

beforeAll(async () => {
  await emptyOffice();
  expect(await openPractice()).toEqual({ kind: 'open', next: '/' });
  book = await wholeBook(theSession().db);
  found = findDuties(book, today);
}, 60_000);
afterAll(leaveOffice);

const named = (id: string | null): string => book.people.get(id ?? '')?.name ?? '';
const measured = (): Measurement[] => [...found.measurements.values()];

function measuredOf(name: string, daysAgo: number): Measurement {
  const one = measured().find(
    ({ workerId, workOn, from }) =>
      named(workerId) === name && daysBetween(workOn, today) === daysAgo && from === 'sampled',
  );
  if (!one) throw new Error(`no measurement of ${name} ${daysAgo} days ago`);
  return one;
}

describe('figures of every kind', () => {
  test.each([
    ['above the PEL', 'Rex Rivet', 112, 180, 'abovePel'],
    ['between', 'Rex Rivet', 84, 44, 'actionLevelToPel'],
    ['below', 'Otto Oakum', 75, 18, 'belowActionLevel'],
    ['exactly at the PEL', 'Maya Mallet', 78, 50, 'actionLevelToPel'],
    ["a subcontractor's worker", 'Sam Scaffold', 28, 33, 'actionLevelToPel'],
  ] as const)('%s', (_, name, daysAgo, value, band) => {
    const one = measuredOf(name, daysAgo);
    expect(one).toMatchObject({ band, twa8UgPerM3: { kind: 'exact' } });
    expect(one.twa8UgPerM3?.kind === 'exact' && one.twa8UgPerM3.value).toBeCloseTo(value, 9);
  });

  test('less than the reporting limit is bounded, and proves', () => {
    expect(measuredOf('Dora Dowel', 88)).toMatchObject({ twa8UgPerM3: { lower: 0 }, provesBelowActionLevel: true });
  });

  test('void with a high result keeps what it shows, and proves nothing', () => {
    expect(measuredOf('Maya Mallet', 56)).toMatchObject({
      ...{ band: 'abovePel', atOrAbovePel: 'yes', atLeastOnly: true, twa8UgPerM3: { kind: 'atLeast' } },
    });
  });

  test('rained off, then measured again', () => {
    expect(measuredOf('Maya Mallet', 35)).toMatchObject({ provesBelowActionLevel: false });
    expect(measuredOf('Maya Mallet', 28)).toMatchObject({ provesBelowActionLevel: true });
  });

  test("a consultant's of last year, and an inspector's that judges ours of that day", () => {
    expect(measured().map(({ from }) => from)).toEqual(expect.arrayContaining(['consultant', 'inspector']));
    expect(measuredOf('Rex Rivet', 42).twa8UgPerM3).toEqual({ kind: 'exact', value: 43 });
  });
});

describe('whatever the rule asks can be reached', () => {
  const kinds: readonly string[] = shared.duties.map(({ kind }) => kind);

  test.each(kinds)('%s', (kind) => {
    expect(found.duties.filter((duty) => duty.kind === kind)).not.toEqual([]);
  });

  test('every schedule, every outcome of a determination, written, standing and to be looked at again', () => {
    const schedules = new Set(found.courses.map(({ schedule }) => schedule));
    expect([...schedules].sort()).toEqual(['none', 'quarterly', 'sixMonthly', 'undetermined']);
    const outcomes = new Set(found.determinations.map(({ outcome }) => outcome));
    expect([...outcomes].sort()).toEqual(['negativeMayBeWritten', 'open', 'positive']);
    const written = found.determinations.filter(({ writtenId }) => writtenId !== null);
    expect(written.map(({ differsFromRecord }) => differsFromRecord).sort()).toEqual([false, true]);
  });

  test('notices posted, handed over, read aloud, and one that somebody would not sign', () => {
    const ways = new Set([...book.notices.values()].flatMap(({ given }) => given.map(({ how }) => how)));
    expect([...ways].sort()).toEqual(['handedOver', 'posted', 'readAloud', 'refusedToSign']);
  });
});

describe('what follows', () => {
  test('notices in time, one late, and those that are left to whoever practises', () => {
    const open = found.notices.filter(({ openIds }) => openIds.length > 0);
    expect(open.map(({ overdue }) => overdue).sort()).toEqual([false, false, false, true, true]);
    const late = found.notices.filter(({ toldLate }) => toldLate);
    expect(late.map(({ measurementId }) => measurementId)).toEqual([measuredOf('Maya Mallet', 78).id]);
    expect(found.notices.length - open.length - late.length).toBeGreaterThan(10);
  });

  test('a revised report asks for a notice of its own', () => {
    const revised = found.notices.filter(({ kind }) => kind === 'revised');
    // 32.64 µg over 0.96 m³
    const first = measuredOf('Pia Putty', 81);
    expect(first.twa8UgPerM3?.kind === 'exact' && first.twa8UgPerM3.value).toBeCloseTo(34, 9);
    expect(revised.map(({ measurementId, openIds }) => [measurementId, openIds.map(named)])).toEqual([
      [first.id, ['Pia Putty']],
    ]);
  });

  test('a positive determination is written, and negative ones may be, one of them on an earlier measurement', () => {
    const outcomes = found.determinations.map(({ siteId, outcome, writtenId, differsFromRecord }) => ({
      site: book.sites.get(siteId)?.name,
      ...{ outcome, isWritten: writtenId !== null, differsFromRecord },
    }));
    const negative = { outcome: 'negativeMayBeWritten', isWritten: false, differsFromRecord: false };
    expect(outcomes).toContainEqual({ ...negative, site: 'Tallow Street Library' });
    expect(outcomes).toContainEqual({ ...negative, site: 'Chandler Lane Reading Room' });
    expect(outcomes).toContainEqual({
      ...{ site: 'Heron Weir Footbridge', outcome: 'positive', isWritten: true, differsFromRecord: false },
    });
  });

  test('one course stops, one steps down, two go on', () => {
    const steps = found.courses.map(({ workerId, steps: taken }) => `${named(workerId)} ${taken.at(-1)?.why}`);
    expect(steps).toEqual(expect.arrayContaining(['Otto Oakum stops', 'Rex Rivet stepsDown', 'Maya Mallet begins']));
  });

  test('more than thirty days at or above the action level, workers of another firm, duties done and to do', () => {
    const many = [...found.exposureDays.values()].filter(({ moreThanThirty }) => moreThanThirty);
    expect(many.map(({ workerId }) => named(workerId)).sort()).toEqual(['Maya Mallet', 'Rex Rivet']);
    expect([...book.people.values()].filter(({ employer }) => employer !== null)).toHaveLength(1);
    // more than seven of them make the lists to choose from long ones
    expect([book.people.size, book.pumps.size]).toEqual([7, 7]);
    const kinds = new Set(found.duties.map(({ kind, done }) => `${kind} ${done === null ? 'open' : 'done'}`));
    const some = [
      'programme done',
      'training done',
      'notice done',
      'notice open',
      'quarterly open',
      'recordsAccess open',
    ];
    expect([...kinds]).toEqual(expect.arrayContaining(some));
  });
});

describe('the season ahead', () => {
  test.each(Object.keys({ ...seasonFacts, ...gearFacts, ...moneyFacts }))('%s is in it', async (kind) => {
    const texts = (await theSession().db.journal.toArray()).map(({ text }) => text);
    expect(texts.filter((text) => text.includes(`"kind":"${kind}"`))).not.toEqual([]);
  });

  test.each(needKinds)('something needs to be measured, or not: %s', (kind) => {
    const needs = nextToMeasure(book, found).flatMap((group) => group.needs);
    expect(needs.filter((one) => one.kind === kind)).not.toEqual([]);
  });

  const slots = () => [...book.plans.values()].flatMap((plan) => planStanding(plan, book, found).slots);

  test.each([
    ...(['done', 'onTheWorker', 'notSent', 'withTheLaboratory', 'toDo'] as const),
    ...(['declined', 'rainedOff', 'otherWork', 'notAtWork', 'gear', 'other'] as const),
    ...(['void', 'irregularDay', 'doubtful', 'otherTasks', 'passed', 'ahead', 'dayOpen'] as const),
  ])('a place of a plan came to this: %s', (outcome) => {
    expect(slots().filter(({ state, why }) => state === outcome || why === outcome)).not.toEqual([]);
  });

  test('whom the plans name: everyone of a small crew, some of ten by lot, one with the reason; one is given up', () => {
    const plans = [...book.plans.values()];
    const byLot = plans.filter(({ choice }) => choice === 'random');
    expect(byLot.map(({ crewCount, slots }) => [crewCount, slots.length])).toEqual([[10, 9]]);
    const drawn = byLot.flatMap((plan) => plan.slots.map(({ workerId }) => named(workerId)));
    expect([...new Set(drawn)].sort()).toEqual(['Maya Mallet', 'Rex Rivet', 'Sam Scaffold']);
    expect(plans.filter(({ choice, reason }) => choice === 'highest' && reason !== null)).toHaveLength(1);
    expect(plans.filter(({ dropped }) => dropped !== null && dropped.why !== null)).toHaveLength(1);
  });

  test('tomorrow lies ready at the library: pumps, lot, numbers that come after all others', () => {
    const site = [...book.sites.values()].find(({ name }) => name === 'Tallow Street Library');
    const day = tomorrowOf(book, `${site?.id}.2026-11-26`, found);
    expect(day.wearers.map(({ workerId, pump, lot }) => [named(workerId), pump?.serial, lot?.lotNumber])).toEqual([
      ['Dora Dowel', 'P-12', 'EX-1104'],
      ['Pia Putty', 'P-13', 'EX-1104'],
    ]);
    expect([day.sparePumps.length, day.spareCassettesCount, named(day.chargedById)]).toEqual([1, 2, 'Greta Gimlet']);
    const numbers = [...day.wearers.map(({ sampleNumber }) => sampleNumber ?? ''), ...day.spareNumbers];
    numbers.push(...day.blankNumbers);
    expect(numbers).toHaveLength(6);
    for (const one of numbers) expect(checkSampleNumber(one).kind).not.toBe('wrong');
    const worn = [...book.samples.values()].map(({ sampleNumber }) => sampleNumber).sort();
    expect(numbers.every((one) => one > (worn.at(-1) ?? ''))).toBe(true);
  });

  test('gear is owned, rented, lent and out of use; one doubt is settled, one touches two old samples', () => {
    const { pumps, meters, lots, doubtful } = gearStanding(book, today);
    const held = [...pumps, ...meters].flatMap((one) => one.held ?? []);
    expect([...new Set(held.map((one) => one.held))].sort()).toEqual(['lent', 'owned', 'rented']);
    expect(held.filter(({ retired }) => retired)).toHaveLength(1);
    expect(meters.filter(({ due }) => due === 'soon').map(({ number }) => number)).toEqual(['DP-4']);
    expect(meters.filter(({ certificatesCount }) => certificatesCount > 0).map(({ number }) => number)).toEqual([
      'RT-5',
    ]);
    expect(lots.map(({ expiry }) => expiry).sort()).toEqual(['later', 'later', 'soon']);
    expect(pumps.flatMap(({ doubts }) => doubts.map(({ effect }) => effect))).toEqual(['noEffect']);
    expect(doubtful.map(({ gearNumber, effect }) => [gearNumber, effect])).toEqual([['EX-0533', 'open']]);
    const touched = doubtful.map(({ gear, gearId, doubt }) => touchedBy(gear, gearId, doubt.doubtId, book, found));
    expect(touched[0]?.samples.map(({ workerId }) => named(workerId))).toEqual(['Rex Rivet', 'Dora Dowel']);
  });

  test('money: what was billed to the cent, and a sum that nobody knows because one price is not known', () => {
    const money = moneyOfSeason(book, found, { fromOn: '2026-01-01', toOn: today });
    const spent = Object.fromEntries(money.lines.map(({ of, spent: { amountUsd } }) => [of, amountUsd]));
    // 19 results, counted by hand: 13 came more than 60 days ago, at 22.00 dollars each, the later 6 at 23.50
    const [early, late] = [13, 6];
    expect(spent).toMatchObject({ analysis: early * 22 + late * 23.5, courier: 331.2, rental: 62.5, calibration: 145 });
    expect(money.missing.map(({ price }) => price)).toEqual(['cassetteUsd']);
    expect([money.plannedUsd, money.toComeUsd]).toEqual([null, null]);
    expect([...book.spendings.values()].filter(({ struck }) => struck !== null)).toHaveLength(1);
  });
});

test('every paper of the season is here as bytes that are a PDF', async () => {
  const hashes = [
    ...[...book.notices.values()].map(({ issued }) => issued.pdfHash),
    ...[...book.determinations.values()].map(({ written }) => written.pdfHash),
  ];
  const files = await theSession().db.files.bulkGet(hashes);
  expect(files.length).toBeGreaterThan(15);
  for (const [place, file] of files.entries()) {
    const bytes = file?.bytes ?? new Uint8Array();
    expect(hashOf(bytes)).toBe(hashes[place]);
    expect(new TextDecoder().decode(bytes.slice(0, 8))).toBe('%PDF-1.4');
    expect(new TextDecoder().decode(bytes)).toContain('(EXAMPLE) Tj');
  }
});

test('nothing of the season is left to settle but the lot that was found bad', () => {
  const kinds = [book.samples, book.workdays, book.shifts, book.people, book.reported, book.plans, book.dayPlans];
  for (const records of [...kinds, book.pumps, book.meters, book.lots, book.spendings])
    for (const { conflicts } of records.values()) expect(conflicts).toEqual([]);
  for (const { voidAgainstResult } of book.samples.values()) expect(voidAgainstResult ?? false).toBe(false);
});
