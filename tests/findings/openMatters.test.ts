/** The short list of what a person has to settle: nothing in it without a dispute, and each dispute until it is settled. */
import { describe, expect, test } from 'vitest';
import { custodySheetFor } from '#findings/custody.ts';
import { type OpenMatter, openMatters } from '#findings/openMatters.ts';
import { recordHashOf, sheetDiffers } from '#findings/sheetDiffers.ts';
import type { Book } from '#records/book.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import { at, boxPacked, corrects, ids, journal, office, phone, wanted } from '../records/facts.ts';
import { bookFrom, fitted, prepared, putOn, soundDay, stopped } from './carefulStory.ts';

const third = 'xxxxxxxxxxx1';
type Written = readonly [string, readonly NewFact[]];
const bookOf = (...devices: readonly Written[]): Book =>
  bookFrom(devices.flatMap(([name, facts]) => journal(facts, name)));
const kinds = (matters: readonly OpenMatter[]): readonly string[] => matters.map(({ kind }) => kind);

const person = (personId: string, name: string, identifier: string) => {
  const plain = { language: 'en', jobClassificationId: null, employer: null } as const;
  return wanted('personAdded.v1', { personId, name, identifier, ...plain });
};

/** The day with its pump and people, so that a sheet can be made. */
const day = (massUg = 24): NewFact[] => [
  ...soundDay(massUg),
  person(ids.ana, 'Ana Sill', 'A-1'),
  person(ids.supervisor, 'Pia Putty', 'S-1'),
  wanted('laboratoryAdded.v1', {
    laboratoryId: ids.laboratory,
    name: 'Weigh House',
    address: '1 Mill Lane',
    accreditation: 'A-100',
  }),
];
const idOf = (facts: readonly NewFact[], kind: string, writer = phone): string =>
  `${writer}.${String(facts.findIndex((fact) => fact.kind === kind) + 1).padStart(8, '0')}`;

test('a sound day leaves nothing to settle', () => {
  expect(openMatters(bookOf([phone, day()]))).toEqual([]);
});

describe('values in dispute', () => {
  const facts = day();
  const res = idOf(facts, 'resultReceived.v1');
  const mass = (massUg: number) => ({ kind: 'measured', massUg });
  const apart = (a: number, b: number) =>
    bookOf(
      [phone, facts],
      [office, [corrects(res, '/mass', mass(24), mass(a))]],
      [third, [corrects(res, '/mass', mass(24), mass(b))]],
    );

  test('name the value that judges: the heavier, whoever wrote it and in whatever order', () => {
    for (const [a, b] of [
      [20, 60],
      [60, 20],
    ] as const) {
      const [matter] = openMatters(apart(a, b));
      expect(matter).toMatchObject({
        kind: 'conflict',
        recordKeys: [`sample:${ids.one}`],
        standing: mass(60),
        judges: 'careful',
      });
    }
  });

  test('where no direction is known, what was said first stands', () => {
    const sample = idOf(facts, 'samplePrepared.v1');
    const lots = ['h00000000002', 'h00000000003'] as const;
    const book = bookOf(
      [phone, facts],
      [office, [corrects(sample, '/lotId', ids.lot, lots[0])]],
      [third, [corrects(sample, '/lotId', ids.lot, lots[1])]],
    );
    expect(openMatters(book)).toMatchObject([{ kind: 'conflict', standing: ids.lot, judges: 'first' }]);
  });
});

describe('void against result', () => {
  const facts = day();
  const voids: Written = [office, [wanted('sampleVoided.v1', { sampleId: ids.one }, { why: 'found open' })]];
  const review = (stands: boolean) =>
    wanted(
      'voidReviewed.v1',
      {
        sampleId: ids.one,
        voidFactId: `${office}.00000001`,
        stands,
        knew: [idOf(facts, 'resultReceived.v1')],
      },
      { why: 'asked the crew' },
    );

  test('is open until a person who knew both has said', () => {
    expect(openMatters(bookOf([phone, facts], voids))).toMatchObject([
      { kind: 'voidAgainstResult', sampleNumber: '120019', voidWhy: 'found open', judges: 'void' },
    ]);
    for (const stands of [true, false])
      expect(openMatters(bookOf([phone, facts], voids, [third, [review(stands)]]))).toEqual([]);
  });
});

test('two cassettes with one number are one matter, and another number for one of them settles it', () => {
  const own = { pumpId: ids.pumpB, workerId: ids.ben, sampleNumber: '120019' };
  const other = [prepared(ids.two, own), fitted(ids.two), putOn('12:00', ids.two), stopped('20:00', 480, ids.two)];
  const facts = [...day(), ...other];
  expect(openMatters(bookOf([phone, facts]))).toMatchObject([
    { kind: 'sameNumber', sampleNumber: '120019', sampleIds: [ids.one, ids.two], judges: 'doubt' },
  ]);
  const second = `${phone}.${String(day().length + 1).padStart(8, '0')}`;
  const right = corrects(second, '/sampleNumber', '120019', '120027', null, [`sample:${ids.two}`]);
  expect(openMatters(bookOf([phone, facts], [office, [right]]))).toEqual([]);
});

describe('a sheet that differs from the record', () => {
  const packed = boxPacked([ids.one]);
  const facts = [...day(), packed];
  const editions = { app: '1', rules: '1', formulas: '1' };
  const made = custodySheetFor(ids.box, bookOf([phone, facts]), {
    ...{ issuedInstant: at('21:00'), why: null, heads: [], editions },
  });
  const issued = wanted(
    'custodySheetIssued.v1',
    {
      ...{ boxId: ids.box, revision: '1', paper: 'a4', pdfHash: 'a'.repeat(64), editions, heads: [] },
      sheet: made.kind === 'sheet' ? made.sheet : {},
    } as FactBody<'custodySheetIssued.v1'>,
    { at: at('21:00') },
  );
  const stop = idOf(facts, 'pumpStopped.v1');
  const later = (time: string, writer: string): Written => [
    writer,
    [corrects(stop, '/happened/at', at('20:00'), at(time))],
  ];
  const boxed: Written = [phone, [...facts, issued]];

  test('is open when a time was corrected after it was issued, with what differs', () => {
    expect(made.kind).toBe('sheet');
    expect(openMatters(bookOf(boxed))).toEqual([]);
    const [matter, ...more] = openMatters(bookOf(boxed, later('19:30', office)));
    expect(more).toEqual([]);
    expect(matter).toMatchObject({ kind: 'sheetDiffers', revision: '1', judges: 'record' });
    expect(matter?.kind === 'sheetDiffers' && matter.differences.map(({ path }) => path)).toContain(
      '/rows/0/stoppedAt',
    );
  });

  test('left so with a reason it is settled; when the record changes again, it is open again', () => {
    const recordHash = recordHashOf(ids.box, bookOf(boxed, later('19:30', office))) ?? '';
    expect(recordHash).toMatch(/^[0-9a-f]{64}$/);
    const kept = (why: string | null, revision = '1'): Written => [
      third,
      [wanted('sheetDifferenceKept.v1', { boxId: ids.box, revision, recordHash }, { why })],
    ];
    const changed = [boxed, later('19:30', office)] as const;
    expect(openMatters(bookOf(...changed, kept('the laboratory was told')))).toEqual([]);
    expect(kinds(openMatters(bookOf(...changed, kept(null))))).toEqual(['sheetDiffers']);
    expect(kinds(openMatters(bookOf(...changed, kept('told', '2'))))).toEqual(['sheetDiffers']);
    const again = bookOf(boxed, later('19:10', office), kept('the laboratory was told'));
    expect(kinds(openMatters(again))).toEqual(['sheetDiffers']);
    expect(sheetDiffers(ids.box, bookOf(...changed, kept('told')))).not.toEqual([]);
  });

  test('the hash of the record is the same for the same record, whoever holds it', () => {
    const once = recordHashOf(ids.box, bookOf(boxed));
    const shuffled = bookFrom([...journal(boxed[1], phone)].reverse());
    expect(recordHashOf(ids.box, shuffled)).toBe(once);
    expect(recordHashOf(ids.box, bookOf([phone, facts]))).toBeNull();
    expect(recordHashOf(ids.box, bookOf(boxed, later('19:30', office)))).not.toBe(once);
  });
});

test('missing entries are a matter each, in the order told', () => {
  const missing = [
    { writer: office, fromCount: 2, toCount: 4, untilOn: '2026-11-25' },
    { writer: third, fromCount: 1, toCount: 1, untilOn: '2026-11-25' },
  ];
  const found = openMatters({ ...bookOf([phone, day()]), missing });
  expect(found).toMatchObject(missing.map((range) => ({ kind: 'missingEntries', missing: range, judges: 'doubt' })));
  expect(new Set(found.map(({ key }) => key)).size).toBe(2);
});
