/** May this be written down now: plans, days made ready, labels, gear, money. Given, when, then. */
import { describe, expect, test } from 'vitest';
import type { BookRecord } from '#records/book.ts';
import { decide, needs } from '#records/decide.ts';
import { labelOf } from '#words/fieldNames.ts';
import { bodyOf, first, people, refused, tomorrow } from './deciding.ts';
import { bookOpened } from './dutyFacts.ts';
import { at, corrects, folded, freshOf, ids, journal, office, phone, prepared, shiftId, wanted } from './facts.ts';
import {
  certificate,
  doubted,
  doubtId,
  dropped,
  held,
  labelled,
  madeReady,
  meterAdded,
  missed,
  planned,
  prices,
  pumpAdded,
  settled,
  siteAdded,
  slot,
  spent,
  unspent,
  wearer,
} from './seasonFacts.ts';

const here = [...people, siteAdded()];
const second = `${phone}.00000002`;

describe('plans and days made ready', () => {
  test.each([
    ['a plan', here, planned(), []],
    ['at a site that is not in the book', people, planned(), ['recordUnknown 0/body/siteId']],
    ['wherever the work is next', people, planned([slot()], { siteId: null }), []],
    [
      'one expected to breathe most, without why',
      here,
      planned([slot()], { choice: 'highest' }),
      ['whyNeeded 0/body/reason'],
    ],
    ['with why', here, planned([slot()], { choice: 'highest', reason: 'Ceilings' }), []],
    [
      'more workers than the crew',
      here,
      planned([slot(), slot(ids.ben)], { crewCount: 1 }),
      ['moreThanCrew 0/body/slots'],
    ],
    ['a worker on two days, crew of one', here, planned([slot(), slot(ids.ana, null)], { crewCount: 1 }), []],
    ['twice on one day', here, planned([slot(), slot()]), ['twiceOnDay 0/body/slots/1']],
    ['no slot', here, planned([]), ['entryNotComplete 0/body/slots']],
    ['a missed day', [...here, planned()], missed(), []],
    ['of no plan', here, missed(), ['recordUnknown 0/body/planId']],
    ['of a worker who is not in it', [...here, planned()], missed(ids.ben), ['notPlanned 0/body/workerId']],
    ['missed twice', [...here, planned(), missed()], missed(), ['alreadyStated 0/body/workOn']],
    ['given up without why', [...here, planned()], dropped(undefined, null), ['whyNeeded 0/why']],
    ['given up twice', [planned(), dropped([first])], dropped(), ['alreadyStated 0/body/planId']],
    ['a day', here, madeReady([wearer(), wearer(ids.ben, ids.pumpB)]), []],
    ['tomorrow, which is not opened yet', here, madeReady([wearer()], { shiftId: `${ids.site}.${tomorrow}` }), []],
    ['one pump on two', here, madeReady([wearer(), wearer(ids.ben)]), ['pumpOnTwo 0/body/wearers/1/pumpId']],
    ['one pump, one worker, two tasks', here, madeReady([wearer(), { ...wearer(), taskIds: ['x'] }]), []],
    ['worn and spare', here, madeReady([wearer()], { sparePumpIds: [ids.pumpA] }), ['pumpOnTwo 0/body/sparePumpIds/0']],
    ['of an unknown site', people, madeReady([wearer()]), ['recordUnknown 0/body/shiftId']],
    ['labels', here, labelled(['120019', '120027']), []],
    ['one number twice', here, labelled(['120019', '120019']), ['numberUsed 0/body/labels/1/sampleNumber']],
    [
      'a number made before',
      [...here, labelled(['120019'])],
      labelled(['120019']),
      ['numberUsed 0/body/labels/0/sampleNumber'],
    ],
    ['a wrong last digit', here, labelled(['120018']), ['numberWrong 0/body/labels/0/sampleNumber']],
  ] as const)('%s', (_, before, wish, expected) => {
    expect(refused(before, wish)).toEqual(expected);
  });

  test('what was known is filled in: plans, what was given up, days made ready', () => {
    expect(bodyOf([planned(), dropped([first]), ...here], planned()).knew).toEqual([first, second]);
    expect(bodyOf([planned(), ...here], dropped()).knew).toEqual([first]);
    expect(bodyOf([madeReady([wearer()]), labelled(['120019']), ...here], madeReady([])).knew).toEqual([first]);
  });

  test.each([
    ['its own site and day', shiftId, []],
    ['another day', `${ids.site}.2026-11-24`, ['numberReserved 0/body/sampleNumber']],
  ])('the number of a label is taken by a cassette of %s', (_, day, expected) => {
    const wish = prepared(ids.one, { shiftId: day });
    const label = folded<never>(`dayPlan:${shiftId}`, journal([labelled(['120019'])]));
    const fresh = { ...freshOf(journal(here)), reserving: [label] };
    expect(needs([wish]).sampleNumbers).toEqual(['120019']);
    const decision = decide([wish], fresh, { now: at('18:00'), lastSeenAt: null });
    const keys = decision.kind === 'refused' ? decision.refusals.map(({ key, fields }) => `${key} ${fields}`) : [];
    expect(keys).toEqual(expected);
  });
});

describe('gear', () => {
  const meter = [meterAdded()];
  const bad = [meterAdded(), doubted()];
  const of = { gear: 'pump', gearId: ids.pumpA } as const;
  test.each([
    ['gear that is not in the book', [], doubted(), ['recordUnknown 0/body/gearId']],
    ['a doubt', meter, doubted(), []],
    [
      'until before from',
      meter,
      doubted({ fromOn: '2026-11-20', untilOn: '2026-11-19' }),
      ['endBeforeStart 0/body/untilOn'],
    ],
    ['one day', meter, doubted({ fromOn: '2026-11-20', untilOn: '2026-11-20' }), []],
    ['found tomorrow', meter, doubted({ foundOn: tomorrow }), ['dayInFuture 0/body/foundOn']],
    ['the same doubt twice', bad, doubted(), ['alreadyInBook 0/body/doubtId']],
    ['settled', bad, settled('noEffect'), []],
    ['in the same act as it was found', meter, [doubted(), settled('staysDoubtful')], []],
    ['settled without why', bad, settled('noEffect', null, [], null), ['whyNeeded 0/why']],
    ['a doubt that is not there', meter, settled('noEffect'), ['doubtUnknown 0/body/doubtId']],
    ['by what was found, without the factor', bad, settled('asFound'), ['entryNotComplete 0/body/trueOverRead']],
    ['by what was found', bad, settled('asFound', 0.9), []],
    ['a factor with another decision', bad, settled('noEffect', 0.9), ['entryNotComplete 0/body/trueOverRead']],
    [
      'of a pump by what was found',
      [pumpAdded(), doubted(of)],
      settled('asFound', 0.9, [], 'w', of),
      ['onlyMeters 0/body/decision'],
    ],
    ['a certificate of tomorrow', meter, certificate(tomorrow, null), ['dayInFuture 0/body/certificateOn']],
    ['due on its own day', meter, certificate('2026-11-20', '2026-11-20'), ['dueBeforeCertificate 0/body/dueOn']],
    ['a certificate', meter, certificate('2026-11-20', '2027-11-20'), []],
    ['rented', [pumpAdded()], held('rented', { backOn: tomorrow }), []],
    ['our own goes back', [pumpAdded()], held('owned', { backOn: tomorrow }), ['ownGoesBack 0/body/backOn']],
    ['said already', [pumpAdded(), held('lent')], held('lent'), ['sameValue 0/body']],
    ['a pump that is not in the book', [], held('lent'), ['recordUnknown 0/body/gearId']],
  ] as const)('%s', (_, before, wish, expected) => {
    expect(refused(before, wish)).toEqual(expected);
  });

  test('nothing is settled, nor a doubt made shorter, while a file is half taken in; a doubt is written', () => {
    const shorter = corrects(second, '/untilOn', null, '2026-11-25', null, [`meter:${ids.meter}`]);
    expect(refused(bad, settled('noEffect'), true)).toEqual(['takingIn ']);
    expect(refused(bad, shorter, true)).toEqual(['takingIn ']);
    expect(refused(bad, shorter)).toEqual([]);
    expect(refused(meter, doubted(), true)).toEqual([]);
  });

  test('a decision is given the earlier ones of its doubt, and no other', () => {
    const other = 'd00000000009';
    const before = [
      ...bad,
      settled('noEffect'),
      doubted({ doubtId: other }),
      settled('noEffect', null, [], 'w', { doubtId: other }),
    ];
    expect(bodyOf(before, settled('staysDoubtful')).knew).toEqual([`${phone}.00000003`]);
    expect(doubtId).not.toBe(other);
  });
});

describe('money', () => {
  const book = [bookOpened()];
  test.each([
    ['an entry', [], spent(24.5), []],
    ['cents that binary does not hold', [], spent(0.29), []],
    ['parts of a cent', [], spent(24.505), ['notWholeCents 0/body/amountUsd']],
    ['below nothing', [], spent(-1), ['entryNotComplete 0/body/amountUsd']],
    ['twice', [spent(1)], spent(1), ['alreadyInBook 0/body/spendingId']],
    ['tomorrow', [], spent(1, { spentOn: tomorrow }), ['dayInFuture 0/body/spentOn']],
    ['a job that is not in the book', [], spent(1, { siteId: ids.site }), ['recordUnknown 0/body/siteId']],
    ['a box that is not in the book', [], spent(1, { boxId: ids.box }), ['recordUnknown 0/body/boxId']],
    ['struck', [spent(1)], unspent(), []],
    ['struck without why', [spent(1)], unspent(null), ['whyNeeded 0/why']],
    ['struck twice', [spent(1), unspent()], unspent(), ['alreadyStruck 0/body/spendingId']],
    ['struck twice in one act', [spent(1)], [unspent(), unspent()], ['alreadyStruck 1/body/spendingId']],
    ['struck and never entered', [], unspent(), ['recordUnknown 0/body/spendingId']],
    ['prices', book, prices('2026-01-01', 23), []],
    ['of no book', [], prices('2026-01-01', 23), ['recordUnknown 0/body/bookId']],
    ['a price with parts of a cent', book, prices('2026-01-01', 23.333), ['notWholeCents 0/body/analysisUsd']],
  ] as const)('%s', (_, before, wish, expected) => {
    expect(refused(before, wish)).toEqual(expected);
  });

  test('prices are given the earlier ones', () => {
    expect(bodyOf([bookOpened(), prices('2026-01-01', 23)], prices('2026-06-01', 25)).knew).toEqual([second]);
  });
});

describe('corrections', () => {
  const meter = `meter:${ids.meter}`;
  test.each([
    ['a price', [bookOpened(), prices('2026-01-01', 23)], '/analysisUsd', 23, 24, `book:${ids.book}`, []],
    [
      'to parts of a cent',
      [bookOpened(), prices('2026-01-01', 23)],
      '/analysisUsd',
      23,
      23.005,
      `book:${ids.book}`,
      ['notWholeCents 0/body/new'],
    ],
    [
      'a certificate to tomorrow',
      [meterAdded(), certificate('2026-11-20', null)],
      '/certificateOn',
      '2026-11-20',
      tomorrow,
      meter,
      ['dayInFuture 0/body/new'],
    ],
    [
      'due before it',
      [meterAdded(), certificate('2026-11-20', '2027-11-20')],
      '/dueOn',
      '2027-11-20',
      '2026-11-01',
      meter,
      ['dueBeforeCertificate 0/body/new'],
    ],
    ['what was found', [meterAdded(), doubted()], '/found', 'It read one tenth too much', 'It read low', meter, []],
    [
      'another doubt',
      [meterAdded(), doubted()],
      '/doubtId',
      doubtId,
      'd00000000002',
      meter,
      ['fieldFixed 0/body/path'],
    ],
    ['whose gear', [meterAdded(), doubted()], '/gear', 'meter', 'pump', meter, ['fieldFixed 0/body/path']],
  ] as const)('%s', (_, before, path, old, value, key, expected) => {
    expect(refused(before, corrects(second, path, old, value, null, [key]))).toEqual(expected);
  });

  test('a plan and a day made ready are said anew; labels are printed and stay', () => {
    const plan = corrects(first, '/crewCount', 3, 4, null, [`plan:k00000000001`]);
    expect(refused([planned(), ...here], plan)).toEqual(['sayAnew 0/body/path']);
    const label = corrects(first, '/labels/0/blank', false, true, null, [`dayPlan:${shiftId}`]);
    expect(refused([labelled(['120019']), ...here], label)).toEqual(['fieldFixed 0/body/path']);
  });
});

describe('what two devices said differently', () => {
  test('is chosen by whoever knows both, with a reason', () => {
    const [a, b] = [journal([bookOpened(), prices('2026-01-01', 23)]), journal([prices('2026-01-01', 24)], office)];
    const entries = [...a, ...b];
    const chosen = `${office}.00000001`;
    const [open] = folded<BookRecord>(`book:${ids.book}`, entries).conflicts;
    const body = { replaces: open?.factId ?? '', path: '/prices/2026-01-01', chosen };
    const settling = wanted('correctionSettled.v1', body, { about: [`book:${ids.book}`], why: 'the newer quote' });
    const decision = decide([settling], freshOf(entries), { now: at('18:00'), lastSeenAt: null });
    if (decision.kind === 'refused') throw new Error(JSON.stringify(decision));
    const book = folded<BookRecord>(`book:${ids.book}`, [...entries, ...journal(decision.facts, '000000000002')]);
    expect(book).toMatchObject({ prices: [{ analysisUsd: 24, factId: chosen }], conflicts: [] });
    expect(labelOf('/prices/2026-01-01')).toBe('Prices');
    expect(labelOf(`/doubts/${doubtId}`)).toBe('Decision on gear found bad');
  });
});
