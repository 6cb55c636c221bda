/** The roster of a day as it is made: the crew ticked, what each one does, people written down for the first time. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import type { Place } from '#findings/place.ts';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Book } from '#records/book.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/roster.ts';
import { notWritten } from '#words/saving.ts';
import { AddPeople } from './AddPeople.tsx';
import { Crew } from './Crew.tsx';
import { EachOne } from './EachOne.tsx';
import { emptyRoster, here, type RosterDay, readRoster, sameAsBefore } from './rosterDraft.ts';
import { WrittenDown } from './WrittenDown.tsx';
import { earlierRoster, rosterOf, usualTasks } from './work.ts';

export interface RosterFormProps {
  readonly book: Book;
  readonly place: Place;
  readonly by: string | null;
}

export function RosterForm({ book, place, by }: RosterFormProps) {
  const { shift, site, zone, today } = place;
  const day: RosterDay = { shiftId: shift.id, workOn: shift.workOn, usual: usualTasks(shift.id, book), book };
  const draftKey = `shift:${shift.id}/roster`;
  const draft = useDraft(draftKey, emptyRoster);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const [, go] = useLocation();
  const typed = draft.value;
  const count = here(typed, book).length;
  const same = count === 0 ? sameAsBefore(shift.id, shift.workOn, book) : null;
  const isWritten = rosterOf(shift.id, book).length > 0;

  const submit = async () => {
    const read = readRoster(typed, day, { happened: happenedNow(zone), by });
    setErrors(read.errors);
    if (read.errors.length > 0) return;
    const written = await writing.run(read.facts, { draftKey });
    if (written === null) return;
    setErrors(notWritten(written));
    if (written.kind === 'written') go(`/shift/${shift.id}`);
  };
  const save = (
    <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
      {count === 0 ? words.saveNone : words.save(count)}
    </MainAction>
  );
  return (
    <Page
      heading={shift.workOn === today ? words.heading : words.headingOn(shift.workOn)}
      over={`${site.name}, ${formatDay(shift.workOn, 'en', 'weekday')}`}
      back={`/shift/${shift.id}`}
      aside={<WrittenDown shiftId={shift.id} book={book} />}
      action={
        same !== null ? (
          <MainAction onClick={() => draft.set(same)}>
            {words.same(earlierRoster(shift.id, book)?.workOn ?? '', same.picked.length)}
          </MainAction>
        ) : count === 0 && isWritten ? (
          <MainAction to={`/shift/${shift.id}`}>{words.toDay}</MainAction>
        ) : (
          save
        )
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      <Crew day={day} picked={typed.picked} onChange={(picked) => draft.set({ ...typed, picked })} errors={errors} />
      <EachOne day={day} draft={typed} onChange={draft.set} errors={errors} />
      <AddPeople people={typed.added} onChange={(added) => draft.set({ ...typed, added })} errors={errors} />
      {count > 0 && (
        <div>
          <QuietAction onClick={draft.clear}>{words.clear}</QuietAction>
        </div>
      )}
    </Page>
  );
}
