/** Picking the earlier measurement, the five comparisons, and what follows of them. */
import { useState } from 'react';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Place } from '#findings/place.ts';
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book } from '#records/book.ts';
import { happenedNow, newId } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/reliance.ts';
import { notWritten } from '#words/saving.ts';
import { Compared } from './Compared.tsx';
import { Comparisons } from './Comparisons.tsx';
import { ageOf, earlierOf, workerOf } from './earlier.ts';
import { emptyRely, type RelyDraft, readRely, relianceSoFar, type Work } from './relyDraft.ts';
import { WhatFollows } from './WhatFollows.tsx';
import { WhichWork } from './WhichWork.tsx';

export interface RelyFormProps {
  readonly book: Book;
  readonly found: DutiesOfBook;
  readonly place: Place;
  readonly works: readonly Work[];
  readonly by: string | null;
}

export function RelyForm({ book, found, place, works, by }: RelyFormProps) {
  const { shift, site, zone } = place;
  const draftKey = `shift:${shift.id}/rely`;
  const draft = useDraft<RelyDraft>(draftKey, emptyRely);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const typed = draft.value;
  const change = (part: Partial<RelyDraft>) => draft.set({ ...typed, ...part });
  const work = works.find(({ groupKey }) => groupKey === typed.groupKey) ?? (works.length === 1 ? works[0] : undefined);
  const earlier = work === undefined ? [] : earlierOf(work, shift, found);
  const picked = earlier.find(({ id }) => id === typed.measurementId);
  const soFar =
    work === undefined || picked === undefined
      ? null
      : relianceSoFar(typed, picked.id, shift.id, work, found.measurements, book);

  const submit = async () => {
    const read = readRely(typed, shift.id, work ?? null, newId(), { happened: happenedNow(zone), by });
    setErrors(read.errors);
    if (read.errors.length > 0) return;
    const written = await writing.run(read.facts, { draftKey });
    if (written === null) return;
    setErrors(notWritten(written, { measurementId: 'measurement' }));
    if (written.kind !== 'written') return;
    draft.clear();
    window.scrollTo(0, 0);
  };

  return (
    <Page
      heading={words.heading}
      over={`${site.name}, ${formatDay(shift.workOn, 'en', 'weekday')}`}
      back={`/shift/${shift.id}/job-start`}
      aside={
        <>
          <WhatFollows finding={soFar} />
          <Compared shiftId={shift.id} found={found} book={book} />
        </>
      }
      action={
        earlier.length === 0 && work !== undefined ? (
          <MainAction to="/reported?add=1">{words.toReported}</MainAction>
        ) : (
          <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
            {soFar === null || soFar.valid ? words.save : words.saveAnyway}
          </MainAction>
        )
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      <WhichWork works={works} work={work} onChange={change} errors={errors} book={book} />
      {work !== undefined && earlier.length === 0 && (
        <Lines>
          <Line>{words.none}</Line>
        </Lines>
      )}
      {work !== undefined && earlier.length > 0 && (
        <Choice
          name="measurement"
          label={words.pick}
          options={earlier.map((each) => ({
            value: each.id,
            label: words.measured(workerOf(each, book), each.workOn),
            hint: ageOf(each, work, shift, found, book),
          }))}
          value={picked?.id ?? null}
          onChange={(measurementId) => change({ measurementId, answers: {}, ownFirm: null })}
          error={errorOf(errors, 'measurement')}
        />
      )}
      {work !== undefined && picked !== undefined && (
        <Comparisons
          draft={typed}
          onChange={change}
          errors={errors}
          measurement={picked}
          shift={shift}
          work={work}
          book={book}
        />
      )}
    </Page>
  );
}
