/**
 * The journal of the first format, kept for ever: two workers' full shift in an old public library. Expected values are written here by
 * hand from the day's story, not by the fold.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type {
  AnyRecord,
  BoxRecord,
  FlowCheckRecord,
  PersonRecord,
  SampleRecord,
  WorkdayRecord,
} from '#records/book.ts';
import { readBookText } from '#records/bookReading.ts';
import { readFact } from '#records/canonical.ts';
import { foldRecord } from '#records/fold.ts';

const file = JSON.parse(readFileSync(new URL('./first.json', import.meta.url), 'utf8')) as { lines: string[] };
const read = readBookText(file.lines.join('\n'));
const entries = read.kind === 'read' ? read.entries : [];
const about = (text: string): readonly string[] => (JSON.parse(text) as { about: string[] }).about;
const record = <R extends AnyRecord>(key: string): R =>
  foldRecord(
    key,
    entries.filter(({ text }) => about(text).includes(key)),
  ) as R;
const sample = (n: number) => record<SampleRecord>(`sample:c0000000000${n}`);
/** Wall time of the library, six hours behind UTC. */
const local = (at: string | null): string =>
  at === null ? '..' : `${String(Number(at.slice(11, 13)) - 6).padStart(2, '0')}${at.slice(13, 16)}`;
const lineOf = ({ intervals }: SampleRecord) =>
  intervals.map((i) => `${local(i.fromAt)}-${local(i.toAt)} ${i.state}${i.awayFromLead ? ` (${i.reason})` : ''}`);

describe('first.json', () => {
  test('is whole: every link follows, nothing was lost', () => {
    expect(read).toMatchObject({ kind: 'read', header: { formatVersion: 1, bookId: 'b00000000001', practice: false } });
    // Counted on the story: 54 written on the phone, 7 in the office.
    expect(entries).toHaveLength(61);
  });

  test('every fact is still understood', () => {
    expect(entries.map(({ text }) => readFact(text).kind).filter((kind) => kind !== 'known')).toEqual([]);
  });

  test('firm, site, people, gear', () => {
    expect(record('book:b00000000001')).toMatchObject({ firmName: 'Whitlock Window Restoration' });
    expect(record('site:s00000000001')).toMatchObject({
      name: 'Eastfield Old Library',
      stateCode: 'NE',
      setting: 'indoors',
    });
    expect(record<PersonRecord>('person:p00000000002')).toMatchObject({ name: 'Ana Ruiz', language: 'es' });
    expect(record<PersonRecord>('person:p00000000003')).toMatchObject({
      name: 'Benjamin Okafor',
      strikes: [{ path: '/name', old: 'Ben Okafor', new: 'Benjamin Okafor' }],
    });
    expect(record('pump:q00000000001')).toMatchObject({ serial: 'LW-01' });
    expect(record('meter:m00000000001')).toMatchObject({ serial: 'SB-7', meterKind: 'soapFilm', dueOn: '2027-03-02' });
    expect(record('lot:h00000000001')).toMatchObject({ lotNumber: '24-117', expiresOn: '2028-06-30' });
  });

  test('the shift and its flow checks', () => {
    expect(record('shift:s00000000001.2026-11-25')).toMatchObject({
      workOn: '2026-11-25',
      openedAt: '2026-11-25T12:50:00.000Z',
      conditions: { tool: 'hand', method: 'dry', paintLead: 'tested' },
      conflicts: [],
    });
    const before = record<FlowCheckRecord>('flowCheck:f00000000001');
    expect(before.readings.map(({ lowLPerMin }) => lowLPerMin)).toEqual([2.02, 2.0, 2.01]);
    expect(before).toMatchObject({ purpose: 'before', pumpId: 'q00000000001' });
    expect(record<FlowCheckRecord>('flowCheck:f00000000004')).toMatchObject({
      purpose: 'after',
      pumpId: 'q00000000002',
    });
  });

  test("Ana's morning: 07:12 to 11:30, cassette 470016, 41 µg after the digits were put right", () => {
    expect(sample(1)).toMatchObject({
      sampleNumber: '470016',
      workerId: 'p00000000002',
      workdayId: 'p00000000002.2026-11-25',
      siteId: 's00000000001',
      stopped: { pumpMin: 258 },
      fitting: { initials: 'AR', language: 'es' },
      sealed: { lockedIn: 'van, locked chest' },
      results: [{ mass: { kind: 'measured', massUg: 41 } }],
      strikes: [{ path: '/mass/massUg', old: 14, new: 41, why: 'digits exchanged when keyed' }],
      conflicts: [],
      notUnderstood: [],
      clockDoubts: [],
    });
    expect(lineOf(sample(1))).toEqual(['07:12-11:30 worn']);
  });

  test("Ana's afternoon follows it: 11:34 to 15:35 as corrected, with a wash in between", () => {
    expect(sample(3)).toMatchObject({
      sampleNumber: '470032',
      follows: 'c00000000001',
      stopped: { at: '2026-11-25T21:35:00.000Z', entry: 'typed', pumpMin: 241 },
      strikes: [{ path: '/happened/at', why: 'five read as forty' }],
      results: [{ mass: { massUg: 22.5 } }],
    });
    expect(lineOf(sample(3))).toEqual(['11:34-14:15 worn', '14:15-14:25 worn (washed and drank)', '14:25-15:35 worn']);
  });

  test('Ben: lunch from 12:00, found stopped at 14:10 and last seen running at 13:40', () => {
    expect(lineOf(sample(2))).toEqual([
      '07:15-12:00 worn',
      '12:00-12:30 offStopped (lunch)',
      '12:30-13:40 worn',
      '13:40-14:10 doubtful',
      '14:10-14:12 offStopped',
      '14:12-15:45 worn',
    ]);
    expect(sample(2)).toMatchObject({
      sampleNumber: '470024',
      faults: [{ fault: 'stopped' }],
      stopped: { pumpMin: 460 },
    });
  });

  test('the blank: opened in the reading room, less than 0.5 µg', () => {
    expect(sample(4)).toMatchObject({
      sampleKind: 'blank',
      sampleNumber: '470049',
      workerId: null,
      openedWhere: 'reading room, north window',
      putOn: null,
      results: [{ mass: { kind: 'lessThan', reportingLimitUg: 0.5 } }],
    });
  });

  test('the days of both workers', () => {
    expect(record<WorkdayRecord>('workday:p00000000002.2026-11-25')).toMatchObject({
      pieces: [{ startedAt: '2026-11-25T13:00:00.000Z', endedAt: '2026-11-25T21:45:00.000Z' }],
      explained: [{ as: 'sameAs', sampleId: 'c00000000001' }],
      otherWork: { callOut: 'no', secondSite: 'no', secondEmployer: 'no' },
      regular: { regular: 'yes' },
    });
    expect(record<WorkdayRecord>('workday:p00000000003.2026-11-25')).toMatchObject({
      otherWork: null,
      regular: { regular: 'no', reason: 'half the crew was away' },
    });
  });

  test('the box: four cassettes, a sheet in two revisions, handed over and arrived', () => {
    expect(record<BoxRecord>('box:x00000000001')).toMatchObject({
      packed: { sampleIds: ['c00000000001', 'c00000000002', 'c00000000003', 'c00000000004'] },
      issues: [
        { revision: '1', why: null },
        { revision: '2', why: 'stop time of 470032 corrected' },
      ],
      handedOver: { trackingNumber: 'EX 100 200 300', sealed: true },
      arrivedAt: '2026-11-27T15:00:00.000Z',
    });
  });
});
