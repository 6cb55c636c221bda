/** One sample of a day file as a record: its intervals drawn between put-on and stop, its result as received. */
import type { Interval, SampleRecord } from '#records/book.ts';
import type { DayInFile, ResultInFile, SampleInFile } from './dayFile.ts';
import { baseAt, shiftIdOf, utc, workdayIdOf } from './dayIds.ts';

export function resultsOf(result: ResultInFile | null | undefined, path: string): SampleRecord['results'] {
  if (!result) return [];
  const { massUg } = result;
  const mass =
    typeof massUg === 'number'
      ? ({ kind: 'measured', massUg } as const)
      : ({ kind: 'lessThan', reportingLimitUg: massUg.lessThanUg } as const);
  return [
    {
      sampleId: path,
      reportNumber: result.reportNumber,
      laboratoryId: null,
      accreditation: result.accreditation ?? null,
      methodId: result.method ?? null,
      receivedOn: result.receivedOn,
      reportedOn: null,
      analysedOn: null,
      mass,
      reportingLimitUg: mass.kind === 'lessThan' ? mass.reportingLimitUg : (result.reportingLimitUg ?? null),
      blankCorrected: result.blankCorrected,
      wallDeposit: result.wallDeposit,
      laboratoryVolumeL: result.laboratoryVolumeL ?? null,
      laboratoryConcentrationUgPerM3: result.laboratoryConcentrationUgPerM3 ?? null,
      saeFraction: result.saeFraction ?? null,
      remark: null,
      factId: `${path}/result`,
    },
  ];
}

const later = (a: string, b: string): string => (a > b ? a : b);

/** What lies between the stretches was worn and running. Stretches are cut to the time between put-on and stop. */
function intervalsOf(sample: SampleInFile, path: string): Interval[] {
  const putOnAt = utc(sample.putOn);
  const stoppedAt = sample.stopped ? utc(sample.stopped) : null;
  const worn = (fromAt: string, toAt: string | null): Interval => ({
    fromAt,
    toAt,
    state: 'worn',
    awayFromLead: false,
    reason: null,
    becauseFactId: path,
  });
  const found: Interval[] = [];
  let cursor = putOnAt;
  const stretches = (sample.stretches ?? []).map((one, i) => ({ ...one, fromAt: utc(one.from), toAt: utc(one.to), i }));
  for (const { fromAt, toAt, as, awayFromLead, reason, i } of stretches.sort((a, b) =>
    a.fromAt < b.fromAt ? -1 : 1,
  )) {
    const from = later(fromAt, cursor);
    const to = stoppedAt !== null && toAt > stoppedAt ? stoppedAt : toAt;
    if (to <= from) continue;
    if (from > cursor) found.push(worn(cursor, from));
    found.push({
      fromAt: from,
      toAt: to,
      state: as,
      awayFromLead,
      reason: reason ?? null,
      becauseFactId: `${path}/stretches/${i}`,
    });
    cursor = to;
  }
  if (stoppedAt === null || cursor < stoppedAt) found.push(worn(cursor, stoppedAt));
  return found;
}

function fittingOf(sample: SampleInFile, path: string): SampleRecord['fitting'] {
  if (!sample.fitting) return null;
  const points = { ...sample.fitting, insideHelmet: sample.fitting.insideHelmet ?? null };
  const rest = { observationOffered: true, initials: null, language: 'en', at: utc(sample.putOn) } as const;
  return { sampleId: path, mode: 'fitted', points, ...rest };
}

export function recordOfSample(sample: SampleInFile, day: DayInFile, path: string): SampleRecord {
  const typed = (at: string, field: string) => ({ at, entry: 'typed' as const, factId: `${path}/${field}` });
  const putOnAt = utc(sample.putOn);
  return {
    ...baseAt('sample', path, path),
    sampleKind: 'air',
    sampleNumber: sample.number,
    shiftId: shiftIdOf(day.site, day.workOn),
    workOn: day.workOn,
    siteId: day.site,
    workerId: day.worker,
    workdayId: workdayIdOf(day.worker, day.workOn),
    pumpId: sample.pump,
    lotId: sample.lot,
    taskIds: sample.tasks,
    jobClassificationId: null,
    follows: null,
    openedWhere: null,
    preparedAt: putOnAt,
    fitting: fittingOf(sample, path),
    putOn: typed(putOnAt, 'putOn'),
    stopped: sample.stopped ? { ...typed(utc(sample.stopped), 'stopped'), pumpMin: sample.pumpMin ?? null } : null,
    intervals: intervalsOf(sample, path),
    looks: [],
    leadAreaAway: [],
    faults: [],
    mishaps: (sample.mishaps ?? []).map((mishap, i) => ({
      sampleId: path,
      mishap,
      remark: null,
      ...typed(putOnAt, `mishaps/${i}`),
    })),
    sealed:
      sample.stopped && sample.sealed === true
        ? { sampleId: path, labelled: true, lockedIn: null, lockedById: null, ...typed(utc(sample.stopped), 'stopped') }
        : null,
    flowDecision: sample.flowDecision ? { ...sample.flowDecision, factId: `${path}/flowDecision` } : null,
    voided: sample.void ? { why: sample.void.why, factId: `${path}/void` } : null,
    results: resultsOf(sample.result, path),
    remarks: [],
    clockDoubts: [],
  };
}
