/** People as papers name them: name, the firm's own number, job classification, another employer. */
import type { Book } from '#records/book.ts';

export interface PersonOnPaper {
  readonly name: string;
  readonly identifier: string | null;
  readonly employer: string | null;
  readonly jobClassification: string | null;
}

/** By id; an id that this book does not hold is left out. */
export function peopleOnPaper(book: Book, ids: Iterable<string>): ReadonlyMap<string, PersonOnPaper> {
  const found = new Map<string, PersonOnPaper>();
  for (const id of ids) {
    const person = book.people.get(id);
    if (person === undefined) continue;
    const { name, identifier, employer, jobClassificationId } = person;
    const jobClassification = book.jobClassifications.get(jobClassificationId ?? '')?.name ?? null;
    found.set(id, { name, identifier, employer, jobClassification });
  }
  return found;
}
