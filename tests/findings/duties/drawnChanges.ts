/** Changes of every kind of record that duties rest on, drawn from a seed, one at a time. */
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Book, DeterminationRecord, PumpRecord, RecordBase, ShiftRecord } from '#records/book.ts';
import type { Seeded } from '../../store/seeded.ts';
import { certificate, doubt, settled, withCertificates } from '../gear/gearFacts.ts';
import { base, factId } from '../sliceRegisters.ts';
import { result } from '../slices.ts';
import { done } from './dutyCases.ts';
import { notice, reliance, reported } from './jobBook.ts';

type Maps = { [K in keyof Book]: Book[K] extends ReadonlyMap<string, RecordBase> ? K : never }[keyof Book] & keyof Book;
type RecordIn<K extends Maps> = Book[K] extends ReadonlyMap<string, infer R extends RecordBase> ? R : never;
type Change = (book: Book, found: DutiesOfBook) => Book;

/** `today`: the day on which results come in and papers are written. */
export function drawnChanges({ between, pick, id }: Seeded, today: string): Readonly<Record<string, Change>> {
  const one = <K extends Maps>(book: Book, map: K): RecordIn<K> =>
    pick([...(book[map] as unknown as ReadonlyMap<string, RecordIn<K>>).values()]);
  const put = <K extends Maps>(book: Book, map: K, record: RecordIn<K>): Book => ({
    ...book,
    [map]: new Map(book[map] as unknown as ReadonlyMap<string, RecordIn<K>>).set(record.id, record),
  });
  const half = (): boolean => between(0, 1) === 1;
  const changed = <K extends Maps>(book: Book, map: K, more: (record: RecordIn<K>) => Partial<RecordIn<K>>): Book => {
    const record = one(book, map);
    return put(book, map, { ...record, ...more(record) });
  };
  const asked = (equipment: 'yes' | 'no' | 'notKnown'): NonNullable<ShiftRecord['changes']> => ({
    ...{ equipment, process: 'no', control: 'no', personnel: 'no', newTask: 'no', factId: factId() },
  });
  const written = (book: Book, found: DutiesOfBook): DeterminationRecord => {
    const { siteId, groupKey, measurementIds } = pick(found.determinations);
    const determinationId = id();
    return {
      ...base('determination', determinationId),
      written: {
        ...{ determinationId, outcome: pick(['negative', 'positive']), siteId, shiftId: null, location: 'North side' },
        ...{ determinedOn: today, taskIds: [...(found.groups.get(groupKey)?.taskIds ?? ['handScraping'])] },
        ...{ jobClassificationId: null, measurementIds: measurementIds.slice(0, 2), relianceIds: [], monitoredIds: [] },
        ...{ standsForIds: [one(book, 'people').id], observations: null, earlierMeasurements: null, complaints: null },
        ...{ determination: {}, pdfHash: 'a'.repeat(64), editions: { app: '1', rules: '1', formulas: '1' }, heads: [] },
        ...{ factId: factId(), at: `${today}T18:00:00.000Z`, by: null },
      },
    };
  };
  /** A pump that the book knew by its checks alone is entered. */
  const gearOf = (book: Book, gear: 'pump' | 'meter' | 'lot') => {
    if (gear === 'meter') return { map: 'meters' as const, record: one(book, 'meters') };
    if (gear === 'lot') return { map: 'lots' as const, record: one(book, 'lots') };
    const pumpId = one(book, 'flowChecks').pumpId;
    const entered: PumpRecord = { ...base('pump', pumpId), pumpId, serial: pumpId, model: null };
    return { map: 'pumps' as const, record: book.pumps.get(pumpId) ?? entered };
  };
  const doubted = (book: Book): Book => {
    const gear = pick(['pump', 'meter', 'lot'] as const);
    const { map, record } = gearOf(book, gear);
    const fromOn = half() ? null : one(book, 'samples').workOn;
    const untilOn = half() ? null : one(book, 'samples').workOn;
    const added = doubt(gear, record.id, { doubtId: id(), foundOn: today, fromOn, untilOn });
    return put(book, map, { ...record, doubts: [...(record.doubts ?? []), added] } as RecordIn<typeof map>);
  };
  const decided = (book: Book): Book => {
    for (const map of ['pumps', 'meters', 'lots'] as const)
      for (const record of book[map].values()) {
        if (!record.doubts || !half()) continue;
        const decision = settled(pick(['noEffect', 'asFound', 'staysDoubtful']), pick([0.9, 1.1]));
        const doubts = record.doubts.map((each) => ({ ...each, settled: decision }));
        return put(book, map, { ...record, doubts } as RecordIn<typeof map>);
      }
    return book;
  };
  return {
    gearDoubted: doubted,
    gearDoubtSettled: decided,
    certificateEntered: (book) => {
      const meter = one(book, 'meters');
      const entered = certificate(one(book, 'samples').workOn, { dueOn: half() ? '2030-01-01' : '2024-01-01' });
      return put(book, 'meters', withCertificates(meter, ...(meter.certificates ?? []), entered));
    },
    meter: (book) => changed(book, 'meters', () => ({ dueOn: half() ? '2023-12-01' : '2030-01-01' })),
    result: (book) =>
      changed(book, 'samples', () => ({
        results: between(0, 4) === 0 ? [] : [result(between(0, 90), { receivedOn: today, reportedOn: today })],
      })),
    voided: (book) => changed(book, 'samples', () => ({ voided: half() ? { why: 'opened', factId: factId() } : null })),
    roster: (book) =>
      changed(book, 'workdays', ({ worked = [], workOn }) => {
        const shiftId = half() && worked[0] ? worked[0].shiftId : `${one(book, 'sites').id}.${workOn}`;
        const taskIds = [pick(['handScraping', 'dustCleanup', 'windowTakeOut'])];
        const noted = { shiftId, taskIds, jobClassificationId: null, respirator: null, factId: factId() };
        return { worked: between(0, 2) === 0 ? [] : [...worked, noted] };
      }),
    represents: (book) =>
      changed(book, 'workdays', () => ({ represents: [{ workerIds: [one(book, 'people').id], factId: factId() }] })),
    regular: (book) =>
      changed(book, 'workdays', () => ({
        regular: { regular: pick(['yes', 'no'] as const), reason: null, factId: factId() },
      })),
    changes: (book) => changed(book, 'shifts', () => ({ changes: asked(pick(['yes', 'no', 'notKnown'])) })),
    notice: (book) => {
      const { workdayId, workerId, results } = pick(
        [...book.samples.values()].filter((each) => each.results.length > 0),
      );
      const told = { resultFactIds: results.map((each) => each.factId), workerIds: [workerId ?? ''], issuedOn: today };
      return put(book, 'notices', notice({ id: id(), measurementId: workdayId ?? '', ...told }));
    },
    determination: (book, found) => put(book, 'determinations', written(book, found)),
    reported: (book) => {
      const { workerId, siteId, workOn, taskIds } = one(book, 'samples');
      const reportedId = id();
      const average = { kind: 'measured' as const, twa8UgPerM3: between(0, 90) };
      const of = {
        workerId: half() ? workerId : one(book, 'people').id,
        siteId,
        workOn,
        taskIds: [...taskIds],
        average,
      };
      return put(book, 'reported', reported({ id: reportedId, reportedId, receivedOn: today, ...of }));
    },
    reliance: (book) => {
      const { shiftId, taskIds } = one(book, 'samples');
      const relianceId = id();
      const measurementId = one(book, 'samples').workdayId ?? '';
      return put(
        book,
        'reliances',
        reliance({ id: relianceId, relianceId, measurementId, shiftId, taskIds: [...taskIds] }),
      );
    },
    person: (book) => changed(book, 'people', () => ({ employer: half() ? 'Other firm' : null })),
    classification: (book) => changed(book, 'people', () => ({ jobClassificationId: pick([null, 'j00000000001']) })),
    site: (book) =>
      changed(book, 'sites', () => ({ stateCode: pick(['WA', 'TX', 'OH']), setting: pick(['indoors', 'outdoors']) })),
    duty: (book, found) => put(book, 'duties', done(pick(found.duties).id, today)),
  };
}
