/** One line of a roster that was wrong: its values are put right, or the line is struck, with the reason. Nothing disappears. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import type { Place } from '#findings/place.ts';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { Book } from '#records/book.ts';
import { keyOf } from '#records/common.ts';
import type { NewFact } from '#records/fact.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { formatDay } from '#words/quantity.ts';
import { en as roster } from '#words/roster.ts';
import { notWritten } from '#words/saving.ts';
import { workBody } from './rosterDraft.ts';
import { WorkLines } from './WorkLines.tsx';
import { type RosterLine, textOfLine, type WorkText } from './work.ts';

const words = roster.entry;

export interface RosterEntryProps {
  readonly book: Book;
  readonly place: Place;
  readonly by: string | null;
  readonly line: RosterLine;
}

interface EntryDraft {
  readonly work: WorkText;
  readonly why: string;
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** A correction for each value that differs from what stands. */
function correctionsOf({ worked, workdayId }: RosterLine, work: WorkText, entry: Entry): readonly NewFact[] {
  const about = [keyOf('workday', workdayId)];
  return Object.entries(workBody(work)).flatMap(([name, value]) => {
    const old = worked[name as keyof ReturnType<typeof workBody>];
    if (same(old, value)) return [];
    const body = {
      replaces: worked.factId,
      path: `/${name}`,
      old: old as never,
      new: value as never,
      supersedes: null,
    };
    return [newFact('valueCorrected.v1', body, { ...entry, about })];
  });
}

export function RosterEntry({ book, place, by, line }: RosterEntryProps) {
  const { shift, site, zone } = place;
  const back = `/shift/${shift.id}/roster`;
  const draftKey = `workday:${line.workdayId}/roster-${line.worked.factId}`;
  const draft = useDraft<EntryDraft>(draftKey, { work: textOfLine(line), why: '' });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const [, go] = useLocation();
  const { work, why } = draft.value;
  const worker = book.people.get(line.workerId)?.name ?? '';

  const submit = async (build: (entry: Entry) => readonly NewFact[]) => {
    const missing: FieldError[] = why.trim() === '' ? [{ field: 'why', text: words.whyMissing }] : [];
    if (work.taskIds.length === 0) missing.push({ field: 'work', text: roster.taskMissing(worker) });
    if (missing.length > 0) return setErrors(missing);
    const facts = build({ happened: happenedNow(zone), by, why: why.trim() });
    if (facts.length === 0) return setErrors([{ field: null, text: words.nothingChanged }]);
    const written = await writing.run(facts, { draftKey });
    if (written === null) return;
    setErrors(notWritten(written, { why: 'why' }));
    if (written.kind === 'written') go(back, { replace: true });
  };
  const strike = (entry: Entry) => [
    newFact('workStruck.v1', { workdayId: line.workdayId, noted: line.worked.factId }, entry),
  ];

  return (
    <Page
      heading={words.heading(worker)}
      over={`${site.name}, ${formatDay(shift.workOn, 'en', 'weekday')}`}
      back={back}
      action={
        <>
          <MainAction
            busy={writing.state === 'saving'}
            onClick={() => void submit((entry) => correctionsOf(line, work, entry))}
          >
            {words.save}
          </MainAction>
          <QuietAction onClick={() => void submit(strike)}>{words.strike}</QuietAction>
        </>
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      <WorkLines
        name="work"
        worker={worker}
        value={work}
        onChange={(changed) => draft.set({ ...draft.value, work: changed })}
        nearIds={[...line.worked.taskIds]}
        book={book}
        error={errorOf(errors, 'work')}
      />
      <TextField
        name="why"
        label={words.why}
        rows={2}
        value={why}
        onChange={(text) => draft.set({ ...draft.value, why: text })}
        error={errorOf(errors, 'why')}
      />
      <Lines>
        <Line to={`/story/${encodeURIComponent(keyOf('workday', line.workdayId))}`}>{words.story}</Line>
      </Lines>
    </Page>
  );
}
