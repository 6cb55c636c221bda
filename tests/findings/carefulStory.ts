/**
 * One worker's day written down fact by fact and folded, as on a device: nothing here makes a record by hand. Sound in every respect
 * unless a test says otherwise: flow 2.00 before and after, worn from 12:00 to 20:00 UTC, eight hours worked, 960 L.
 */
import { findWorkday, type WorkdayFinding } from '#findings/workday.ts';
import type { AnyRecord, Book } from '#records/book.ts';
import type { JournalEntry } from '#records/chain.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import { foldRecord } from '#records/fold.ts';
import { at, ids, journal, shiftId, wanted, workOn } from '../records/facts.ts';

export const workdayId = `${ids.ana}.${workOn}`;
export const sampleKey = `sample:${ids.one}`;
export const workdayKey = `workday:${workdayId}`;

const points = {
  pumpSecured: true,
  tubingSecured: true,
  breathingZone: true,
  outsideRespirator: true,
  insideHelmet: null,
  inletDown: true,
  plugsOff: true,
  running: true,
};

export const site = (more: Partial<FactBody<'siteAdded.v1'>> = {}) =>
  wanted('siteAdded.v1', {
    siteId: ids.site,
    name: 'Old public library',
    stateCode: 'PA',
    setting: 'indoors',
    altitudeM: 100,
    zone: 'America/New_York',
    ...more,
  });

export const meter = (more: Partial<FactBody<'meterAdded.v1'>> = {}) =>
  wanted('meterAdded.v1', {
    meterId: ids.meter,
    meterKind: 'dryPiston',
    serial: 'P-1',
    certificateOn: '2026-06-01',
    dueOn: '2027-06-01',
    calibrationTemperatureC: 25,
    calibrationPressureKPa: 101.325,
    pairs: [],
    ...more,
  });

export const registers = (): NewFact[] => [
  wanted('bookOpened.v1', { bookId: 'b00000000001', firmName: 'Sill and Sash', practice: false }),
  site(),
  meter(),
  wanted('lotAdded.v1', { lotId: ids.lot, lotNumber: 'L-7', media: 'MCE 0.8 µm, 37 mm', expiresOn: null }),
  wanted('pumpAdded.v1', { pumpId: ids.pumpA, serial: 'A', model: null }),
  wanted('shiftOpened.v1', { shiftId, siteId: ids.site, workOn }, { at: at('11:00') }),
];

/** A flow check at a time of the day, or at an instant. */
export function flow(
  id: string,
  purpose: 'before' | 'after' | 'between',
  time: string,
  flowLPerMin: number,
  more: Partial<FactBody<'flowChecked.v1'>> = {},
) {
  const reading = { lowLPerMin: flowLPerMin, highLPerMin: flowLPerMin };
  const body: FactBody<'flowChecked.v1'> = {
    flowCheckId: id,
    shiftId,
    pumpId: ids.pumpA,
    meterId: ids.meter,
    lotId: ids.lot,
    inLine: 'representativeCassette',
    purpose,
    readings: [reading, reading, reading],
    temperatureC: 25,
    pressureKPa: 101.325,
    remark: null,
    ...more,
  };
  return wanted('flowChecked.v1', body, { at: time.length > 5 ? time : at(time) });
}

export const prepared = (sampleId: string = ids.one, more: Partial<FactBody<'samplePrepared.v1'>> = {}) =>
  wanted(
    'samplePrepared.v1',
    {
      sampleId,
      sampleNumber: sampleId === ids.one ? '120019' : '120027',
      shiftId,
      workerId: ids.ana,
      pumpId: ids.pumpA,
      lotId: ids.lot,
      taskIds: ['handScraping'],
      jobClassificationId: null,
      follows: null,
      ...more,
    },
    { at: at('11:50') },
  );

export const fitted = (sampleId: string = ids.one, more: Partial<FactBody<'fittingChecked.v1'>['points']> = {}) =>
  wanted(
    'fittingChecked.v1',
    {
      sampleId,
      mode: 'fitted',
      points: { ...points, ...more },
      observationOffered: true,
      initials: 'AS',
      language: 'en',
    },
    { at: at('11:55') },
  );

type Result = FactBody<'resultReceived.v1'>;

export const result = (massUg: number | { readonly lessThanUg: number }, more: Partial<Result> = {}) => {
  const body: Result = {
    sampleId: ids.one,
    reportNumber: 'R-1',
    laboratoryId: ids.laboratory,
    accreditation: 'A-100',
    methodId: 'niosh-7082',
    receivedOn: '2026-12-02',
    reportedOn: '2026-12-01',
    analysedOn: '2026-11-30',
    mass:
      typeof massUg === 'number'
        ? { kind: 'measured', massUg }
        : { kind: 'lessThan', reportingLimitUg: massUg.lessThanUg },
    reportingLimitUg: typeof massUg === 'number' ? 0.5 : massUg.lessThanUg,
    blankCorrected: 'yes',
    wallDeposit: 'yes',
    laboratoryVolumeL: null,
    laboratoryConcentrationUgPerM3: null,
    saeFraction: null,
    remark: null,
    ...more,
  };
  return wanted('resultReceived.v1', body, { at: at('15:00', '2026-12-02'), entry: 'typed' });
};

export const blankOpened = (sampleId: string, more: Partial<FactBody<'blankOpened.v1'>> = {}) =>
  wanted('blankOpened.v1', {
    sampleId,
    sampleNumber: sampleId.replace(/\D/g, '').slice(-6),
    shiftId,
    lotId: ids.lot,
    openedWhere: 'beside the pumps',
    ...more,
  });

export const putOn = (time: string, sampleId: string = ids.one) =>
  wanted('pumpPutOn.v1', { sampleId }, { at: time.length > 5 ? time : at(time) });
export const stopped = (time: string, pumpMin: number | null, sampleId: string = ids.one) =>
  wanted('pumpStopped.v1', { sampleId, pumpMin }, { at: time.length > 5 ? time : at(time) });

export type PieceOfWork = FactBody<'workHoursStated.v1'>['pieces'][number];
export const piece = (from: string, to: string, more: Partial<PieceOfWork> = {}): PieceOfWork => ({
  startedAt: from.length > 5 ? from : at(from),
  endedAt: to.length > 5 ? to : at(to),
  place: null,
  employer: null,
  ...more,
});
export const hours = (...pieces: readonly PieceOfWork[]) =>
  wanted('workHoursStated.v1', { workdayId, pieces: [...pieces] }, { at: at('20:30'), entry: 'typed' });
export const asked = (more: Partial<FactBody<'otherWorkAsked.v1'>> = {}) =>
  wanted('otherWorkAsked.v1', { workdayId, callOut: 'no', secondSite: 'no', secondEmployer: 'no', ...more });
export const regular = () => wanted('dayDescribed.v1', { workdayId, regular: 'yes', reason: null });
export const explains = (
  from: string,
  to: string,
  as: 'away' | 'sameAs' | 'unknown',
  more: Partial<FactBody<'minutesExplained.v1'>> = {},
) =>
  wanted('minutesExplained.v1', {
    workdayId,
    fromAt: at(from),
    toAt: at(to),
    as,
    sampleId: as === 'sameAs' ? ids.one : null,
    reason: as === 'unknown' ? null : 'seen by the supervisor',
    ...more,
  });

/** The sound day, with the micrograms of its one cassette; more facts go in before the pump is stopped or after everything. */
export function soundDay(massUg: number, between: readonly NewFact[] = [], more: readonly NewFact[] = []): NewFact[] {
  return [
    ...registers(),
    flow('f00000000001', 'before', '11:40', 2),
    prepared(),
    fitted(),
    putOn('12:00'),
    ...between,
    stopped('20:00', 480),
    flow('f00000000002', 'after', '20:10', 2),
    hours(piece('12:00', '20:00')),
    asked(),
    regular(),
    result(massUg),
    ...more,
  ];
}

const about = ({ text }: JournalEntry): readonly string[] => (JSON.parse(text) as { about: string[] }).about;

/** Every record that the entries name, folded: what a device would hold of them. */
export function bookFrom(entries: readonly JournalEntry[]): Book {
  const byKey = new Map<string, JournalEntry[]>();
  for (const entry of entries) for (const key of about(entry)) byKey.set(key, [...(byKey.get(key) ?? []), entry]);
  const records = new Map<string, Map<string, AnyRecord>>();
  for (const [key, own] of byKey) {
    const record = foldRecord(key, own);
    const kind = key.slice(0, key.indexOf(':'));
    if (record) records.set(kind, (records.get(kind) ?? new Map<string, AnyRecord>()).set(record.id, record));
  }
  const of = (kind: string) => (records.get(kind) ?? new Map()) as never;
  const [book = null] = [...(records.get('book') ?? new Map()).values()];
  return {
    book: book as Book['book'],
    sites: of('site'),
    people: of('person'),
    jobClassifications: of('jobClassification'),
    pumps: of('pump'),
    meters: of('meter'),
    lots: of('lot'),
    laboratories: of('laboratory'),
    shifts: of('shift'),
    flowChecks: of('flowCheck'),
    samples: of('sample'),
    workdays: of('workday'),
    boxes: of('box'),
    reported: of('reported'),
    reliances: of('reliance'),
    notices: of('notice'),
    determinations: of('determination'),
    duties: of('duty'),
    requests: of('request'),
    plans: of('plan'),
    dayPlans: of('dayPlan'),
    spendings: of('spending'),
  };
}

export const dayFrom = (entries: readonly JournalEntry[]): WorkdayFinding => findWorkday(workdayId, bookFrom(entries));
export const dayOf = (facts: readonly NewFact[]): WorkdayFinding => dayFrom(journal(facts));

export const standing = (day: WorkdayFinding, which: 'actionLevel' | 'pel') => {
  const found = day.standings.find((one) => one.which === which);
  if (!found) throw new Error(`no standing at ${which}`);
  return found;
};
export const keysOf = (reasons: readonly { readonly key: string }[]): string[] => reasons.map(({ key }) => key);
