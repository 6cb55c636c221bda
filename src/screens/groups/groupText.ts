/** How a task group stands: what is known of it, in the order of what to measure next, and its words. */
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { TaskGroup } from '#findings/duties/groups/taskGroup.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import type { Book } from '#records/book.ts';
import { taskById } from '#reference/tasks.ts';
import { en as words } from '#words/groups.ts';
import { formatEstimate, inSentence } from '#words/quantity.ts';

export const taskNames = (taskIds: readonly string[]): readonly string[] =>
  taskIds.map((id) => taskById(id)?.en ?? id).map((name, at) => (at === 0 ? name : inSentence(name)));

export const groupName = ({ taskIds, setting, jobClassificationId }: TaskGroup, book: Book): string =>
  words.name(
    taskNames(taskIds),
    words.settings[setting],
    book.jobClassifications.get(jobClassificationId ?? '')?.name ?? null,
  );

/** Newest first. */
export const measurementsOfGroup = (groupKey: string, found: DutiesOfBook): readonly Measurement[] =>
  [...found.measurements.values()]
    .filter((each) => each.groupKey === groupKey)
    .sort((a, b) => b.workOn.localeCompare(a.workOn) || a.id.localeCompare(b.id));

export const averageText = ({ twa8UgPerM3 }: Measurement): string =>
  twa8UgPerM3 === null ? words.valueUnknown : formatEstimate(twa8UgPerM3, 'µg/m³');

export function standingOf(groupKey: string, found: DutiesOfBook): string {
  const [last] = measurementsOfGroup(groupKey, found);
  if (last === undefined) return words.standing.never;
  if (last.band === 'open') return words.standing.open(last.workOn);
  return words.standing.measured(last.workOn, averageText(last));
}

/** Never measured first, then those whose measurement proves nothing, then the oldest; among equals the one done most. */
export function leastKnownFirst(found: DutiesOfBook): readonly TaskGroup[] {
  const placed = [...found.groups.values()].map((group) => {
    const [last] = measurementsOfGroup(group.key, found);
    const rank = last === undefined ? 0 : last.band === 'open' ? 1 : 2;
    return { group, rank, on: last?.workOn ?? '' };
  });
  return placed
    .sort(
      (a, b) =>
        a.rank - b.rank ||
        a.on.localeCompare(b.on) ||
        b.group.days.length - a.group.days.length ||
        a.group.key.localeCompare(b.group.key),
    )
    .map(({ group }) => group);
}
