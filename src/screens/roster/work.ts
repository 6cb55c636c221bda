/** What one worker does on the day, as typed; where it comes from when nobody typed it yet; and its words. */
import type { Book, PersonRecord, SampleRecord } from '#records/book.ts';
import type { FactBody } from '#records/fact.ts';
import { respirators } from '#reference/respirators.ts';
import { taskById } from '#reference/tasks.ts';
import { inSentence } from '#words/quantity.ts';
import { en as words } from '#words/roster.ts';

export interface WorkText {
  readonly taskIds: readonly string[];
  readonly find: string;
  readonly jobId: string | null;
  /** Id of a respirator, 'none', or 'notNoted'. */
  readonly respirator: string;
}

export type Worked = Pick<FactBody<'workNoted.v1'>, 'shiftId' | 'taskIds' | 'jobClassificationId' | 'respirator'> & {
  readonly factId: string;
};

/** One line of a roster: a worker and what was noted. */
export interface RosterLine {
  readonly workdayId: string;
  readonly workerId: string;
  readonly worked: Worked;
}

/** The roster of a shift, as it stands in the slice, in the order of entry. */
export const rosterOf = (shiftId: string, book: Book): readonly RosterLine[] =>
  [...book.workdays.values()]
    .flatMap(({ id, workerId, worked = [] }) =>
      (worked as readonly Worked[])
        .filter((each) => each.shiftId === shiftId)
        .map((each) => ({ workdayId: id, workerId, worked: each })),
    )
    .sort((a, b) => a.worked.factId.localeCompare(b.worked.factId));

/** The last earlier day at the same site that has a roster; null where none has. */
export function earlierRoster(shiftId: string, book: Book) {
  const shift = book.shifts.get(shiftId);
  if (shift === undefined) return null;
  const earlier = [...book.shifts.values()]
    .filter(({ id, siteId, workOn }) => id !== shiftId && siteId === shift.siteId && workOn < shift.workOn)
    .sort((a, b) => (a.workOn < b.workOn ? 1 : -1));
  for (const { id, workOn } of earlier) {
    const lines = rosterOf(id, book);
    if (lines.length > 0) return { workOn, lines };
  }
  return null;
}

const textOf = ({ taskIds, jobClassificationId, respirator }: Omit<Worked, 'factId' | 'shiftId'>): WorkText => ({
  taskIds,
  find: '',
  jobId: jobClassificationId,
  respirator: respirator ?? 'notNoted',
});

export const textOfLine = ({ worked }: RosterLine): WorkText => textOf(worked);

const sampleOf = (workerId: string, shiftId: string, book: Book): SampleRecord | undefined =>
  [...book.samples.values()].find(
    (sample) => sample.shiftId === shiftId && sample.workerId === workerId && sample.voided === null,
  );

/** What a worker most likely does today: as prepared with a pump today, else as on the earlier day here, else the usual. */
export function likelyWork(workerId: string, shiftId: string, usual: readonly string[], book: Book): WorkText {
  const sample = sampleOf(workerId, shiftId, book);
  const before = earlierRoster(shiftId, book)?.lines.find((line) => line.workerId === workerId);
  const person = book.people.get(workerId);
  const earlier = before === undefined ? null : textOfLine(before);
  return {
    taskIds: sample?.taskIds ?? earlier?.taskIds ?? usual,
    find: '',
    jobId: sample?.jobClassificationId ?? earlier?.jobId ?? person?.jobClassificationId ?? null,
    respirator: earlier?.respirator ?? 'notNoted',
  };
}

/** The tasks of the shift: those of the samples prepared here, else what most did on the earlier day. */
export function usualTasks(shiftId: string, book: Book): readonly string[] {
  const here = [...book.samples.values()].filter((sample) => sample.shiftId === shiftId && sample.sampleKind === 'air');
  if (here[0] !== undefined) return here[0].taskIds;
  const sets = (earlierRoster(shiftId, book)?.lines ?? []).map(({ worked }) => worked.taskIds);
  const count = (set: readonly string[]): number => sets.filter((each) => each.join() === set.join()).length;
  return [...sets].sort((a, b) => count(b) - count(a))[0] ?? [];
}

/** Works here on that day, as far as anybody said. */
export const isHere = ({ employed }: PersonRecord, day: string): boolean =>
  (employed?.fromOn ?? day) <= day && day <= (employed?.toOn ?? day);

export const taskNames = (taskIds: readonly string[]): readonly string[] =>
  taskIds.map((id) => inSentence(taskById(id)?.en ?? id));

export function respiratorName(id: string): string {
  if (id === 'none' || id === 'notNoted') return words.respiratorDetail[id];
  const found = respirators().find((each) => each.id === id);
  return found === undefined ? id : words.respiratorWorn(found);
}

/** Job classification and respirator, as the quieter line below a worker's tasks. */
export const workDetail = ({ jobId, respirator }: WorkText, book: Book): string =>
  words.eachDetail([book.jobClassifications.get(jobId ?? '')?.name ?? words.jobNone, respiratorName(respirator)]);
