/** From a folded record to its derived row: how it sorts, and which questions find it. Pure. A change here raises edition.ts. */
import type {
  AnyRecord,
  BoxRecord,
  DayPlanRecord,
  DeterminationRecord,
  FlowCheckRecord,
  GearBeside,
  NoticeRecord,
  PlanRecord,
  RelianceRecord,
  ReportedRecord,
  RequestRecord,
  SampleRecord,
  ShiftRecord,
  SpendingRecord,
  WorkdayRecord,
} from '#records/book.ts';
import { type RecordKind, recordKinds } from '#records/recordKinds.ts';
import type { DerivedRow } from './database.ts';

const isKind = (kind: string): kind is RecordKind => (recordKinds as readonly string[]).includes(kind);

/** The kind in a record key `kind:id`; null for a kind of a newer version, which is carried and not shown. */
export function kindOfKey(key: string): RecordKind | null {
  const kind = key.slice(0, key.indexOf(':'));
  return isKind(kind) ? kind : null;
}

interface Place {
  readonly sort: string;
  readonly links: readonly string[];
}

const optional = (prefix: string, id: string | null): readonly string[] => (id === null ? [] : [`${prefix}:${id}`]);

/** Sorts by prefix, then by running number, whatever their lengths. */
export const numberLink = (sampleNumber: string): string =>
  `number:${sampleNumber.slice(0, 2)}:${sampleNumber.length > 2 ? sampleNumber.padStart(10, '0') : ''}`;

const running = (sample: SampleRecord): boolean =>
  sample.putOn !== null && sample.stopped === null && sample.voided === null;

/** Not void, and somebody still has to do something with it on site. */
const unfinished = (sample: SampleRecord): boolean =>
  sample.sampleKind === 'air' && sample.voided === null && sample.sealed === null;

/** Something a person has to settle stands in the record itself. */
function unsettled(record: AnyRecord): readonly string[] {
  const { voidAgainstResult, doubts = [] } = record as Partial<SampleRecord> & GearBeside;
  const isOpen = voidAgainstResult === true || doubts.some(({ settled }) => settled === null);
  return record.conflicts.length > 0 || isOpen ? ['unsettled'] : [];
}

function placeOfSample(sample: SampleRecord): Place {
  return {
    sort: `${sample.preparedAt}~${sample.id}`,
    links: [
      `shift:${sample.shiftId}`,
      numberLink(sample.sampleNumber),
      ...optional('workday', sample.workdayId),
      ...optional('measurement', sample.workdayId),
      ...optional('worker', sample.workerId),
      ...(running(sample) ? ['running'] : []),
      ...(unfinished(sample) ? ['unfinished'] : []),
      ...(sample.results.length === 0 && sample.voided === null ? ['awaiting'] : []),
    ],
  };
}

const placeOfShift = (shift: ShiftRecord): Place => ({
  sort: `${shift.workOn}~${shift.openedAt}~${shift.id}`,
  links: [`shift:${shift.id}`, `site:${shift.siteId}`],
});

const placeOfFlowCheck = (check: FlowCheckRecord): Place => ({
  sort: `${check.happened.at}~${check.id}`,
  links: [`shift:${check.shiftId}`, `pump:${check.pumpId}`],
});

/** A day answers for every shift that the roster puts the worker at, and as a measurement for what was told of it. */
const placeOfWorkday = (workday: WorkdayRecord): Place => ({
  sort: `${workday.workOn}~${workday.id}`,
  links: [
    `workday:${workday.id}`,
    `worker:${workday.workerId}`,
    `measurement:${workday.id}`,
    ...new Set((workday.worked ?? []).map(({ shiftId }) => `shift:${shiftId}`)),
  ],
});

const placeOfReported = (reported: ReportedRecord): Place => ({
  sort: `${reported.workOn}~${reported.id}`,
  links: [`measurement:${reported.id}`, ...optional('worker', reported.workerId), ...optional('site', reported.siteId)],
});

const placeOfReliance = (reliance: RelianceRecord): Place => ({
  sort: `${reliance.shiftId.slice(13)}~${reliance.id}`,
  links: [`shift:${reliance.shiftId}`, `measurement:${reliance.measurementId}`],
});

const placeOfNotice = ({ id, issued }: NoticeRecord): Place => ({
  sort: `${issued.at}~${id}`,
  links: [`measurement:${issued.measurementId}`, ...new Set(issued.workerIds.map((worker) => `worker:${worker}`))],
});

const placeOfDetermination = ({ id, written }: DeterminationRecord): Place => ({
  sort: `${written.determinedOn}~${id}`,
  links: [`site:${written.siteId}`, ...optional('shift', written.shiftId)],
});

const placeOfRequest = (request: RequestRecord): Place => ({
  sort: `${request.askedOn}~${request.id}`,
  links: optional('worker', request.personId),
});

const placeOfPlan = (plan: PlanRecord): Place => ({
  sort: `${plan.plannedAt ?? ''}~${plan.id}`,
  links: optional('site', plan.siteId),
});

/** Reserved numbers are found as those of cassettes are, so that none is given twice. */
const placeOfDayPlan = ({ id, siteId, workOn, labels }: DayPlanRecord): Place => ({
  sort: `${workOn}~${id}`,
  links: [`shift:${id}`, `site:${siteId}`, ...new Set(labels.map(({ sampleNumber }) => numberLink(sampleNumber)))],
});

const placeOfSpending = ({ id, spentOn, siteId }: SpendingRecord): Place => ({
  sort: `${spentOn}~${id}`,
  links: optional('site', siteId),
});

const placeOfBox = (box: BoxRecord): Place => ({
  sort: box.factIds[0] ?? box.id,
  links: [
    `site:${box.packed.siteId}`,
    ...box.packed.sampleIds.map((id) => `sample:${id}`),
    ...(box.issues.length > 0 ? ['issued'] : []),
  ],
});

/** People, places and gear: one question finds them all. */
const placeInRegister = (record: AnyRecord): Place => ({ sort: record.id, links: ['register'] });

const places: { readonly [K in RecordKind]?: (record: never) => Place } = {
  sample: placeOfSample,
  shift: placeOfShift,
  flowCheck: placeOfFlowCheck,
  workday: placeOfWorkday,
  box: placeOfBox,
  reported: placeOfReported,
  reliance: placeOfReliance,
  notice: placeOfNotice,
  determination: placeOfDetermination,
  duty: ({ id }: AnyRecord) => ({ sort: id, links: [] }),
  request: placeOfRequest,
  plan: placeOfPlan,
  dayPlan: placeOfDayPlan,
  spending: placeOfSpending,
};

const placeOf = (kind: RecordKind, record: AnyRecord): Place =>
  ((places[kind] ?? placeInRegister) as (record: AnyRecord) => Place)(record);

/** The row of a record; null when its kind is unknown here. */
export function rowOf(record: AnyRecord): DerivedRow | null {
  const kind = kindOfKey(record.key);
  if (kind === null) return null;
  const { sort, links } = placeOf(kind, record);
  return { key: record.key, kind, record, sort, links: [...links, ...unsettled(record)] };
}
