/**
 * The supervisor, in the evening or early in the morning: at which site, for which day. Afterwards it is said who wears what there. Days
 * that were made ready stand below.
 */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { dayOf, wallTimeOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { Choice } from '#parts/Choice.tsx';
import { DateField } from '#parts/DateField.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { emptySite, SiteLines } from '#parts/SiteLines.tsx';
import type { Book } from '#records/book.ts';
import { states } from '#reference/states.ts';
import { deviceZone, happenedNow } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useBookMeta, useDraft, useNow } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { notWritten } from '#words/saving.ts';
import { en } from '#words/tomorrowScreen.ts';
import { ReadyDays } from './ReadyDays.tsx';
import { readWhere, type WhereDraft } from './whereDraft.ts';

const words = en.where;
const minute = 60_000;

export function TomorrowWhere() {
  const now = useNow(minute);
  const read = useFoundInBook(findDutiesInSteps, dayOf(now, deviceZone()));
  if (read === undefined)
    return (
      <Page heading={words.heading} back="/">
        <p role="status">{en.looking}</p>
      </Page>
    );
  return <WhereForm book={read.book} now={now} />;
}

/** Before this hour of the morning the day that is meant is today: common sense, no source. */
const morningUntil = '11:00';

function WhereForm({ book, now }: { readonly book: Book; readonly now: string }) {
  const draftKey = 'book/tomorrow';
  const today = dayOf(now, deviceZone());
  const isMorning = wallTimeOf(now, deviceZone()).time < morningUntil;
  const sites = [...book.sites.values()];
  const lastSite = [...book.shifts.values()].sort((a, b) => a.workOn.localeCompare(b.workOn)).at(-1)?.siteId ?? null;
  const draft = useDraft<WhereDraft>(draftKey, {
    siteId: lastSite ?? sites[0]?.id ?? addingNew,
    site: emptySite(deviceZone()),
    when: isMorning ? 'today' : 'tomorrow',
    day: '',
  });
  const meta = useBookMeta();
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const [, go] = useLocation();
  const typed = draft.value;
  const change = (part: Partial<WhereDraft>) => draft.set({ ...typed, ...part });
  const submit = async () => {
    const { errors: found, day, siteId, added } = readWhere(typed, today, book);
    setErrors(found);
    if (found.length > 0) return;
    if (added === null) draft.clear();
    else {
      const entry = { happened: happenedNow(deviceZone()), by: meta?.holderPersonId ?? null };
      const written = await writing.run([newFact('siteAdded.v1', added, entry)], { draftKey });
      if (written === null) return;
      setErrors(notWritten(written));
      if (written.kind !== 'written') return;
    }
    go(`/tomorrow/${siteId}.${day}`);
  };
  return (
    <Page
      heading={words.heading}
      back="/"
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.go}
        </MainAction>
      }
      aside={<ReadyDays book={book} today={today} />}
    >
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      <PickOrAdd
        name="site"
        label={words.site}
        options={sites.map(({ id, name, stateCode }) => ({ id, label: name, detail: stateCode }))}
        value={typed.siteId}
        onChange={(siteId) => change({ siteId })}
        addText={words.addSite}
        error={errorOf(errors, 'site')}
      >
        <SiteLines
          value={typed.site}
          onChange={(site) => change({ site, siteId: addingNew })}
          errors={errors}
          states={states().map(({ code, name }) => ({ value: code, label: name }))}
        />
      </PickOrAdd>
      <Choice
        name="when"
        label={words.day}
        options={(['tomorrow', 'today', 'other'] as const).map((value) => ({ value, label: words.days[value] }))}
        value={typed.when}
        onChange={(when) => change({ when })}
      />
      {typed.when === 'other' && (
        <DateField
          name="day"
          label={words.otherDay}
          value={typed.day}
          onChange={(day) => change({ day })}
          today={today}
          error={errorOf(errors, 'day')}
        />
      )}
    </Page>
  );
}
