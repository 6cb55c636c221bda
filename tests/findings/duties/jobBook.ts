/**
 * Books for tests of notices and determinations: measured full shifts at one site, a roster, notices, reported measurements, everything
 * sound unless said otherwise. A plainly invented crew on the windows of an old public library.
 */
import { addMinutes } from '#core/calendar.ts';
import type {
  Book,
  NoticeRecord,
  PersonRecord,
  RelianceRecord,
  ReportedRecord,
  SampleRecord,
  ShiftRecord,
  SiteRecord,
  WorkdayRecord,
} from '#records/book.ts';
import { emptyBook } from '#records/emptyBook.ts';
import { base, factId, lot, meter, person, site, siteId } from '../sliceRegisters.ts';
import { check, interval, result, sample } from '../slices.ts';

export const tess = 'p00000000001';
export const vic = 'p00000000002';
export const olga = 'p00000000003';
const numberOf = new Map([tess, vic, olga].map((id, index) => [id, index + 1]));

export interface Day {
  readonly workerId?: string;
  readonly workOn: string;
  /** 8-hour average that the mass is made for; null: the result is owed. */
  readonly averageUgPerM3: number | null;
  readonly receivedOn?: string;
  readonly siteId?: string;
  readonly taskIds?: readonly string[];
  readonly regular?: 'yes' | 'no' | null;
  readonly sample?: Partial<SampleRecord>;
  readonly workday?: Partial<WorkdayRecord>;
  /** The flow after is written down. */
  readonly flowAfter?: boolean;
}

export const flowLPerMin = 2;
const shiftMin = 480;
/** m = C V: 2 L/min over 480 minutes is 0.96 m³. */
export const massUgFor = (averageUgPerM3: number): number => (averageUgPerM3 * flowLPerMin * shiftMin) / 1000;

type Six = 'tool' | 'method' | 'dustCollection' | 'containment' | 'ventilation' | 'weather' | 'paintLead' | 'area';
type Conditions = Pick<NonNullable<ShiftRecord['conditions']>, Six | 'remark'>;

const conditions: Conditions = {
  tool: 'hand',
  method: 'wet',
  dustCollection: 'none',
  containment: 'partial',
  ventilation: 'natural',
  weather: 'indoors',
  paintLead: 'tested',
  area: 'room',
  remark: null,
};

export const shiftOn = (
  workOn: string,
  more: Partial<ShiftRecord> = {},
  other: Partial<Conditions> | null = {},
  at = siteId,
): ShiftRecord => {
  const shiftId = `${at}.${workOn}`;
  return {
    ...base('shift', shiftId),
    siteId: at,
    workOn,
    openedAt: `${workOn}T11:30:00.000Z`,
    conditions: other === null ? null : { ...conditions, shiftId, ...other },
    ...more,
  };
};

export const sampleIdOf = (workerId: string, workOn: string): string =>
  `c${numberOf.get(workerId) ?? 9}00${workOn.replaceAll('-', '')}`;
export const workdayIdOf = (workerId: string, workOn: string): string => `${workerId}.${workOn}`;

export const worked = (
  workOn: string,
  at = siteId,
  taskIds: readonly string[] = ['handScraping'],
): NonNullable<WorkdayRecord['worked']>[number] => ({
  shiftId: `${at}.${workOn}`,
  taskIds: [...taskIds],
  jobClassificationId: null,
  respirator: null,
  factId: factId(),
});

/** On the roster that day, without a sample. */
export const rosterDay = (workerId: string, workOn: string, at = siteId): WorkdayRecord => ({
  ...base('workday', workdayIdOf(workerId, workOn)),
  workerId,
  workOn,
  pieces: null,
  otherWork: null,
  explained: [],
  regular: null,
  worked: [worked(workOn, at)],
});

function measured(day: Day) {
  const { workerId = tess, workOn, averageUgPerM3, receivedOn = workOn, taskIds = ['handScraping'] } = day;
  const at = day.siteId ?? siteId;
  const [id, shiftId, workdayId] = [sampleIdOf(workerId, workOn), `${at}.${workOn}`, workdayIdOf(workerId, workOn)];
  const [fromAt, toAt] = [`${workOn}T13:00:00.000Z`, `${workOn}T21:00:00.000Z`];
  const pumpId = `q${id.slice(1)}`;
  const results =
    averageUgPerM3 === null
      ? []
      : [result(massUgFor(averageUgPerM3), { receivedOn, reportedOn: receivedOn, reportNumber: `R-${workOn}` })];
  const air = sample(fromAt, toAt, results, {
    ...{ id, shiftId, workOn, siteId: at, workerId, workdayId, pumpId, taskIds: [...taskIds] },
    sampleNumber: `${id.slice(1, 2)}${id.slice(-6)}`,
    intervals: [interval(fromAt, toAt)],
    ...day.sample,
  });
  const flow = (purpose: 'before' | 'after', time: string) =>
    check(`f${purpose[0]}${id.slice(1, 2)}${id.slice(3)}`, purpose, time, flowLPerMin, { shiftId, pumpId });
  const checks = [flow('before', addMinutes(fromAt, -20)), flow('after', addMinutes(toAt, 10))];
  const regular = day.regular === undefined ? 'yes' : day.regular;
  const workday: WorkdayRecord = {
    ...base('workday', workdayId),
    workerId,
    workOn,
    pieces: [{ startedAt: fromAt, endedAt: toAt, place: null, employer: null }],
    otherWork: { workdayId, callOut: 'no', secondSite: 'no', secondEmployer: 'no' },
    explained: [],
    regular: regular && { regular, reason: regular === 'no' ? 'rain from ten' : null, factId: factId() },
    worked: [worked(workOn, at, taskIds)],
    ...day.workday,
  };
  return { air, checks: day.flowAfter === false ? checks.slice(0, 1) : checks, workday };
}

export interface Job {
  readonly days?: readonly Day[];
  readonly roster?: readonly WorkdayRecord[];
  readonly shifts?: readonly ShiftRecord[];
  readonly notices?: readonly NoticeRecord[];
  readonly reported?: readonly ReportedRecord[];
  readonly reliances?: readonly RelianceRecord[];
  readonly sites?: readonly SiteRecord[];
  readonly people?: readonly PersonRecord[];
  readonly more?: Partial<Book>;
}

const byId = <T extends { readonly id: string }>(records: readonly T[]): Map<string, T> =>
  new Map(records.map((one) => [one.id, one]));

export function jobBook(job: Job): Book {
  const made = (job.days ?? []).map(measured);
  const workdays = [...(job.roster ?? []), ...made.map(({ workday }) => workday)];
  const shifts = byId(
    workdays.flatMap(({ worked: entries = [], workOn }) =>
      entries.map(({ shiftId }) => shiftOn(workOn, {}, {}, shiftId.slice(0, 12))),
    ),
  );
  for (const one of job.shifts ?? []) shifts.set(one.id, one);
  return {
    ...emptyBook,
    book: { ...base('book', 'b00000000001'), bookId: 'b00000000001', firmName: 'Sill and Sash', practice: false },
    sites: byId(job.sites ?? [site()]),
    people: byId(job.people ?? [person(tess, 'Tess Trestle'), person(vic, 'Vic Vise'), person(olga, 'Olga Oriel')]),
    meters: byId([meter({ certificateOn: '2024-01-08' })]),
    lots: byId([lot()]),
    shifts,
    flowChecks: byId(made.flatMap(({ checks }) => checks)),
    samples: byId(made.map(({ air }) => air)),
    workdays: byId(workdays),
    reported: byId(job.reported ?? []),
    reliances: byId(job.reliances ?? []),
    notices: byId(job.notices ?? []),
    ...job.more,
  };
}

export interface Given {
  readonly measurementId: string;
  readonly resultFactIds: readonly string[];
  readonly workerIds?: readonly string[];
  readonly issuedOn: string;
  readonly given?: readonly Partial<NoticeRecord['given'][number]>[];
  readonly issued?: Partial<NoticeRecord['issued']>;
  readonly id?: string;
}

const papers = { pdfHash: '0'.repeat(64), editions: { app: '0', rules: '0', formulas: '0' }, heads: [] };

/** Handed to the first worker on the day of issue unless said otherwise. Noon UTC. */
export function notice(given: Given): NoticeRecord {
  const { id = 'n00000000001', issuedOn, workerIds = [tess], measurementId, resultFactIds } = given;
  const at = `${issuedOn}T18:00:00.000Z`;
  const handed = { noticeId: id, how: 'handedOver', place: null, language: 'en', initials: 'T', by: null } as const;
  return {
    ...base('notice', id),
    issued: {
      ...{ noticeId: id, measurementId, revision: '1', resultFactIds: [...resultFactIds], workerIds: [...workerIds] },
      ...{ receivedOn: issuedOn, form: 'inWriting', places: [], shownAs: 'name', languages: ['en'], by: null, at },
      ...{ pelStatement: false, correctiveAction: null, notice: {}, factId: factId(), ...papers },
      ...given.issued,
    },
    given: (given.given ?? [{}]).map((one) => ({
      ...handed,
      workerId: workerIds[0] ?? null,
      factId: factId(),
      at,
      ...one,
    })),
  };
}

export const reported = (more: Partial<ReportedRecord> = {}): ReportedRecord => ({
  ...base('reported', more.reportedId ?? 'r00000000001'),
  reportedId: 'r00000000001',
  reportedFactId: factId(),
  from: 'consultant',
  fromName: 'Grace Gauge, consultant',
  reportNumber: 'G-7',
  workerId: tess,
  siteId,
  setting: 'indoors',
  workOn: '2026-11-02',
  receivedOn: '2026-11-16',
  taskIds: ['handScraping'],
  jobClassificationId: null,
  average: { kind: 'measured', twa8UgPerM3: 12 },
  workedHours: 8,
  fullShift: 'yes',
  ownFirm: 'yes',
  accuracy: 'yes',
  remark: null,
  ...more,
});

export const reliance = (more: Partial<RelianceRecord> = {}): RelianceRecord => ({
  ...base('reliance', more.relianceId ?? 'v00000000001'),
  relianceId: 'v00000000001',
  reliedFactId: factId(),
  measurementId: 'r00000000001',
  shiftId: `${siteId}.2026-11-25`,
  taskIds: ['handScraping'],
  jobClassificationId: null,
  processes: 'alike',
  material: 'alike',
  controls: 'alike',
  practices: 'alike',
  environment: 'alike',
  ownFirm: 'yes',
  ...more,
});
