/**
 * Every input that may be left blank, blanked one at a time while its sample or day stays. Not here: station pressure alone where
 * the altitude is known (either stands for the other; both together are one input), and the laboratory's own volume and
 * concentration (a second witness: what it contradicts is blocked, what it does not say contradicts nothing).
 */
import type { Book, FlowCheckRecord, MeterRecord, SampleRecord, WorkdayRecord } from '#records/book.ts';

export interface Blanked {
  readonly what: string;
  readonly book: Book;
}

const put = <T extends { readonly id: string }>(map: ReadonlyMap<string, T>, record: T): Map<string, T> =>
  new Map(map).set(record.id, record);

type Result = SampleRecord['results'][number];

function ofSample(book: Book, sample: SampleRecord): Blanked[] {
  const as = (what: string, more: Partial<SampleRecord>): Blanked => ({
    what: `${sample.sampleKind} ${what}`,
    book: { ...book, samples: put(book.samples, { ...sample, ...more }) },
  });
  const results = (more: Partial<Result>) => ({ results: sample.results.map((one) => ({ ...one, ...more })) });
  const every = [
    as('result', { results: [] }),
    as('sealed', { sealed: null }),
    as('reportingLimit', results({ reportingLimitUg: null })),
    as('blankCorrected', results({ blankCorrected: 'notStated' })),
    as('wallDeposit', results({ wallDeposit: 'notStated' })),
    as('method', results({ methodId: null })),
    as('accreditation', results({ accreditation: null })),
    as('sae', results({ saeFraction: null })),
    as('laboratory', results({ laboratoryId: null })),
    as('analysedOn', results({ analysedOn: null, reportedOn: null })),
  ];
  if (sample.sampleKind === 'blank') return every;
  const open = sample.intervals.map((one, i) => (i === sample.intervals.length - 1 ? { ...one, toAt: null } : one));
  return [
    ...every,
    as('fitting', { fitting: null }),
    as('putOn', { putOn: null, stopped: null, intervals: [] }),
    as('stop', { stopped: null, intervals: open }),
    as('pumpMinutes', { stopped: sample.stopped && { ...sample.stopped, pumpMin: null } }),
    as('decision', { flowDecision: null }),
    as('reason of the decision', { flowDecision: sample.flowDecision && { ...sample.flowDecision, why: null } }),
    as('reason of the void', { voided: sample.voided && { ...sample.voided, why: null } }),
  ];
}

function ofCheck(book: Book, check: FlowCheckRecord): Blanked[] {
  const as = (more: Partial<FlowCheckRecord>): Book => ({
    ...book,
    flowChecks: put(book.flowChecks, { ...check, ...more }),
  });
  const without = new Map(book.flowChecks);
  without.delete(check.id);
  const noPressure = as({ pressureKPa: null });
  const sites = new Map([...book.sites].map(([id, site]) => [id, { ...site, altitudeM: null }]));
  return [
    { what: `flow ${check.purpose}`, book: { ...book, flowChecks: without } },
    { what: 'temperature', book: as({ temperatureC: null }) },
    { what: 'lot in line', book: as({ lotId: null }) },
    { what: 'station pressure', book: { ...noPressure, sites } },
  ];
}

function ofMeter(book: Book, meter: MeterRecord): Blanked[] {
  const as = (what: string, more: Partial<MeterRecord>): Blanked => ({
    what,
    book: { ...book, meters: put(book.meters, { ...meter, ...more }) },
  });
  return [
    as('certificate date', { certificateOn: null }),
    as('due date', { dueOn: null }),
    as('calibration temperature', { calibrationTemperatureC: null }),
    as('calibration pressure', { calibrationPressureKPa: null }),
    // a soap-film or dry-piston meter without pairs has a certificate that states no correction
    ...(meter.meterKind === 'rotameter' ? [as('pairs', { pairs: [] })] : []),
  ];
}

function ofDay(book: Book, day: WorkdayRecord): Blanked[] {
  const as = (what: string, more: Partial<WorkdayRecord>): Blanked => ({
    what,
    book: { ...book, workdays: put(book.workdays, { ...day, ...more }) },
  });
  return [
    as('hours', { pieces: null }),
    as('other work', { otherWork: null }),
    as('regular day', { regular: null }),
    as('explained minutes', { explained: [] }),
    as('reason of explained minutes', { explained: day.explained.map((one) => ({ ...one, reason: null })) }),
    as('sample of explained minutes', { explained: day.explained.map((one) => ({ ...one, sampleId: null })) }),
  ];
}

export function blankedOnce(book: Book): Blanked[] {
  return [
    ...[...book.samples.values()].flatMap((sample) => ofSample(book, sample)),
    ...[...book.flowChecks.values()].flatMap((check) => ofCheck(book, check)),
    ...[...book.meters.values()].flatMap((meter) => ofMeter(book, meter)),
    ...[...book.workdays.values()].flatMap((day) => ofDay(book, day)),
  ];
}
