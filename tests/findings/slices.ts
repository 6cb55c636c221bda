/**
 * Small slices of a book for tests: one site, one pump, a day of one worker, sound in every respect unless said otherwise. People
 * and places are plainly invented: the windows of an old public library.
 */
import { addMinutes } from '#core/calendar.ts';
import type {
  Book,
  BoxRecord,
  FlowCheckRecord,
  Interval,
  LotRecord,
  MeterRecord,
  SampleRecord,
  ShiftRecord,
  SiteRecord,
  WorkdayRecord,
} from '#records/book.ts';
import { emptyBook } from '#records/emptyBook.ts';
import {
  at,
  base,
  boxId,
  factId,
  laboratoryId,
  lot,
  lotId,
  meter,
  person,
  shift,
  shiftId,
  site,
  siteId,
  workdayId,
  workerId,
  workOn,
} from './sliceRegisters.ts';

/** A flow check with three steady readings. */
export function check(
  id: string,
  purpose: FlowCheckRecord['purpose'],
  time: string,
  flowLPerMin: number,
  more: Partial<FlowCheckRecord> = {},
): FlowCheckRecord {
  const reading = { lowLPerMin: flowLPerMin, highLPerMin: flowLPerMin };
  return {
    ...base('flowCheck', id),
    flowCheckId: id,
    shiftId,
    pumpId: 'q00000000001',
    meterId: 'm00000000001',
    lotId,
    inLine: 'representativeCassette',
    purpose,
    readings: [reading, reading, reading],
    temperatureC: 25,
    pressureKPa: 101.325,
    remark: null,
    happened: {
      at: time.length > 5 ? time : at(time),
      zone: 'America/Chicago',
      offsetMin: -360,
      entry: 'tapped',
      from: null,
    },
    by: null,
    ...more,
  };
}

export const interval = (fromAt: string, toAt: string | null, more: Partial<Interval> = {}): Interval => ({
  fromAt,
  toAt,
  state: 'worn',
  awayFromLead: false,
  reason: null,
  becauseFactId: factId(),
  ...more,
});

type Result = SampleRecord['results'][number];

export const result = (massUg: number | { readonly lessThanUg: number }, more: Partial<Result> = {}): Result => ({
  sampleId: 'c00000000001',
  reportNumber: 'R-1',
  laboratoryId,
  accreditation: 'A-100',
  methodId: 'niosh-7082',
  receivedOn: '2026-12-02',
  reportedOn: '2026-12-01',
  analysedOn: '2026-11-30',
  mass:
    typeof massUg === 'number'
      ? { kind: 'measured', massUg }
      : { kind: 'lessThan', reportingLimitUg: massUg.lessThanUg },
  reportingLimitUg: typeof massUg === 'number' ? 0.001 : massUg.lessThanUg,
  blankCorrected: 'yes',
  wallDeposit: 'yes',
  laboratoryVolumeL: null,
  laboratoryConcentrationUgPerM3: null,
  saeFraction: null,
  remark: null,
  factId: factId(),
  ...more,
});

const soundPoints = {
  pumpSecured: true,
  tubingSecured: true,
  breathingZone: true,
  outsideRespirator: true,
  insideHelmet: null,
  inletDown: true,
  plugsOff: true,
  running: true,
};

/** A cassette worn from one time to another, stopped, sealed, with the pump's own minutes agreeing. */
export function sample(
  fromAt: string,
  toAt: string,
  results: readonly Result[],
  more: Partial<SampleRecord> = {},
): SampleRecord {
  const id = more.id ?? 'c00000000001';
  const [from, to] = [fromAt.length > 5 ? fromAt : at(fromAt), toAt.length > 5 ? toAt : at(toAt)];
  const pumpMin = (Date.parse(to) - Date.parse(from)) / 60_000;
  const moment = (when: string) => ({ at: when, entry: 'tapped' as const, factId: factId() });
  return {
    ...base('sample', id),
    sampleKind: 'air',
    sampleNumber: '120019',
    shiftId,
    workOn,
    siteId,
    workerId,
    workdayId,
    pumpId: 'q00000000001',
    lotId,
    taskIds: ['handScraping'],
    jobClassificationId: null,
    follows: null,
    openedWhere: null,
    preparedAt: addMinutes(from, -20),
    fitting: {
      sampleId: id,
      mode: 'fitted',
      points: soundPoints,
      observationOffered: true,
      initials: 'AB',
      language: 'en',
      at: from,
    },
    putOn: moment(from),
    stopped: { ...moment(to), pumpMin },
    intervals: [interval(from, to)],
    looks: [],
    leadAreaAway: [],
    faults: [],
    mishaps: [],
    sealed: { ...moment(to), sampleId: id, labelled: true, lockedIn: 'tool room', lockedById: null },
    flowDecision: null,
    voided: null,
    results: results.map((one) => ({ ...one, sampleId: id })),
    remarks: [],
    clockDoubts: [],
    ...more,
  };
}

export const blank = (id: string, results: readonly Result[], more: Partial<SampleRecord> = {}): SampleRecord =>
  sample('10:00', '10:01', results, {
    id,
    sampleKind: 'blank',
    sampleNumber: id.replace(/\D/g, '').slice(-6),
    workerId: null,
    workdayId: null,
    pumpId: null,
    fitting: null,
    putOn: null,
    stopped: null,
    intervals: [],
    ...more,
  });

/** Work from one time to another, asked about, a regular day. */
export function workday(
  pieces: readonly (readonly [string, string])[],
  more: Partial<WorkdayRecord> = {},
): WorkdayRecord {
  const instantOf = (time: string): string => (time.length > 5 ? time : at(time));
  return {
    ...base('workday', workdayId),
    workerId,
    workOn,
    pieces: pieces.map(([from, to]) => ({
      startedAt: instantOf(from),
      endedAt: instantOf(to),
      place: null,
      employer: null,
    })),
    otherWork: { workdayId, callOut: 'no', secondSite: 'no', secondEmployer: 'no' },
    explained: [],
    regular: { regular: 'yes', reason: null, factId: factId() },
    ...more,
  };
}

export const explained = (
  fromAt: string,
  toAt: string,
  as: 'away' | 'sameAs' | 'unknown',
  more: Partial<WorkdayRecord['explained'][number]> = {},
): WorkdayRecord['explained'][number] => ({
  workdayId,
  fromAt: fromAt.length > 5 ? fromAt : at(fromAt),
  toAt: toAt.length > 5 ? toAt : at(toAt),
  as,
  sampleId: null,
  reason: as === 'unknown' ? null : 'in the site office',
  factId: factId(),
  ...more,
});

export const box = (sampleIds: readonly string[], more: Partial<BoxRecord> = {}): BoxRecord => ({
  ...base('box', boxId),
  packedFactId: 'k00000000001.00000001',
  packedAt: at('16:20'),
  packed: {
    boxId,
    siteId,
    sampleIds: [...sampleIds],
    laboratoryId,
    samplerId: 'p00000000009',
    analysis: 'lead',
    methodId: 'niosh-7082',
    reportingLimitUg: 2,
    includeWallDeposit: true,
    callBeforeReanalysis: true,
    turnaround: '5 working days',
    workersShownAs: 'name',
    remark: null,
  },
  issues: [],
  handedOver: null,
  arrivedAt: null,
  ...more,
});

export interface Slice {
  readonly samples?: readonly SampleRecord[];
  readonly checks?: readonly FlowCheckRecord[];
  readonly day?: WorkdayRecord | null;
  readonly site?: SiteRecord;
  readonly meter?: MeterRecord;
  readonly lots?: readonly LotRecord[];
  readonly shift?: ShiftRecord;
  readonly box?: BoxRecord | null;
}

const byId = <T extends { readonly id: string }>(records: readonly T[]): Map<string, T> =>
  new Map(records.map((r) => [r.id, r]));

/** Flow 2.000 L/min before and after unless checks are given. */
export function slice(parts: Slice): Book {
  const samples = parts.samples ?? [];
  const checks = parts.checks ?? [
    check('f00000000001', 'before', '06:40', 2),
    check('f00000000002', 'after', '23:30', 2),
  ];
  const laboratory = {
    ...base('laboratory', laboratoryId),
    laboratoryId,
    name: 'Quay Street Laboratory',
    address: '1 Quay Street',
    accreditation: 'A-100',
  };
  return {
    ...emptyBook,
    book: { ...base('book', 'b00000000001'), bookId: 'b00000000001', firmName: 'Sill and Sash', practice: false },
    sites: byId([parts.site ?? site()]),
    people: byId([person(workerId, 'Ana Sill'), person('p00000000009', 'Rosalind Sash')]),
    meters: byId([parts.meter ?? meter()]),
    lots: byId(parts.lots ?? [lot()]),
    laboratories: byId([laboratory]),
    shifts: byId([parts.shift ?? shift()]),
    flowChecks: byId(checks),
    samples: byId(samples),
    workdays: parts.day === null ? new Map() : byId([parts.day ?? workday([['07:00', '15:00']])]),
    boxes: parts.box === null || parts.box === undefined ? new Map() : byId([parts.box]),
  };
}
