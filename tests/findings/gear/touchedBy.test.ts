/**
 * What rests on gear that was found bad, held against a plain reading of the records (which pump, which lot, which meter's checks lie
 * around a run), and against what changes when the doubt is taken away.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDuties } from '#findings/duties/findDuties.ts';
import { gearDoubtsOfPaper } from '#findings/gear/gearDoubtsOf.ts';
import { gearStanding } from '#findings/gear/gearStanding.ts';
import type { Touched } from '#findings/gear/touched.ts';
import { touchedBy } from '#findings/gear/touchedBy.ts';
import type { Book, BoxRecord, FlowCheckRecord, GearDoubt, SampleRecord } from '#records/book.ts';
import { season } from '#tests/bench/seasonBook.ts';
import { notice, reliance } from '../duties/jobBook.ts';
import { base, factId, lotId } from '../sliceRegisters.ts';
import { box } from '../slices.ts';
import { doubt, settled } from './gearFacts.ts';

const made = season(300);
const today = made.lastOn;
const { badMeterId } = made;
const all = [...made.book.samples.values()];
const pumpId = all[0]?.pumpId ?? '';
const [fromOn, untilOn] = ['2024-01-05', '2024-01-12'];

/** Each pump has a meter of its own in this book, and each run a check before and after on its own day. */
const readBy =
  (meterId: string) =>
  (sample: SampleRecord): boolean =>
    [...made.book.flowChecks.values()].some(
      (check: FlowCheckRecord) =>
        check.meterId === meterId && check.pumpId === sample.pumpId && check.shiftId === sample.shiftId,
    );
const within = ({ workOn }: SampleRecord): boolean => fromOn <= workOn && workOn <= untilOn;
const idsOf = (list: readonly { readonly id: string }[]): string[] => list.map(({ id }) => id).sort();

function withDoubt(one: GearDoubt, book: Book = made.book): Book {
  if (one.gear === 'meter') {
    const record = book.meters.get(one.gearId);
    return record ? { ...book, meters: new Map(book.meters).set(record.id, { ...record, doubts: [one] }) } : book;
  }
  if (one.gear === 'lot') {
    const record = book.lots.get(one.gearId);
    return record ? { ...book, lots: new Map(book.lots).set(record.id, { ...record, doubts: [one] }) } : book;
  }
  const pump = { ...base('pump', one.gearId), pumpId: one.gearId, serial: 'SP-4', model: null, doubts: [one] };
  return { ...book, pumps: new Map(book.pumps).set(one.gearId, pump) };
}

let sound: DutiesOfBook;
beforeAll(() => {
  sound = findDuties(made.book, today);
});

function look(one: GearDoubt, book: Book = made.book): { touched: Touched; book: Book; found: DutiesOfBook } {
  const doubted = withDoubt(one, book);
  const found = findDuties(doubted, today, sound);
  const touched = touchedBy(one.gear, one.gearId, one.doubtId, doubted, found);
  if (!touched) throw new Error('the doubt is in the book');
  return { touched, book: doubted, found };
}

describe.each([
  ['meter', badMeterId, readBy(badMeterId)],
  ['pump', pumpId, (sample: SampleRecord) => sample.pumpId === pumpId],
  ['lot', lotId, (sample: SampleRecord) => sample.lotId === lotId],
] as const)('a %s within a week', (gear, gearId, rests) => {
  const one = doubt(gear, gearId, { fromOn, untilOn });

  it('samples, days and measurements are those of a plain reading, and their findings say so', () => {
    const { touched, found } = look(one);
    const expected = all.filter((sample) => rests(sample) && within(sample));
    expect(expected.length).toBeGreaterThan(3);
    expect(idsOf(touched.samples)).toEqual(idsOf(expected));
    const days = [...new Set(expected.map(({ workdayId }) => workdayId ?? ''))].sort();
    expect(idsOf(touched.workdays)).toEqual(days);
    expect(idsOf(touched.measurements)).toEqual(days);
    const blocked = [...found.measurements.values()].filter(({ blocks }) =>
      blocks.some(({ key }) => key === 'gearDoubted'),
    );
    expect(idsOf(blocked)).toEqual(days);
  });

  it('in the order of days, with site and worker', () => {
    const { samples } = look(one).touched;
    expect(samples.map(({ onDay }) => onDay)).toEqual(samples.map(({ onDay }) => onDay).sort());
    for (const { siteId, workerId, number, id } of samples)
      expect({ siteId, workerId, number }).toEqual({
        siteId: made.book.samples.get(id)?.siteId,
        workerId: made.book.samples.get(id)?.workerId,
        number: made.book.samples.get(id)?.sampleNumber,
      });
  });

  it('every duty that is another one than without the doubt is among them, or follows from nothing measured', () => {
    const { touched, found } = look(one);
    const touchedIds = new Set(touched.duties.map(({ id }) => id));
    const measured = new Set(touched.measurements.map(({ id }) => id));
    for (const duty of found.duties)
      expect(touchedIds.has(duty.id)).toBe(duty.measurementIds.some((id) => measured.has(id)));
    expect(touched.duties.length).toBeGreaterThan(0);
    // doubt takes no duty away
    const now = new Set(found.duties.map(({ id }) => id));
    expect(sound.duties.filter(({ id }) => !now.has(id))).toEqual([]);
  });
});

describe('papers', () => {
  const one = doubt('meter', badMeterId);
  const first = all.find(readBy(badMeterId));
  const other = all.find((sample) => !readBy(badMeterId)(sample));
  if (!first || !other) throw new Error('the book has both');
  const issuedBox = (sample: SampleRecord, id: string): BoxRecord => ({
    ...box([sample.id], {
      ...base('box', id),
      packed: { ...box([sample.id]).packed, boxId: id, siteId: sample.siteId },
    }),
    issues: [{ boxId: id, revision: '2', factId: factId(), at: '2024-02-01T15:00:00.000Z', why: null } as never],
  });
  const measurementId = first.workdayId ?? '';
  const told = notice({ id: 'n00000000001', measurementId, resultFactIds: [], workerIds: [], issuedOn: '2024-02-01' });
  const untouched = notice({
    ...{ id: 'n00000000002', measurementId: other.workdayId ?? '', resultFactIds: [], workerIds: [] },
    issuedOn: '2024-02-01',
  });
  const relied = reliance({ id: 'r00000000001', relianceId: 'r00000000001', measurementId, shiftId: other.shiftId });
  const day = made.book.workdays.get(measurementId);
  const record = {
    workdayId: measurementId,
    revision: '3',
    factId: factId(),
    at: '2024-02-02T15:00:00.000Z',
    by: null,
  };
  const book: Book = {
    ...made.book,
    boxes: new Map([first, other].map((sample, i) => [`x0000000000${i}`, issuedBox(sample, `x0000000000${i}`)])),
    notices: new Map([told, untouched].map((paper) => [paper.id, paper])),
    reliances: new Map([[relied.id, relied]]),
    workdays: day
      ? new Map(made.book.workdays).set(day.id, { ...day, recordsIssued: [record as never] })
      : made.book.workdays,
  };

  it('notices, reliances, exposure records and custody sheets that rest on it, and no others', () => {
    const { touched } = look(one, book);
    expect(touched.noticesIssued).toMatchObject([{ id: told.id, siteId: first.siteId }]);
    expect(touched.reliances).toMatchObject([{ id: relied.id, siteId: other.siteId, onDay: other.workOn }]);
    expect(touched.exposureRecords).toMatchObject([{ id: measurementId, number: '3' }]);
    expect(touched.custodySheets).toMatchObject([{ id: 'x00000000000', number: '2', onDay: '2024-02-01' }]);
    expect(touched.noticesOwed.length).toBeGreaterThan(3);
  });

  it('and each of them says so, settled or not', () => {
    const doubted = withDoubt(one, book);
    const papers = [
      { kind: 'notice', id: told.id },
      { kind: 'box', id: 'x00000000000' },
      { kind: 'exposureRecord', id: measurementId },
      { kind: 'sample', id: first.id },
      { kind: 'measurements', ids: [measurementId] },
    ] as const;
    for (const paper of papers) {
      expect(gearDoubtsOfPaper(paper, doubted)).toMatchObject([{ gear: 'meter', gearId: badMeterId, effect: 'open' }]);
      expect(gearDoubtsOfPaper(paper, book)).toEqual([]);
    }
    const lifted = withDoubt({ ...one, settled: settled('noEffect') }, book);
    expect(gearDoubtsOfPaper(papers[0], lifted)).toMatchObject([{ effect: 'noEffect' }]);
    expect(gearDoubtsOfPaper({ kind: 'notice', id: untouched.id }, doubted)).toEqual([]);
  });

  it('what is doubtful stands in the list of gear until it is settled as without effect', () => {
    expect(gearStanding(withDoubt(one), today).doubtful).toMatchObject([{ gearId: badMeterId, effect: 'open' }]);
    expect(gearStanding(withDoubt({ ...one, settled: settled('noEffect') }), today).doubtful).toEqual([]);
  });
});

it('a doubt that the book does not have touches nothing', () => {
  expect(touchedBy('pump', 'q00000000001', 'd00000000009', made.book, sound)).toBeNull();
});
