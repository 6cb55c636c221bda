/** What is planned, made ready, doubted and spent, said by one or two devices, in any order of arrival. Given, when, then. */
import { describe, expect, test } from 'vitest';
import type {
  AnyRecord,
  BookRecord,
  DayPlanRecord,
  MeterRecord,
  PlanRecord,
  PumpRecord,
  SpendingRecord,
} from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import { bookOpened } from './dutyFacts.ts';
import { folded, ids, office, phone, shiftId, Writer } from './facts.ts';
import { lots } from './interleavings.ts';
import {
  certificate,
  doubted,
  dropped,
  held,
  labelled,
  madeReady,
  meterAdded,
  missed,
  planId,
  planned,
  prices,
  pumpAdded,
  settled,
  slot,
  spendingId,
  spent,
  unspent,
  wearer,
} from './seasonFacts.ts';

/** The record, the same whichever way its entries arrive: forwards, backwards and in drawn orders. */
function record<R extends AnyRecord>(key: string, ...writers: readonly Writer[]): R {
  const entries = writers.flatMap((writer) => writer.entries);
  const found = folded<R>(key, entries);
  expect(folded<R>(key, [...entries].reverse())).toEqual(found);
  const { upTo } = lots(entries.length);
  for (let round = 0; round < 20; round += 1) {
    const drawn = [...entries];
    for (let at = drawn.length - 1; at > 0; at -= 1) {
      const other = upTo(at + 1);
      [drawn[at], drawn[other]] = [drawn[other] as never, drawn[at] as never];
    }
    expect(folded<R>(key, drawn)).toEqual(found);
  }
  return found;
}
const both = (...facts: readonly NewFact[]) => {
  const writers = [new Writer(phone), new Writer(office)] as [Writer, Writer];
  for (const fact of facts) writers[0].add(fact);
  return writers;
};

describe('a plan', () => {
  const plan = (...writers: readonly Writer[]) => record<PlanRecord>(`plan:${planId}`, ...writers);

  test('said anew follows what it knew of, and keeps when it was first said', () => {
    const [a, b] = both();
    const one = a.add(planned([slot()], {}, { at: '2026-11-20T12:00:00.000Z' }));
    const two = b.add(planned([slot(ids.ben)], { knew: [one] }, { at: '2026-11-24T12:00:00.000Z' }));
    expect(plan(a, b)).toMatchObject({ plannedFactId: two, plannedAt: '2026-11-20T12:00:00.000Z', conflicts: [] });
    expect(plan(a, b).slots).toEqual([slot(ids.ben)]);
  });

  test('of two that did not know of each other the one with more to measure stands, in dispute', () => {
    const [a, b] = both(planned([slot()]));
    b.add(planned([slot(), slot(ids.ben)]));
    expect(plan(a, b).slots).toHaveLength(2);
    expect(plan(a, b).conflicts).toMatchObject([{ path: '/planned', judges: 'careful' }]);
  });

  test('what did not come about is listed by when it was said', () => {
    const [a, b] = both(planned([slot(), slot(ids.ben)]));
    a.add(missed(ids.ben, '2026-12-01', '15:00'));
    b.add(missed(ids.ana, '2026-12-01', '14:00'));
    expect(plan(a, b).missed.map(({ workerId }) => workerId)).toEqual([ids.ana, ids.ben]);
  });

  test('given up: what was planned meanwhile elsewhere stands; said anew by whoever knew takes it up again', () => {
    const [a, b] = both();
    const one = a.add(planned());
    const drop = a.add(dropped([one]));
    expect(plan(a).dropped).toEqual({ why: 'the job went to others', factId: drop });
    const two = b.add(planned([slot(ids.ben)], { knew: [one] }));
    expect(plan(a, b).dropped).toBeNull();
    b.add(dropped([one, two]));
    expect(plan(a, b).dropped).not.toBeNull();
    b.add(planned([slot(ids.ben)], { knew: [one, two, drop, 'zzzzzzzzzzz1.00000002'] }));
    expect(plan(a, b).dropped).toBeNull();
  });

  test('nothing without the plan itself', () => {
    expect(plan(...both(missed(), dropped()))).toBeNull();
  });
});

describe('a day made ready', () => {
  const dayPlan = (...writers: readonly Writer[]) => record<DayPlanRecord>(`dayPlan:${shiftId}`, ...writers);

  test('asked again in the morning by whoever knew: that stands', () => {
    const [a, b] = both();
    const one = a.add(madeReady([wearer()], { asked: 'evening' }));
    const two = b.add(madeReady([wearer(ids.ben)], { knew: [one] }));
    expect(dayPlan(a, b)).toMatchObject({ siteId: ids.site, workOn: '2026-11-25', conflicts: [] });
    expect(dayPlan(a, b).prepared).toMatchObject({ asked: 'morning', wearers: [wearer(ids.ben)], factId: two });
  });

  test('two that did not know of each other: wearers of both stand, and it is listed', () => {
    const [a, b] = both(madeReady([wearer()], { asked: 'evening', spareCassettesCount: 3 }));
    b.add(madeReady([wearer(), wearer(ids.ben, ids.pumpB)], { chargedById: ids.ana }));
    const { prepared, conflicts } = dayPlan(a, b);
    expect(prepared?.wearers).toEqual([wearer(), wearer(ids.ben, ids.pumpB)]);
    expect(prepared).toMatchObject({ asked: 'evening', spareCassettesCount: 3, chargedById: null });
    expect(conflicts).toMatchObject([{ path: '/prepared' }]);
  });

  test('labels of every printing are kept', () => {
    const [a, b] = both(labelled(['120019']));
    b.add(labelled(['130016']));
    expect(dayPlan(a, b).labels.map(({ sampleNumber }) => sampleNumber)).toEqual(['120019', '130016']);
    expect(dayPlan(a, b).prepared).toBeNull();
  });
});

describe('gear', () => {
  const meter = (...writers: readonly Writer[]) => record<MeterRecord>(`meter:${ids.meter}`, ...writers);
  const pump = (...writers: readonly Writer[]) => record<PumpRecord>(`pump:${ids.pumpA}`, ...writers);

  test('nothing was said: nothing is there', () => {
    for (const name of ['held', 'doubts', 'charges', 'certificates'])
      expect(meter(...both(meterAdded()))).not.toHaveProperty(name);
  });

  test('whose it is: said anew it follows; in dispute what was said first stands', () => {
    const [a, b] = both(pumpAdded());
    const one = a.add(held('rented', { from: 'Quern Hill' }));
    b.add(held('owned', { knew: [one] }));
    expect(pump(a, b)).toMatchObject({ held: { held: 'owned' }, conflicts: [] });
    const [c, d] = both(pumpAdded(), held('rented'));
    d.add(held('lent'));
    expect(pump(c, d).conflicts).toMatchObject([{ path: '/held', judges: 'first' }]);
  });

  test('certificates oldest first; one entered anew follows that of its day, two that differ stand in dispute', () => {
    const [a, b] = both(meterAdded(), certificate('2026-11-20', '2027-11-20'), certificate('2026-06-01', null));
    expect(meter(a).certificates?.map(({ certificateOn }) => certificateOn)).toEqual(['2026-06-01', '2026-11-20']);
    b.add(certificate('2026-11-20', '2027-05-20'));
    expect(meter(a, b).certificates?.[1]?.dueOn).toBe('2027-05-20');
    expect(meter(a, b).conflicts).toMatchObject([{ path: '/certificates/2026-11-20' }]);
    const knew = [`${phone}.00000002`, `${office}.00000001`];
    b.add(certificate('2026-11-20', '2027-11-20', { knew }));
    expect(meter(a, b)).toMatchObject({ conflicts: [] });
    expect(meter(a, b).certificates?.[1]?.dueOn).toBe('2027-11-20');
  });

  const decided = (...writers: readonly Writer[]) => meter(...writers).doubts?.[0]?.settled ?? null;

  test.each([
    ['noEffect', null, 'staysDoubtful', null, 'staysDoubtful', null],
    ['asFound', 0.9, 'noEffect', null, 'asFound', 0.9],
    ['asFound', 0.9, 'staysDoubtful', null, 'staysDoubtful', null],
    ['asFound', 0.9, 'asFound', 0.95, 'staysDoubtful', null],
  ] as const)('%s %s here and %s %s there: %s stands', (here, factor, there, other, stands, stood) => {
    for (const [one, two] of [
      [settled(here, factor), settled(there, other)],
      [settled(there, other), settled(here, factor)],
    ] as const) {
      const [a, b] = both(meterAdded(), doubted(), one);
      b.add(two);
      expect(decided(a, b)).toMatchObject({ decision: stands, trueOverRead: stood });
      expect(meter(a, b).conflicts).toMatchObject([{ path: '/doubts/d00000000001' }]);
      b.add(settled('noEffect', null, [`${phone}.00000003`, `${office}.00000001`]));
      expect(decided(a, b)).toMatchObject({ decision: 'noEffect', onDay: '2026-11-25' });
      expect(meter(a, b).conflicts).toEqual([]);
    }
  });

  test('without a reason, or of another doubt, nothing is settled; alike on two devices it is', () => {
    const [a, b] = both(meterAdded(), doubted());
    a.add(settled('noEffect', null, [], null));
    a.add(settled('noEffect', null, [], ' '));
    a.add(settled('noEffect', null, [], 'why', { doubtId: 'd00000000009' }));
    expect(meter(a).doubts).toMatchObject([{ settled: null, found: 'It read one tenth too much' }]);
    a.add(settled('asFound', 0.9));
    b.add(settled('asFound', 0.9));
    expect(decided(a, b)).toMatchObject({ decision: 'asFound', trueOverRead: 0.9 });
    expect(meter(a, b).conflicts).toEqual([]);
  });

  test('a correction by what was found of something that is no flow meter, or without the factor, stays doubtful', () => {
    const [a] = both(meterAdded(), doubted(), settled('asFound', null));
    expect(decided(a)).toMatchObject({ decision: 'staysDoubtful' });
    const of = { gear: 'pump', gearId: ids.pumpA } as const;
    const [c] = both(pumpAdded(), doubted(of), settled('asFound', 0.9, [], 'why', of));
    expect(pump(c).doubts?.[0]?.settled).toMatchObject({ decision: 'staysDoubtful', trueOverRead: null });
  });
});

describe('money', () => {
  const book = (...writers: readonly Writer[]) => record<BookRecord>(`book:${ids.book}`, ...writers);

  test('prices newest first; of one day those that knew follow, those that did not are listed', () => {
    const [a, b] = both(bookOpened(), prices('2026-01-01', 23), prices('2026-06-01', 25));
    expect(book(a).prices?.map(({ fromOn }) => fromOn)).toEqual(['2026-06-01', '2026-01-01']);
    b.add(prices('2026-06-01', 24));
    expect(book(a, b)).toMatchObject({ conflicts: [{ path: '/prices/2026-06-01' }] });
    b.add(prices('2026-06-01', 24.5, [`${phone}.00000003`, `${office}.00000001`]));
    expect(book(a, b)).toMatchObject({ prices: [{ analysisUsd: 24.5 }, { analysisUsd: 23 }], conflicts: [] });
  });

  test('an entry that was wrong is struck, and stays to be seen', () => {
    const of = (...writers: readonly Writer[]) => record<SpendingRecord>(`spending:${spendingId}`, ...writers);
    const [a, b] = both(spent(24.5));
    expect(of(a)).toMatchObject({ amountUsd: 24.5, struck: null });
    const struck = b.add(unspent());
    expect(of(a, b)).toMatchObject({ amountUsd: 24.5, struck: { why: 'entered twice', factId: struck } });
    expect(of(b)).toBeNull();
  });
});
