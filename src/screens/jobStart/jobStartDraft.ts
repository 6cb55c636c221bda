/** The five answers as tapped, and reading them: into the statement, or into corrections of the one that stands. */
import { fieldReader } from '#parts/fieldReader.ts';
import type { ShiftRecord } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { type ChangeKey, changeKeys, type Said, en as words } from '#words/jobStart.ts';
import { en as partsWords } from '#words/parts.ts';

export type Answers = Partial<Readonly<Record<ChangeKey, Said>>>;

export interface JobStartDraft {
  readonly said: Answers;
  /** Only where answers stand already. */
  readonly why: string;
}

/** The answers of a statement; none where nothing was said. */
export const saidOf = (stated: ShiftRecord['changes']): Answers =>
  stated ? Object.fromEntries(changeKeys.map((key) => [key, stated[key] as Said])) : {};

export function readJobStart({ said, why }: JobStartDraft, shift: ShiftRecord, entry: Entry) {
  const read = fieldReader(partsWords);
  for (const key of changeKeys) read.chosen(key, words.questions[key], said[key]);
  const facts = shift.changes ? corrections(said, shift, { ...entry, why: why.trim() }) : [stated(said, shift, entry)];
  if (shift.changes && facts.length === 0) read.add(null, words.nothingChanged);
  else if (shift.changes && why.trim() === '') read.add('why', words.whyMissing);
  return { errors: read.errors, facts };
}

const stated = (said: Answers, shift: ShiftRecord, entry: Entry): NewFact =>
  newFact('changesAsked.v1', { shiftId: shift.id, ...(said as Required<Answers>) }, entry);

const corrections = (said: Answers, shift: ShiftRecord, entry: Entry): readonly NewFact[] => {
  const { changes } = shift;
  if (!changes) return [];
  return changeKeys
    .filter((key) => said[key] !== undefined && said[key] !== changes[key])
    .map((key) =>
      newFact(
        'valueCorrected.v1',
        {
          replaces: changes.factId,
          path: `/${key}`,
          old: changes[key] as never,
          new: said[key] as never,
          supersedes: null,
        },
        { ...entry, about: [shift.key] },
      ),
    );
};
