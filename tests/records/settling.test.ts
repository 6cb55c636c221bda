/** Settling what two devices stated differently, when the settling itself happens on two devices. By structure; clocks decide nothing. */
import { describe, expect, test } from 'vitest';
import type { AnyRecord, SampleRecord, WorkdayRecord } from '#records/book.ts';
import type { StoredFact } from '#records/canonical.ts';
import { decide } from '#records/decide.ts';
import type { FactBody, FactKind, NewFact } from '#records/fact.ts';
import {
  at,
  corrects,
  folded,
  freshOf,
  ids,
  office,
  phone,
  prepared,
  result,
  Writer,
  wanted,
  workOn,
} from './facts.ts';

const workdayId = `${ids.ana}.${workOn}`;
const key = `workday:${workdayId}`;
const sampleKey = `sample:${ids.one}`;
const pieces = (to: string) => [{ startedAt: at('12:00'), endedAt: at(to), place: null, employer: null }];
const hours = (to: string) => wanted('workHoursStated.v1', { workdayId, pieces: pieces(to) });
const otherWork = (callOut: 'yes' | 'no') =>
  wanted('otherWorkAsked.v1', { workdayId, callOut, secondSite: 'no', secondEmployer: 'no' });

/** Two devices and what each wrote; `settle` goes through `decide` on what its device holds then. */
function devices(third = 'zzzzzzzzzzz2') {
  const hands = { phone: new Writer(phone), office: new Writer(office), third: new Writer(third) };
  type Hand = keyof typeof hands;
  const all = (): readonly StoredFact[] => Object.values(hands).flatMap(({ entries }) => entries);
  const put = <K extends FactKind>(hand: Hand, fact: NewFact<K>): string => hands[hand].add(fact);
  const settle = (hand: Hand, path: string, chosen: string, known = all(), about = key): string => {
    const conflict = folded<AnyRecord>(about, known).conflicts.find((open) => open.path === path);
    const body = { replaces: conflict?.factId, path, chosen } as FactBody<'correctionSettled.v1'>;
    const fact = wanted('correctionSettled.v1', body, { about: [about], why: 'asked the crew' });
    const decision = decide([fact], freshOf(known), { now: at('23:00'), lastSeenAt: null });
    if (decision.kind !== 'facts') throw new Error(JSON.stringify(decision));
    return put(hand, decision.facts[0] as NewFact);
  };
  return { all, put, settle, day: () => folded<WorkdayRecord>(key, all()) };
}

describe('hours stated on both', () => {
  test.each(['phone', 'office'] as const)(
    'settled differently on two devices, the %s first: open, the longer judge',
    (first) => {
      const { all, put, settle, day } = devices();
      const [short, long] = [put('phone', hours('18:00')), put('office', hours('20:00'))];
      const before = all();
      settle(first, '/pieces', first === 'phone' ? short : long, before);
      settle(first === 'phone' ? 'office' : 'phone', '/pieces', first === 'phone' ? long : short, before);
      expect(day().conflicts).toMatchObject([{ path: '/pieces' }]);
      expect(day().pieces).toEqual(pieces('20:00'));
      // A person who knows both settlements ends it, also towards the shorter.
      settle('phone', '/pieces', short);
      expect(day()).toMatchObject({ conflicts: [], pieces: pieces('18:00'), notUnderstood: [] });
    },
  );

  test('settled alike on two devices: settled', () => {
    const { all, put, settle, day } = devices();
    const [short] = [put('phone', hours('18:00')), put('office', hours('20:00'))];
    const before = all();
    settle('phone', '/pieces', short, before);
    settle('office', '/pieces', short, before);
    expect(day()).toMatchObject({ conflicts: [], pieces: pieces('18:00') });
  });

  test('a correction to what was set aside, that whoever settled did not know of, opens it again', () => {
    const { put, settle, day } = devices();
    const [short, long] = [put('phone', hours('18:00')), put('office', hours('20:00'))];
    settle('phone', '/pieces', short);
    put('office', corrects(long, '/pieces', pieces('20:00'), pieces('22:00'), null, [key]));
    expect(day().conflicts).toMatchObject([{ path: '/pieces' }]);
    expect(day().pieces).toEqual(pieces('22:00'));
    settle('phone', '/pieces', short);
    expect(day()).toMatchObject({ conflicts: [], pieces: pieces('18:00') });
  });

  test('one that was known when it was settled does not', () => {
    const { put, settle, day } = devices();
    const [short, long] = [put('phone', hours('18:00')), put('office', hours('20:00'))];
    put('office', corrects(long, '/pieces', pieces('20:00'), pieces('22:00'), null, [key]));
    settle('phone', '/pieces', short);
    expect(day()).toMatchObject({ conflicts: [], pieces: pieces('18:00') });
  });

  test('a third statement that nobody knew of opens it again', () => {
    const { put, settle, day } = devices();
    const short = put('phone', hours('18:00'));
    put('office', hours('20:00'));
    settle('phone', '/pieces', short);
    put('third', hours('19:00'));
    expect(day().conflicts).toMatchObject([{ path: '/pieces' }]);
    expect(day().pieces).toEqual(pieces('20:00'));
  });
});

test('other work settled on the statement that came first leaves no doubt behind', () => {
  const { put, settle, day } = devices();
  const first = put('phone', otherWork('no'));
  put('office', otherWork('yes'));
  settle('office', '/otherWork', first);
  expect(day()).toMatchObject({ conflicts: [], notUnderstood: [], otherWork: { callOut: 'no' } });
});

test('one report keyed in twice and settled differently on two devices: the heavier judges until a third settles it', () => {
  const { all, put, settle } = devices();
  put('phone', prepared());
  const [light, heavy] = [put('phone', result(5)), put('office', result(7))];
  const before = all();
  settle('phone', '/mass', heavy, before, sampleKey);
  settle('office', '/mass', light, before, sampleKey);
  const judging = () => folded<SampleRecord>(sampleKey, all());
  expect(judging().results.at(-1)?.mass).toEqual({ kind: 'measured', massUg: 7 });
  expect(judging().conflicts).toMatchObject([{ path: '/mass' }]);
  settle('third', '/mass', light, all(), sampleKey);
  expect(judging().results.at(-1)?.mass).toEqual({ kind: 'measured', massUg: 5 });
  expect(judging()).toMatchObject({ conflicts: [], notUnderstood: [] });
});
