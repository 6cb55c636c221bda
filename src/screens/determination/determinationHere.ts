/** One task group at one site with all that its written determination needs. */
import type { DeterminationFinding } from '#findings/duties/determining/determination.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import type { Book, DeterminationRecord, SiteRecord } from '#records/book.ts';
import { taskById } from '#reference/tasks.ts';
import { en as words } from '#words/determinationScreen.ts';

export interface GroupParts {
  readonly setting: 'indoors' | 'outdoors';
  readonly jobClassificationId: string | null;
  readonly taskIds: readonly string[];
}

/** A group key read back: setting, job classification, tasks (findings/duties/groups/taskGroup.ts). */
export function partsOfGroup(groupKey: string): GroupParts {
  const [setting, job = '-', tasks = ''] = groupKey.split('|');
  return {
    setting: setting === 'outdoors' ? 'outdoors' : 'indoors',
    jobClassificationId: job === '-' ? null : job,
    taskIds: tasks.split('+').filter((id) => id !== ''),
  };
}

export const taskNames = (taskIds: readonly string[]): readonly string[] => taskIds.map((id) => taskById(id)?.en ?? id);

export function groupText(groupKey: string, book: Book): string {
  const { setting, jobClassificationId, taskIds } = partsOfGroup(groupKey);
  const job = book.jobClassifications.get(jobClassificationId ?? '')?.name ?? null;
  return words.group(taskNames(taskIds).join(', '), job, setting);
}

export interface DeterminationHere {
  readonly book: Book;
  readonly duties: DutiesOfBook;
  readonly site: SiteRecord;
  readonly groupKey: string;
  readonly group: GroupParts;
  readonly finding: DeterminationFinding;
  readonly measurements: readonly Measurement[];
  /** Newest first. */
  readonly written: readonly DeterminationRecord[];
  /** The newest shift of these tasks here. */
  readonly shiftId: string | null;
}

const sameTasks = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && [...a].sort().join() === [...b].sort().join();

export function determinationHere(
  siteId: string,
  groupKey: string,
  duties: DutiesOfBook,
  book: Book,
): DeterminationHere | null {
  const site = book.sites.get(siteId);
  const finding = duties.determinations.find((one) => one.siteId === siteId && one.groupKey === groupKey);
  if (site === undefined || finding === undefined) return null;
  const group = partsOfGroup(groupKey);
  const days = (duties.groups.get(groupKey)?.days ?? []).filter((day) => day.siteId === siteId);
  return {
    book,
    duties,
    site,
    groupKey,
    group,
    finding,
    measurements: finding.measurementIds.map((id) => duties.measurements.get(id)).filter((one) => one !== undefined),
    written: [...book.determinations.values()]
      .filter(
        ({ written }) =>
          written.siteId === siteId &&
          written.jobClassificationId === group.jobClassificationId &&
          sameTasks(written.taskIds, group.taskIds),
      )
      .sort((a, b) => (a.written.at > b.written.at ? -1 : 1)),
    shiftId:
      days
        .map(({ shiftId }) => shiftId)
        .sort()
        .at(-1) ?? null,
  };
}
