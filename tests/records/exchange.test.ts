/** What one device must know of the other, and what was changed on both sides. */
import { describe, expect, test } from 'vitest';
import { changedBothSides } from '#records/bothSides.ts';
import { contiguousHeads, missingOf, missingWithout, sinceHeads } from '#records/exchange.ts';
import { at, corrects, ids, journal, look, office, phone, prepared, result, wanted } from './facts.ts';

const key = `sample:${ids.one}`;
const five = journal([prepared(), look('13:00'), look('14:00'), look('15:00'), result(4)]);
const idAt = (count: number, writer = phone): string => `${writer}.${String(count).padStart(8, '0')}`;

describe('what is held without a gap', () => {
  test('ends before the first gap, whatever the order', () => {
    const holding = (counts: readonly number[]) =>
      contiguousHeads(counts.flatMap((count) => five[count - 1] ?? [])).map(({ factId }) => factId);
    expect(holding([1, 2, 3, 4, 5])).toEqual([idAt(5)]);
    expect(holding([5, 2, 1])).toEqual([idAt(2)]);
    expect(holding([2, 3])).toEqual([]);
  });

  test('the rest is sent, and all of a writer whose head stands on other bytes', () => {
    const head = { factId: idAt(3), link: five[2]?.link ?? '' };
    expect(sinceHeads(five, [head])).toMatchObject({ entries: [{ id: idAt(4) }, { id: idAt(5) }], since: [head] });
    expect(sinceHeads(five, [{ ...head, link: 'f'.repeat(64) }])).toMatchObject({ since: [] });
    expect(sinceHeads(five, [{ ...head, link: 'f'.repeat(64) }]).entries).toHaveLength(5);
    expect(sinceHeads(five, [{ factId: idAt(9), link: 'f'.repeat(64) }]).entries).toEqual([]);
    expect(sinceHeads(five, []).entries).toHaveLength(5);
  });
});

describe('what is missing', () => {
  const ranges = missingOf([five[4], five[1]].flatMap((entry) => entry ?? []));

  test('is each gap, until the later of the days on which the next entry was recorded and happened', () => {
    // the result happened on 2 December and was recorded on 25 November: by hand from facts.ts
    expect(ranges).toEqual([
      { writer: phone, fromCount: 1, toCount: 1, untilOn: '2026-11-25' },
      { writer: phone, fromCount: 3, toCount: 4, untilOn: '2026-12-02' },
    ]);
  });

  test('less what was given up, part of a range too', () => {
    const lost = (fromCount: number, toCount: number, writer = phone) => ({ writer, fromCount, toCount });
    const left = (...accepted: readonly ReturnType<typeof lost>[]) =>
      missingWithout([{ writer: phone, fromCount: 3, toCount: 8, untilOn: '2026-11-25' }], accepted).map(
        ({ fromCount, toCount }) => [fromCount, toCount],
      );
    expect(left(lost(5, 6))).toEqual([
      [3, 4],
      [7, 8],
    ]);
    expect(left(lost(1, 3), lost(8, 20))).toEqual([[4, 7]]);
    expect(left(lost(3, 8))).toEqual([]);
    expect(left(lost(3, 8, office))).toEqual([[3, 8]]);
    expect(left(lost(1, 2), lost(9, 9))).toEqual([[3, 8]]);
  });
});

describe('what was changed on both sides', () => {
  const mass = (massUg: number) => ({ kind: 'measured', massUg });
  const mine = journal([corrects(idAt(5), '/mass', mass(4), mass(30))], 'xxxxxxxxxxx1');
  const theirs = (...facts: Parameters<typeof journal>[0]) => journal(facts, office);

  test('names both values and the one that judges', () => {
    const incoming = theirs(corrects(idAt(5), '/mass', mass(4), mass(7)));
    expect(changedBothSides([...five, ...mine], incoming)).toEqual({
      bothChanged: [
        {
          recordKey: key,
          factId: idAt(5),
          factKind: 'resultReceived.v1',
          path: '/mass',
          first: mass(4),
          here: [mass(30)],
          there: [mass(7)],
          judges: mass(30),
        },
      ],
      voidAgainstResult: [],
    });
  });

  test('one side alone, a correction that knew of the other, and the same value are no dispute', () => {
    const none = { bothChanged: [], voidAgainstResult: [] };
    const after = corrects(idAt(5), '/mass', mass(30), mass(7), idAt(1, 'xxxxxxxxxxx1'));
    expect(changedBothSides(five, theirs(corrects(idAt(5), '/mass', mass(4), mass(7))))).toEqual(none);
    expect(changedBothSides([...five, ...mine], theirs(after))).toEqual(none);
    expect(changedBothSides([...five, ...mine], theirs(corrects(idAt(5), '/mass', mass(4), mass(30))))).toEqual(none);
    expect(changedBothSides([...five, ...mine], theirs(look('16:00')))).toEqual(none);
  });

  test('a void that comes against a result, and a result that comes against a void, are told once', () => {
    const voided = wanted('sampleVoided.v1', { sampleId: ids.one }, { why: 'dropped', at: at('21:00') });
    expect(changedBothSides(five, theirs(voided)).voidAgainstResult).toEqual(['120019']);
    const voidHere = [...five.slice(0, 4), ...journal([voided], 'xxxxxxxxxxx1')];
    expect(changedBothSides(voidHere, theirs(result(9))).voidAgainstResult).toEqual(['120019']);
    const both = [...five, ...journal([voided], 'xxxxxxxxxxx1')];
    expect(changedBothSides(both, theirs(look('16:00'))).voidAgainstResult).toEqual([]);
  });

  test('100,000 facts are gone through in one linear pass', () => {
    const many = journal(Array.from({ length: 2_000 }, (_, at) => look(`1${at % 8}:00`)));
    const copies = Array.from({ length: 25 }, (_, at) =>
      many.map(({ id, text, link }) => ({ id: `${String(at).padStart(12, '0')}.${id.slice(13)}`, text, link })),
    ).flat();
    expect(contiguousHeads(copies)).toHaveLength(25);
    expect(sinceHeads(copies, contiguousHeads(copies)).entries).toEqual([]);
    expect(missingOf(copies)).toEqual([]);
    expect(changedBothSides(copies, copies)).toEqual({ bothChanged: [], voidAgainstResult: [] });
  });
});
