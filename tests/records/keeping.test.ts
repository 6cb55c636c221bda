/** Pictures, differences between sheet and record that were left so, and entries that a person gave up. */
import { describe, expect, test } from 'vitest';
import type { BookRecord, BoxRecord } from '#records/book.ts';
import { decide } from '#records/decide.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import { at, corrects, folded, freshOf, ids, journal, office, phone, prepared, wanted } from './facts.ts';

const context = { now: at('23:00'), lastSeenAt: null };
const hash = 'a'.repeat(64);
const photo = (more: Partial<FactBody<'photoTaken.v1'>> = {}, time = '12:00', about = [`sample:${ids.one}`]) =>
  wanted(
    'photoTaken.v1',
    {
      ...{ photoId: 'f00000000001', of: 'meterReading', hash, type: 'image/jpeg' },
      ...{ widthPx: 1200, heightPx: 900, bytesCount: 210_000, ...more },
    } as FactBody<'photoTaken.v1'>,
    { about, at: at(time) },
  );

const said = (facts: readonly NewFact[], to: NewFact, more: object = {}): readonly string[] => {
  const decision = decide([to], { ...freshOf(journal(facts)), ...more }, context);
  return decision.kind === 'facts' ? ['facts'] : decision.refusals.map((one) => `${one.key} ${one.fields.join(' ')}`);
};

describe('a picture', () => {
  test('stands on every kind of record that it shows, in the order taken', () => {
    const other = { photoId: 'f00000000002', hash: 'b'.repeat(64) };
    const facts = journal([prepared(), photo({}, '12:30'), photo(other, '12:10')]);
    expect(folded(`sample:${ids.one}`, facts).photos?.map(({ photoId }) => photoId)).toEqual([
      'f00000000002',
      'f00000000001',
    ]);
    const site = wanted('siteAdded.v1', {
      siteId: ids.site,
      name: 'Old library',
      stateCode: 'NY',
      zone: 'America/New_York',
      setting: 'indoors',
      altitudeM: null,
    } as FactBody<'siteAdded.v1'>);
    const onSite = journal([site, photo({ of: 'site' }, '12:00', [`site:${ids.site}`])]);
    expect(folded(`site:${ids.site}`, onSite)).toMatchObject({ photos: [{ of: 'site', bytesCount: 210_000 }] });
    expect(folded(`sample:${ids.one}`, journal([prepared()]))).not.toHaveProperty('photos');
  });

  test('is of something in the book, once, and its hash has the form of one', () => {
    expect(said([prepared()], photo())).toEqual(['facts']);
    expect(said([], photo())).toEqual(['recordUnknown 0/about/0']);
    expect(said([prepared(), photo()], photo({ hash: 'c'.repeat(64) }))).toEqual(['alreadyInBook 0/body/photoId']);
    expect(said([prepared(), photo()], photo({ photoId: 'f00000000003' }))).toEqual(['alreadyInBook 0/body/hash']);
    expect(said([prepared()], photo({ hash: 'A'.repeat(64) }))).toEqual(['entryNotComplete 0/body/hash']);
    expect(said([prepared()], photo({ bytesCount: 300_001 }))).toEqual(['entryNotComplete 0/body/bytesCount']);
  });
});

const packed = wanted('boxPacked.v1', {
  ...{ boxId: ids.box, siteId: ids.site, sampleIds: [ids.one], laboratoryId: ids.laboratory },
  ...{ samplerId: ids.supervisor, analysis: 'lead', methodId: null, reportingLimitUg: null },
  ...{ includeWallDeposit: true, callBeforeReanalysis: true, turnaround: '5 days', workersShownAs: 'identifier' },
  remark: null,
} as FactBody<'boxPacked.v1'>);
const issued = (revision: string) =>
  wanted(
    'custodySheetIssued.v1',
    {
      ...{ boxId: ids.box, revision, paper: 'a4', sheet: {}, pdfHash: hash },
      ...{ editions: { app: '1', rules: '1', formulas: '1' }, heads: [] },
    } as FactBody<'custodySheetIssued.v1'>,
    { why: 'time put right' },
  );
const kept = (revision: string, why: string | null = 'the laboratory was told by telephone') =>
  wanted('sheetDifferenceKept.v1', { boxId: ids.box, revision, recordHash: hash }, { why });

describe('a difference between sheet and record', () => {
  test('may be left so for the sheet issued last, with a reason', () => {
    const box = [prepared(), packed];
    expect(said([...box, issued('1')], kept('1'))).toEqual(['facts']);
    expect(said([...box, issued('1')], kept('1', null))).toEqual(['whyNeeded 0/why']);
    expect(said(box, kept('1'))).toEqual(['sheetNotIssued 0/body/boxId']);
    expect(said([...box, issued('1'), issued('2')], kept('1'))).toEqual(['sheetNotLast 0/body/revision']);
    expect(said([], kept('1'))).toEqual(['recordUnknown 0/body/boxId']);
    expect(said([...box, issued('1')], kept('1'), { takingIn: true })).toEqual(['takingIn ']);
  });

  test('and the box remembers it', () => {
    const box = folded<BoxRecord>(`box:${ids.box}`, journal([packed, issued('1'), kept('1')]));
    expect(box.keptDifferences).toMatchObject([{ revision: '1', recordHash: hash }]);
  });
});

const opened = wanted('bookOpened.v1', {
  bookId: ids.book,
  firmName: 'Old Sash & Steel',
  practice: false,
} as FactBody<'bookOpened.v1'>);
const lost = (fromCount: number, toCount: number, why: string | null = 'the phone fell into the river') =>
  wanted('missingEntriesAccepted.v1', { bookId: ids.book, writer: office, fromCount, toCount }, { why });
const missing = [{ writer: office, fromCount: 3, toCount: 8, untilOn: '2026-11-25' }];

describe('entries that will never come', () => {
  test('only what is missing may be given up, with a reason', () => {
    expect(said([opened], lost(3, 8), { missing })).toEqual(['facts']);
    expect(said([opened], lost(4, 5), { missing })).toEqual(['facts']);
    expect(said([opened], lost(3, 8, ''), { missing })).toEqual(['whyNeeded 0/why']);
    for (const [from, to] of [
      [2, 8],
      [3, 9],
      [8, 3],
      [20, 21],
    ] as const)
      expect(said([opened], lost(from, to), { missing })).toEqual(['notMissing 0/body/fromCount 0/body/toCount']);
    expect(said([opened], lost(3, 8))).toEqual(['notMissing 0/body/fromCount 0/body/toCount']);
    expect(said([opened, lost(3, 5)], lost(4, 8), { missing })).toEqual(['notMissing 0/body/fromCount 0/body/toCount']);
    expect(said([], lost(3, 8), { missing })).toEqual(['recordUnknown 0/body/bookId']);
    expect(said([opened], lost(3, 8), { missing, takingIn: true })).toEqual(['takingIn ']);
  });

  test('the book remembers them; without a reason they do not count', () => {
    const book = folded<BookRecord>(`book:${ids.book}`, journal([opened, lost(3, 5), lost(7, 7, null)]));
    expect(book.accepted).toMatchObject([{ writer: office, fromCount: 3, toCount: 5 }]);
  });
});

describe('while a file is half taken in', () => {
  const decided = wanted('flowDecided.v1', { sampleId: ids.one, use: 'average' }, { why: 'the tube was bent' });
  test('nothing is relaxed, and the day goes on', () => {
    expect(said([prepared()], decided)).toEqual(['facts']);
    expect(said([prepared()], decided, { takingIn: true })).toEqual(['takingIn ']);
    expect(said([prepared()], photo(), { takingIn: true })).toEqual(['facts']);
    const number = corrects(`${phone}.00000001`, '/lotId', ids.lot, 'h00000000002');
    expect(said([prepared()], number, { takingIn: true })).toEqual(['facts']);
  });
});
