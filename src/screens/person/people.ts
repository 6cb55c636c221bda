/** What the page of one worker shows, gathered from what follows from the book. */
import type { Course } from '#findings/duties/course/course.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { NoticeOwed } from '#findings/duties/telling/notice.ts';
import type { Book } from '#records/book.ts';
import { taskById } from '#reference/tasks.ts';
import { en as words } from '#words/person.ts';
import { formatList, inSentence } from '#words/quantity.ts';

/** A group key read back: setting, job classification, tasks (findings/duties/groups/taskGroup.ts). */
export function partsOfGroup(groupKey: string) {
  const [setting, job = '-', tasks = ''] = groupKey.split('|');
  return {
    setting: setting === 'outdoors' ? ('outdoors' as const) : ('indoors' as const),
    jobClassificationId: job === '-' ? null : job,
    taskIds: tasks.split('+').filter((id) => id !== ''),
  };
}

export function groupText(groupKey: string, book: Book): string {
  const { setting, jobClassificationId, taskIds } = partsOfGroup(groupKey);
  const job = book.jobClassifications.get(jobClassificationId ?? '')?.name ?? null;
  const names = taskIds.map((id) => taskById(id)?.en ?? id);
  return words.courses.group(formatList(names.map((name, at) => (at === 0 ? name : inSentence(name)))), job, setting);
}

export const coursesOfPerson = (personId: string, { courses }: DutiesOfBook): readonly Course[] =>
  courses.filter(({ workerId }) => workerId === personId);

/** Newest receipt first. */
export const noticesOfPerson = (personId: string, { notices }: DutiesOfBook): readonly NoticeOwed[] =>
  notices
    .filter(({ affectedIds }) => affectedIds.includes(personId))
    .sort((a, b) => (a.receivedOn > b.receivedOn ? -1 : a.receivedOn < b.receivedOn ? 1 : 0));

/** Days of the worker with a sample, newest first. */
export function measuredDays(personId: string, duties: DutiesOfBook, book: Book) {
  return [...duties.measurements.values()]
    .filter(({ workerId, from }) => workerId === personId && from === 'sampled')
    .sort((a, b) => (a.workOn > b.workOn ? -1 : 1))
    .map((measurement) => ({
      measurement,
      issuedCount: book.workdays.get(measurement.id)?.recordsIssued?.length ?? 0,
    }));
}

/** Groups in which the worker did anything, by the roster or a sample; the last one done first. */
export function groupsOfPerson(personId: string, duties: DutiesOfBook): readonly string[] {
  const lastOn = new Map<string, string>();
  for (const { key, days } of duties.groups.values())
    for (const { workerId, workOn } of days)
      if (workerId === personId && workOn > (lastOn.get(key) ?? '')) lastOn.set(key, workOn);
  return [...lastOn].sort(([, a], [, b]) => (a > b ? -1 : a < b ? 1 : 0)).map(([key]) => key);
}
