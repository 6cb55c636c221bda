/** How the records of a slice are called where one fact speaks of another: names, serial numbers, numbers on cassettes. */
import type { Book } from '#records/book.ts';
import { besideSets } from '#reference/limits.ts';
import { methodById } from '#reference/methods.ts';
import { taskById } from '#reference/tasks.ts';

const besideName = (id: string): string | undefined => {
  const set = besideSets().find((one) => one.id === id);
  return set && `${set.jurisdiction}: ${set.document}`;
};

/** The name that goes with an id, whatever it is an id of; undefined when this slice does not hold it. */
export const namesIn =
  (book: Book) =>
  (id: string): string | undefined =>
    book.people.get(id)?.name ??
    book.pumps.get(id)?.serial ??
    book.lots.get(id)?.lotNumber ??
    book.meters.get(id)?.serial ??
    book.sites.get(id)?.name ??
    book.laboratories.get(id)?.name ??
    book.jobClassifications.get(id)?.name ??
    book.samples.get(id)?.sampleNumber ??
    taskById(id)?.en ??
    methodById(id)?.title ??
    besideName(id);
