/** What is ticked and typed while a day's roster is made, and reading it: into facts, or the sentences of what stands in the way. */
import { fieldReader } from '#parts/fieldReader.ts';
import { type PersonText, readPerson } from '#parts/PersonFields.tsx';
import type { Book } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en as partsWords } from '#words/parts.ts';
import { en as words } from '#words/roster.ts';
import { earlierRoster, isHere, likelyWork, rosterOf, textOfLine, type WorkText } from './work.ts';

/** Somebody who is written down here for the first time; the id is drawn when the lines are opened. */
export interface AddedPerson extends PersonText {
  readonly id: string;
}

export interface RosterDraft {
  readonly picked: readonly string[];
  readonly added: readonly AddedPerson[];
  /** Tasks for everyone who has none of their own; null: as the day suggests. */
  readonly usual: { readonly taskIds: readonly string[]; readonly find: string } | null;
  /** Work that was looked at and changed, by worker. */
  readonly own: Readonly<Record<string, WorkText>>;
}

export const emptyRoster: RosterDraft = { picked: [], added: [], usual: null, own: {} };

/** Everyone of the earlier day who works here still and is not written down yet, with the same work. */
export function sameAsBefore(shiftId: string, workOn: string, book: Book): RosterDraft | null {
  const earlier = earlierRoster(shiftId, book);
  if (earlier === null) return null;
  const written = new Set(rosterOf(shiftId, book).map(({ workerId }) => workerId));
  const lines = earlier.lines.filter(({ workerId }) => {
    const person = book.people.get(workerId);
    return person !== undefined && isHere(person, workOn) && !written.has(workerId);
  });
  if (lines.length === 0) return null;
  const own = lines.map((line) => {
    const today = likelyWork(line.workerId, shiftId, [], book);
    return [line.workerId, { ...textOfLine(line), taskIds: today.taskIds, jobId: today.jobId }] as const;
  });
  return { ...emptyRoster, picked: lines.map(({ workerId }) => workerId), own: Object.fromEntries(own) };
}

/** Everyone who is here by this draft, with their names. */
export const here = (draft: RosterDraft, book: Book): readonly { readonly id: string; readonly name: string }[] => [
  ...draft.picked.map((id) => ({ id, name: book.people.get(id)?.name ?? '' })),
  ...draft.added.map(({ id, name }, at) => ({ id, name: name.trim() || words.person.heading(at + 1) })),
];

export const workOf = (id: string, draft: RosterDraft, shiftId: string, usual: readonly string[], book: Book) =>
  draft.own[id] ?? likelyWork(id, shiftId, draft.usual?.taskIds ?? usual, book);

/** Values of a work as a fact keeps them. */
export const workBody = ({ taskIds, jobId, respirator }: WorkText) => ({
  taskIds: [...taskIds],
  jobClassificationId: jobId,
  respirator: respirator === 'notNoted' ? null : respirator,
});

export interface RosterDay {
  readonly shiftId: string;
  readonly workOn: string;
  readonly usual: readonly string[];
  readonly book: Book;
}

/** New people first, then one entry a worker. `field` of a missing task is `work-<worker>`. */
export function readRoster(draft: RosterDraft, { shiftId, workOn, usual, book }: RosterDay, entry: Entry) {
  const read = fieldReader(partsWords);
  const people = draft.added.flatMap(({ id, ...text }) => {
    const person = readPerson(read, id, text);
    return person === null ? [] : [{ personId: id, ...person, jobClassificationId: null }];
  });
  const everyone = here(draft, book);
  if (everyone.length === 0) read.add('crew', words.nobody);
  const facts: NewFact[] = people.map((person) => newFact('personAdded.v1', person, entry));
  for (const { id, name } of everyone) {
    const work = workOf(id, draft, shiftId, usual, book);
    if (work.taskIds.length === 0) read.add(`work-${id}`, words.taskMissing(name));
    facts.push(newFact('workNoted.v1', { workdayId: `${id}.${workOn}`, shiftId, ...workBody(work) }, entry));
  }
  return { errors: read.errors, facts };
}
