/**
 * A day file as a book: the same records that the journal folds into, so that the command line and the app run the same findings.
 * Where the app names a fact, a record here names the path in the file that it stands in.
 */
import type { AnyRecord, Book, FlowCheckRecord, SampleRecord, ShiftRecord, WorkdayRecord } from '#records/book.ts';
import { emptyBook } from '#records/emptyBook.ts';
import type { DayFile, DayInFile } from './dayFile.ts';
import { baseAt, shiftIdOf, utc, workdayIdOf } from './dayIds.ts';
import { recordOfSample, resultsOf } from './daySample.ts';

const byId = <T extends AnyRecord>(records: readonly T[]): Map<string, T> =>
  new Map(records.map((one) => [one.id, one]));

function checkRecord(
  check: DayFile['flowChecks'][number],
  i: number,
  shiftOf: (at: string) => string,
): FlowCheckRecord {
  const path = `/flowChecks/${i}`;
  const at = utc(check.at);
  return {
    ...baseAt('flowCheck', path, path),
    flowCheckId: path,
    shiftId: shiftOf(check.at),
    pumpId: check.pump,
    meterId: check.meter,
    lotId: check.lot ?? null,
    inLine: check.inLine,
    purpose: check.purpose,
    readings: check.readings,
    temperatureC: check.temperatureC ?? null,
    pressureKPa: check.pressureKPa ?? null,
    remark: null,
    happened: { at, zone: 'UTC', offsetMin: 0, entry: 'typed', from: path },
    by: null,
  };
}

const workedOf = (day: DayInFile, taskIds: string[], factId: string) => ({
  shiftId: shiftIdOf(day.site, day.workOn),
  taskIds,
  jobClassificationId: null,
  respirator: null,
  factId,
});

function workdayRecord(day: DayInFile, i: number): WorkdayRecord {
  const path = `/days/${i}`;
  const workdayId = workdayIdOf(day.worker, day.workOn);
  const idOf = (number: string | null | undefined): string | null =>
    number === null || number === undefined
      ? null
      : `${path}/samples/${day.samples.findIndex((s) => s.number === number)}`;
  return {
    ...baseAt('workday', workdayId, path),
    workerId: day.worker,
    workOn: day.workOn,
    pieces:
      day.pieces?.map(({ from, to, place, employer }) => ({
        startedAt: utc(from),
        endedAt: utc(to),
        place: place ?? null,
        employer: employer ?? null,
      })) ?? null,
    otherWork: day.otherWork ? { workdayId, ...day.otherWork } : null,
    explained: (day.explained ?? []).map((one, j) => ({
      workdayId,
      fromAt: utc(one.from),
      toAt: utc(one.to),
      as: one.as,
      sampleId: idOf(one.sample),
      reason: one.reason ?? null,
      factId: `${path}/explained/${j}`,
    })),
    regular: day.regular
      ? { regular: day.regular, reason: day.notRegularWhy ?? null, factId: `${path}/regular` }
      : null,
    ...(day.tasks && day.tasks.length > 0 ? { worked: [workedOf(day, day.tasks, `${path}/tasks`)] } : {}),
  };
}

function blankRecord(blank: DayFile['blanks'][number], i: number): SampleRecord {
  const path = `/blanks/${i}`;
  return {
    ...baseAt('sample', path, path),
    sampleKind: 'blank',
    sampleNumber: blank.number,
    shiftId: shiftIdOf(blank.site, blank.workOn),
    workOn: blank.workOn,
    siteId: blank.site,
    lotId: blank.lot,
    workerId: null,
    workdayId: null,
    pumpId: null,
    taskIds: [],
    jobClassificationId: null,
    follows: null,
    openedWhere: null,
    preparedAt: `${blank.workOn}T00:00:00.000Z`,
    fitting: null,
    putOn: null,
    stopped: null,
    intervals: [],
    looks: [],
    leadAreaAway: [],
    faults: [],
    mishaps: [],
    sealed: null,
    flowDecision: null,
    voided: blank.void ? { why: blank.void.why, factId: `${path}/void` } : null,
    results: resultsOf(blank.result, path),
    remarks: [],
    clockDoubts: [],
  };
}

function siteRecords(file: DayFile): Book['sites'] {
  return byId(
    file.sites.map((site, i) => ({
      ...baseAt('site', site.name, `/sites/${i}`),
      siteId: site.name,
      name: site.name,
      stateCode: site.stateCode,
      setting: site.setting,
      altitudeM: site.altitudeM ?? null,
      zone: site.zone,
    })),
  );
}

function meterRecords(file: DayFile): Book['meters'] {
  return byId(
    file.meters.map((meter, i) => ({
      ...baseAt('meter', meter.name, `/meters/${i}`),
      meterId: meter.name,
      meterKind: meter.meterKind,
      serial: meter.name,
      certificateOn: meter.certificateOn ?? null,
      dueOn: meter.dueOn ?? null,
      calibrationTemperatureC: meter.calibrationTemperatureC ?? null,
      calibrationPressureKPa: meter.calibrationPressureKPa ?? null,
      pairs: meter.pairs ?? [],
    })),
  );
}

function shiftRecords(file: DayFile): Book['shifts'] {
  const shifts = new Map<string, ShiftRecord>();
  file.days.forEach(({ site, workOn }, i) => {
    const id = shiftIdOf(site, workOn);
    const openedAt = `${workOn}T00:00:00.000Z`;
    if (!shifts.has(id))
      shifts.set(id, { ...baseAt('shift', id, `/days/${i}`), siteId: site, workOn, openedAt, conditions: null });
  });
  return shifts;
}

/** A flow check belongs to the site's day on which it was made; a file of several sites takes the day with a sample of that pump. */
function shiftOfCheck(file: DayFile, check: DayFile['flowChecks'][number]): string {
  const on = check.at.slice(0, 10);
  const withPump = file.days.filter(({ samples }) => samples.some(({ pump }) => pump === check.pump));
  const day = withPump.find(({ workOn }) => workOn === on) ?? withPump.at(-1) ?? file.days[0];
  return day ? shiftIdOf(day.site, withPump.some(({ workOn }) => workOn === on) ? on : day.workOn) : '';
}

export function bookOfDays(file: DayFile): Book {
  const samples = file.days.flatMap((day, i) =>
    day.samples.map((one, j) => recordOfSample(one, day, `/days/${i}/samples/${j}`)),
  );
  return {
    ...emptyBook,
    sites: siteRecords(file),
    meters: meterRecords(file),
    shifts: shiftRecords(file),
    flowChecks: byId(file.flowChecks.map((check, i) => checkRecord(check, i, () => shiftOfCheck(file, check)))),
    samples: byId([...samples, ...file.blanks.map(blankRecord)]),
    workdays: byId(file.days.map(workdayRecord)),
  };
}
