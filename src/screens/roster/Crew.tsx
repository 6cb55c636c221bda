/** The crew as large rows to tick: those who were here before first, people of other firms with the name of theirs. */
import { useState } from 'react';
import { Checklist } from '#parts/Checklist.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Book, PersonRecord } from '#records/book.ts';
import { en as words } from '#words/roster.ts';
import type { RosterDay } from './rosterDraft.ts';
import { earlierRoster, isHere, rosterOf } from './work.ts';

export interface CrewProps {
  readonly day: RosterDay;
  readonly picked: readonly string[];
  readonly onChange: (picked: readonly string[]) => void;
  readonly errors: readonly FieldError[];
}

/** A crew that fits on a phone without asking. */
const shownAtMost = 12;

/** Everyone who may be ticked: works here on that day, and is not written down yet. */
function crewOf({ shiftId, workOn, book }: RosterDay): readonly PersonRecord[] {
  const written = new Set(rosterOf(shiftId, book).map(({ workerId }) => workerId));
  const before = new Set((earlierRoster(shiftId, book)?.lines ?? []).map(({ workerId }) => workerId));
  const wears = new Set([...book.samples.values()].map(({ workerId }) => workerId));
  const rank = ({ id, employer }: PersonRecord): number =>
    before.has(id) || wears.has(id) ? 0 : employer === null ? 1 : 2;
  return [...book.people.values()]
    .filter((person) => isHere(person, workOn) && !written.has(person.id))
    .sort((a, b) => rank(a) - rank(b) || a.name.localeCompare(b.name, 'en', { numeric: true }));
}

const hintOf = ({ employer, jobClassificationId }: PersonRecord, book: Book): string | undefined =>
  employer === null ? book.jobClassifications.get(jobClassificationId ?? '')?.name : words.ofEmployer(employer);

export function Crew({ day, picked, onChange, errors }: CrewProps) {
  const [all, setAll] = useState(false);
  const crew = crewOf(day);
  const shown = all ? crew : crew.filter(({ id }, at) => at < shownAtMost || picked.includes(id));
  if (crew.length === 0) return null;
  return (
    <>
      <Checklist
        name="crew"
        label={words.crew}
        hint={words.crewHint}
        options={shown.map((person) => ({ value: person.id, label: person.name, hint: hintOf(person, day.book) }))}
        value={picked}
        onChange={onChange}
        error={errorOf(errors, 'crew')}
      />
      {shown.length < crew.length && (
        <div>
          <QuietAction onClick={() => setAll(true)}>{words.crewAll(crew.length)}</QuietAction>
        </div>
      )}
    </>
  );
}
