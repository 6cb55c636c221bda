/**
 * What an inspector at the door is shown: one site, and nothing of any other. Whoever worked elsewhere only is counted and not named;
 * of an earlier measurement that the job rests on, the day and the figure stand, not whose it was.
 */
import type { Estimate } from '#core/estimate.ts';
import type { Book } from '#records/book.ts';
import { type LimitsHere, limitSetOn } from '#reference/limits.ts';
import type { Course } from '../course/course.ts';
import type { DeterminationFinding } from '../determining/determination.ts';
import type { DutiesOfBook } from '../dutiesOfBook.ts';
import type { GroupDay } from '../groups/taskGroup.ts';
import type { Measurement } from '../measuring/measurement.ts';
import type { NoticeOwed } from '../telling/notice.ts';
import type { Duty } from './duty.ts';

export interface InspectorPerson {
  readonly id: string;
  readonly name: string;
  readonly identifier: string | null;
  /** null: this firm */
  readonly employer: string | null;
}

/** One sample of this site, with what it shows by itself. */
export interface InspectorSample {
  readonly sampleId: string;
  readonly sampleNumber: string;
  readonly quality: 'good' | 'doubtful' | 'void' | 'open';
  readonly concentration: Estimate | null;
}

export interface InspectorMeasurement
  extends Pick<
    Measurement,
    'id' | 'from' | 'workerId' | 'workOn' | 'taskIds' | 'band' | 'atOrAbovePel' | 'atLeastOnly' | 'resultOwed'
  > {
  readonly twa8UgPerM3: Estimate | null;
  readonly samples: readonly InspectorSample[];
}

export interface InspectorShift {
  readonly shiftId: string;
  readonly workOn: string;
  readonly days: readonly Pick<GroupDay, 'workerId' | 'taskIds' | 'respirator' | 'from'>[];
}

/** An earlier measurement that a job here rests on. */
export type InspectorRelied = Pick<Measurement, 'workOn' | 'twa8UgPerM3'>;

export interface InspectorView {
  readonly siteId: string;
  readonly name: string;
  readonly stateCode: string;
  readonly limits: LimitsHere;
  readonly people: readonly InspectorPerson[];
  /** Newest first, as are measurements. */
  readonly shifts: readonly InspectorShift[];
  readonly measurements: readonly InspectorMeasurement[];
  readonly relied: readonly InspectorRelied[];
  readonly notices: readonly NoticeOwed[];
  readonly determinations: readonly DeterminationFinding[];
  readonly courses: readonly Course[];
  /** Duties of the site: the programme, and what was done of it. */
  readonly programme: readonly Duty[];
  /** Duties towards the people of the site, without what they rest on. */
  readonly ofPeople: readonly Duty[];
  /** People named somewhere in this who never worked at the site. */
  readonly elsewhereCount: number;
}

type Seen = ReadonlySet<string>;

const newestFirst = (a: { readonly workOn: string }, b: { readonly workOn: string }): number =>
  a.workOn < b.workOn ? 1 : a.workOn > b.workOn ? -1 : 0;

function shiftsOf(days: readonly GroupDay[], book: Book, siteId: string): readonly InspectorShift[] {
  const found = new Map<string, InspectorShift & { readonly days: InspectorShift['days'][number][] }>();
  for (const { id, workOn, siteId: on } of book.shifts.values())
    if (on === siteId) found.set(id, { shiftId: id, workOn, days: [] });
  for (const { shiftId, workOn, workerId, taskIds, respirator, from } of days) {
    const shift = found.get(shiftId) ?? { shiftId, workOn, days: [] };
    shift.days.push({ workerId, taskIds, respirator, from });
    found.set(shiftId, shift);
  }
  return [...found.values()].sort(newestFirst);
}

function samplesOf({ finding }: Measurement, book: Book, siteId: string): readonly InspectorSample[] {
  return (finding?.samples ?? [])
    .filter(({ sampleId }) => book.samples.get(sampleId)?.siteId === siteId)
    .map(({ sampleId, sampleNumber, quality, judged }) => ({
      sampleId,
      sampleNumber,
      quality,
      concentration: judged?.estimate ?? null,
    }));
}

const isHere = ({ siteId, shiftIds }: Measurement, here: string): boolean =>
  siteId === here || shiftIds.some((shiftId) => shiftId.startsWith(`${here}.`));

function shown(one: Measurement, book: Book, siteId: string): InspectorMeasurement {
  const { id, from, workerId, workOn, taskIds, band, atOrAbovePel, atLeastOnly, resultOwed, twa8UgPerM3 } = one;
  const samples = samplesOf(one, book, siteId);
  return { id, from, workerId, workOn, taskIds, band, atOrAbovePel, atLeastOnly, resultOwed, twa8UgPerM3, samples };
}

const only = (ids: readonly string[], seen: Seen): readonly string[] => ids.filter((id) => seen.has(id));

const noticeHere = (notice: NoticeOwed, people: Seen): NoticeOwed => ({
  ...notice,
  affectedIds: only(notice.affectedIds, people),
  toldIds: only(notice.toldIds, people),
  openIds: only(notice.openIds, people),
  because: [],
});

const determinationHere = (one: DeterminationFinding, people: Seen, measured: Seen): DeterminationFinding => ({
  ...one,
  measurementIds: only(one.measurementIds, measured),
  monitoredIds: only(one.monitoredIds, people),
  standsForIds: only(one.standsForIds, people),
  highest: one.highest && measured.has(one.highest.measurementId) ? one.highest : null,
  blocks: one.blocks.map((block) => ({
    ...block,
    measurementId: block.measurementId !== null && measured.has(block.measurementId) ? block.measurementId : null,
    params: {},
    because: [],
  })),
  because: [],
});

const courseHere = (course: Course, measured: Seen): Course => ({
  ...course,
  lastMeasurementId:
    course.lastMeasurementId !== null && measured.has(course.lastMeasurementId) ? course.lastMeasurementId : null,
  steps: course.steps
    .map((step) => ({ ...step, measurementIds: only(step.measurementIds, measured), because: [] }))
    .filter(({ measurementIds }) => measurementIds.length > 0),
  changeOwed: course.changeOwed && { ...course.changeOwed, because: [] },
});

const dutyHere = (duty: Duty, people: Seen, measured: Seen): Duty => ({
  ...duty,
  workerIds: only(duty.workerIds, people),
  measurementIds: only(duty.measurementIds, measured),
  because: [],
});

function peopleOf(ids: Seen, book: Book): readonly InspectorPerson[] {
  return [...ids]
    .map((id) => {
      const { name = id, identifier = null, employer = null } = book.people.get(id) ?? {};
      return { id, name, identifier, employer };
    })
    .sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
}

/** Throws (a bug) for a site that is not in the book. */
export function inspectorView(siteId: string, duties: DutiesOfBook, book: Book): InspectorView {
  const site = book.sites.get(siteId);
  if (!site) throw new Error(`no site ${siteId} in this book`);
  const days = [...duties.groups.values()].flatMap((group) => group.days).filter((day) => day.siteId === siteId);
  const here = [...duties.measurements.values()].filter((one) => isHere(one, siteId)).sort(newestFirst);
  const measured = new Set(here.map(({ id }) => id));
  const people = new Set([...days.map(({ workerId }) => workerId), ...here.flatMap(({ workerId }) => workerId ?? [])]);
  const groups = new Set(days.map(({ workerId, groupKey }) => `${workerId} ${groupKey}`));
  const notices = duties.notices.filter(({ measurementId }) => measured.has(measurementId));
  const determinations = duties.determinations.filter((one) => one.siteId === siteId);
  const reliedIds = new Set(determinations.flatMap((one) => one.measurementIds).filter((id) => !measured.has(id)));
  const named = [
    ...notices.flatMap((notice) => notice.affectedIds),
    ...determinations.flatMap((one) => [...one.monitoredIds, ...one.standsForIds]),
  ];
  return {
    siteId,
    name: site.name,
    stateCode: site.stateCode,
    limits: limitSetOn(duties.today, site.stateCode),
    people: peopleOf(people, book),
    shifts: shiftsOf(days, book, siteId),
    measurements: here.map((one) => shown(one, book, siteId)),
    relied: [...reliedIds].flatMap((id) => {
      const one = duties.measurements.get(id);
      return one ? [{ workOn: one.workOn, twa8UgPerM3: one.twa8UgPerM3 }] : [];
    }),
    notices: notices.map((notice) => noticeHere(notice, people)),
    determinations: determinations.map((one) => determinationHere(one, people, measured)),
    courses: duties.courses
      .filter(({ workerId, groupKey }) => groups.has(`${workerId} ${groupKey}`))
      .map((course) => courseHere(course, measured)),
    programme: duties.duties.filter((duty) => duty.siteId === siteId).map((duty) => dutyHere(duty, people, measured)),
    ofPeople: duties.duties
      .filter(({ siteId: on, workerIds }) => on === null && workerIds.some((id) => people.has(id)))
      .map((duty) => ({ ...dutyHere(duty, people, measured), params: {} })),
    elsewhereCount: new Set(named.filter((id) => !people.has(id))).size,
  };
}
