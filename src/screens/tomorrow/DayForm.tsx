/** The lines of a day that is made ready: who wears a pump, with what, what lies ready beside; and what is still missing, live. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { dayIn, tomorrowOf } from '#findings/season/tomorrow.ts';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book, SiteRecord } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import type { BookMeta } from '#store/bookMeta.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { notWritten } from '#words/saving.ts';
import { en as words } from '#words/tomorrowScreen.ts';
import { changesSince } from './changes.ts';
import { bodyOf, bookWith, type DayDraft, firstDraft, readDay } from './dayDraft.ts';
import { Papers } from './Papers.tsx';
import { SpareLines } from './SpareLines.tsx';
import { Changes, StillMissing } from './StillMissing.tsx';
import { Wearers } from './Wearers.tsx';

export interface DayFormProps {
  readonly shiftId: string;
  readonly asked: 'evening' | 'morning';
  readonly site: SiteRecord;
  readonly book: Book;
  readonly duties: DutiesOfBook;
  readonly meta: BookMeta;
}

/** Two workers with one pump are one thing to mend. */
const toldOnce = (errors: readonly FieldError[]): readonly FieldError[] =>
  errors.filter(({ text }, at) => errors.findIndex((each) => each.text === text) === at);

export function DayForm({ shiftId, asked, site, book, duties, meta }: DayFormProps) {
  const draftKey = `dayPlan:${shiftId}/${asked}`;
  const draft = useDraft<DayDraft>(draftKey, firstDraft(shiftId, book));
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const [isSaved, setSaved] = useState(false);
  const writing = useWrite();
  const [, go] = useLocation();
  const typed = draft.value;
  const change = (part: Partial<DayDraft>) => {
    setSaved(false);
    draft.set({ ...typed, ...part });
  };
  const prepared = book.dayPlans.get(shiftId)?.prepared ?? null;
  const isOpen = book.shifts.has(shiftId);
  const submit = async () => {
    const found = readDay(typed, book);
    setErrors(found);
    if (found.length > 0) return;
    const entry = { happened: happenedNow(site.zone), by: meta.holderPersonId };
    const knew = prepared === null ? [] : [prepared.factId];
    const facts: NewFact[] = [newFact('dayPrepared.v1', { ...bodyOf(typed, shiftId, asked), knew }, entry)];
    const opened = { shiftId, siteId: site.id, workOn: dayIn(shiftId) };
    if (asked === 'morning' && !isOpen) facts.unshift(newFact('shiftOpened.v1', opened, entry));
    const written = await writing.run(facts, { draftKey });
    if (written === null) return;
    setErrors(toldOnce(notWritten(written, { wearers: 'wearers', pumpId: 'wearers', remark: 'remark' })));
    if (written.kind !== 'written') return;
    if (asked === 'morning') return go(`/shift/${shiftId}`);
    setSaved(true);
    window.scrollTo(0, 0);
  };
  const isChanged = prepared !== null && changesSince(prepared, typed, shiftId, book).length > 0;
  const day = tomorrowOf(bookWith(typed, shiftId, asked, book), shiftId, duties);
  const fields = { shiftId, book, draft: typed, onChange: change, errors };
  return (
    <Page
      heading={words.heading[asked]}
      over={words.over(site.name, dayIn(shiftId))}
      back="/tomorrow"
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {asked === 'evening' ? words.save : isOpen ? words.saveMorningOpen : words.saveMorning}
        </MainAction>
      }
      aside={
        <>
          <StillMissing day={day} book={book} />
          <Papers shiftId={shiftId} site={site} book={book} duties={duties} meta={meta} isChanged={isChanged} />
        </>
      }
    >
      <ErrorSummary errors={errors} />
      {isSaved && <Notice>{words.saved}</Notice>}
      <p>
        {words.intro[asked]} {words.proves}
      </p>
      {asked === 'morning' && prepared !== null && (
        <Changes prepared={prepared} draft={typed} shiftId={shiftId} book={book} />
      )}
      <Wearers {...fields} />
      <SpareLines {...fields} />
    </Page>
  );
}
