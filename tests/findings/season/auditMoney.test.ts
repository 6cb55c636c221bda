/** Money against what would count a thing twice, or of the wrong year or job. Worked out by hand: an analysis is 24 dollars. */
import { expect, it } from 'vitest';
import { centsOf } from '#core/money.ts';
import { findDuties } from '#findings/duties/findDuties.ts';
import { type MoneyQuestion, moneyOfSeason } from '#findings/season/money.ts';
import type { Book, BoxRecord, PlanRecord, Prices, PumpRecord, SpendingRecord } from '#records/book.ts';
import { type Day, jobBook, sampleIdOf, tess, vic } from '../duties/jobBook.ts';
import { base, factId, site, siteId } from '../sliceRegisters.ts';
import { plan } from './seasonBook.ts';

const today = '2027-02-01';
const other = 's00000000002';
const box = (sampleIds: string[], at = siteId, boxId = 'x00000000001'): BoxRecord => ({
  ...base('box', boxId),
  packed: {
    ...{ boxId, siteId: at, sampleIds, laboratoryId: 'a00000000001', samplerId: tess, analysis: 'Lead' },
    ...{ methodId: null, reportingLimitUg: null, includeWallDeposit: true, callBeforeReanalysis: true },
    ...{ turnaround: 'Usual', workersShownAs: 'identifier', remark: null },
  },
  packedFactId: factId(),
  packedAt: '2026-12-31T10:00:00.000Z',
  issues: [],
  handedOver: null,
  arrivedAt: null,
});
const bill = (more: Partial<SpendingRecord>): SpendingRecord => ({
  ...base('spending', 'v00000000001'),
  ...{ spendingId: 'v00000000001', spentOn: '2027-01-10', spentFor: 'analysis', amountUsd: 48, count: null },
  ...{ siteId: null, boxId: null, bill: null, remark: null, spentFactId: factId(), struck: null },
  ...more,
});
const prices: Prices = {
  ...{ fromOn: '2026-01-01', analysisUsd: 24, blankUsd: 24, cassetteUsd: 1, courierUsd: 18, rushUsd: null },
  ...{ pumpRentalUsd: 10, meterRentalUsd: null, consultantUsd: null, factId: factId() },
};
interface Case {
  readonly days?: readonly Day[];
  readonly boxes?: readonly BoxRecord[];
  readonly spendings?: readonly SpendingRecord[];
  readonly plans?: readonly PlanRecord[];
  readonly pumps?: readonly PumpRecord[];
}
const byId = <T extends { readonly id: string }>(ones: readonly T[] = []) => new Map(ones.map((one) => [one.id, one]));
function moneyOf({ days = [], boxes, spendings, plans, pumps }: Case, question: MoneyQuestion) {
  const more = { boxes: byId(boxes), spendings: byId(spendings), plans: byId(plans), pumps: byId(pumps) };
  const made = jobBook({ days, sites: [site(), { ...site({ siteId: other }), id: other }], more });
  const book: Book = { ...made, book: made.book && { ...made.book, prices: [prices] } };
  return moneyOfSeason(book, findDuties(book, today), question);
}
const year = (on: number): MoneyQuestion => ({ fromOn: `${on}-01-01`, toOn: `${on}-12-31` });
const toCome = (money: { lines: ReturnType<typeof moneyOf>['lines'] } | undefined, of = 'analysis') =>
  money?.lines.find((one) => one.of === of)?.toCome.count;
const day = (workOn: string, more: Partial<Day> = {}): Day => ({ workOn, averageUgPerM3: 12, ...more });

it('a bill of a box with cassettes of two years takes off each year no more than its own', () => {
  const days = [day('2026-12-30'), day('2027-01-05'), day('2027-01-20')];
  const ids = days.slice(0, 2).map(({ workOn }) => sampleIdOf(tess, workOn));
  for (const count of [null, 2]) {
    const made = { days, boxes: [box(ids)], spendings: [bill({ boxId: 'x00000000001', count })] };
    expect(toCome(moneyOf(made, year(2026)))).toBe(0);
    // the one of 20 January is in no box, and no bill paid for it
    expect(toCome(moneyOf(made, year(2027)))).toBe(1);
  }
});

it('a bill of a box of another job pays for what is in the box, whichever job it was written down for', () => {
  const days = [day('2026-12-01'), day('2026-12-02', { workerId: vic, siteId: other })];
  const boxes = [box([sampleIdOf(vic, '2026-12-02')], other)];
  const money = moneyOf({ days, boxes, spendings: [bill({ boxId: 'x00000000001', siteId, count: 1 })] }, year(2026));
  const job = (at: string) => money.jobs.find((one) => one.siteId === at);
  expect([toCome(job(siteId)), toCome(job(other))]).toEqual([1, 0]);
  expect(toCome(money)).toBe(1);
});

it('two bills of one box pay for it once', () => {
  const days = [day('2026-12-01'), day('2026-12-02')];
  const boxes = [box([sampleIdOf(tess, '2026-12-01')])];
  const spendings = [
    bill({ boxId: 'x00000000001' }),
    bill({ ...base('spending', 'v00000000002'), boxId: 'x00000000001' }),
  ];
  expect(toCome(moneyOf({ days, boxes, spendings }, year(2026)))).toBe(1);
});

it('a rented pump is paid for once on a day that was measured in part', () => {
  const held = { held: 'rented', from: null, backOn: null, retired: false, factId: factId() } as const;
  const pumpId = `q${sampleIdOf(tess, today).slice(1)}`;
  const pump: PumpRecord = { ...base('pump', pumpId), pumpId, serial: 'Q', model: null, held };
  const slots = [tess, vic].map((workerId) => ({ workerId, workOn: today }));
  const made = { days: [day(today)], plans: [plan({ slots })], pumps: [pump] };
  expect(toCome(moneyOf(made, year(2027)), 'rental')).toBe(1);
});

it('parts of a cent that another program wrote stop nothing', () => {
  // 0.0000001 dollars are no cent; 0.1 + 0.2 are 30 cents
  expect(centsOf(1e-7)).toBe(0);
  expect(centsOf(0.1 + 0.2)).toBe(30);
  expect(moneyOf({ spendings: [bill({ amountUsd: 1e-7 })] }, year(2027)).spentUsd).toBe(0);
});
