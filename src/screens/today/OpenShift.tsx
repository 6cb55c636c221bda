/**
 * Opening today's shift, with clean hands before the first flow check: the site is chosen, or written down with what is needed now.
 * Afterwards the day's page of that site is open.
 */
import { type ReactNode, useState } from 'react';
import { useLocation } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { emptySite, readSite, SiteLines, type SiteText } from '#parts/SiteLines.tsx';
import type { NewFact } from '#records/fact.ts';
import { states } from '#reference/states.ts';
import { deviceZone, happenedNow, newId, now } from '#store/device.ts';
import { useRecordsNamed } from '#store/hooks/useRecordsNamed.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useBookMeta, useDraft, useRegisters, useShifts } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en as partsWords } from '#words/parts.ts';
import { formatDay } from '#words/quantity.ts';
import { notWritten } from '#words/saving.ts';
import { en as season } from '#words/season.ts';
import { en as words } from '#words/today.ts';

export interface OpenShiftProps {
  readonly today: string;
  /** Sites whose shift is open today already. */
  readonly taken: readonly string[];
  readonly before: ReactNode;
  readonly aside: ReactNode;
  readonly onCancel: (() => void) | undefined;
}

interface OpenDraft {
  readonly picked: string | null;
  readonly site: SiteText;
}

const draftKey = 'book/openShift';

export function OpenShift({ today, taken, before, aside, onCancel }: OpenShiftProps) {
  const registers = useRegisters();
  const lastShift = useShifts(1)?.[0];
  const meta = useBookMeta();
  const draft = useDraft<OpenDraft>(draftKey, { picked: null, site: emptySite(deviceZone()) });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const [, go] = useLocation();
  const sites = (registers?.sites.list ?? []).filter((site) => !taken.includes(site.id));
  const readyDays = useRecordsNamed(sites.map(({ id }) => `dayPlan:${id}.${today}`))?.dayPlans;
  const ready = [...(readyDays?.values() ?? [])].find(({ prepared }) => prepared !== null)?.siteId;
  const usual = ready ?? sites.find((site) => site.id === lastShift?.siteId)?.id ?? null;
  const picked = draft.value.picked ?? usual ?? (sites.length === 0 ? addingNew : null);

  const chosenSite = (read: FieldReader) => {
    const known = registers?.sites.byId.get(picked ?? '');
    if (known) return { site: known, isNew: false };
    if (picked !== addingNew) read.add('site', words.openShift.siteMissing);
    const added = picked === addingNew ? readSite(read, draft.value.site) : null;
    return added && { site: { ...added, siteId: newId() }, isNew: true };
  };
  const submit = async () => {
    const read = fieldReader(partsWords);
    const chosen = chosenSite(read);
    if (!chosen || read.errors.length > 0) return setErrors(read.errors);
    const { site, isNew } = chosen;
    const entry = { happened: happenedNow(site.zone), by: meta?.holderPersonId ?? null };
    const workOn = dayOf(now(), site.zone);
    const shiftId = `${site.siteId}.${workOn}`;
    const facts: NewFact[] = isNew ? [newFact('siteAdded.v1', site, entry)] : [];
    const written = await writing.run(
      [...facts, newFact('shiftOpened.v1', { shiftId, siteId: site.siteId, workOn }, entry)],
      { draftKey },
    );
    if (written === null) return;
    setErrors(notWritten(written));
    if (written.kind === 'written') go(`/shift/${shiftId}`);
  };

  return (
    <Page
      heading={words.heading(formatDay(today, 'en', 'weekday'), null)}
      over={meta?.book?.firmName}
      aside={aside}
      action={
        <>
          <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
            {words.openShift.action}
          </MainAction>
          {onCancel && <QuietAction onClick={onCancel}>{words.openShift.cancel}</QuietAction>}
        </>
      }
    >
      {before}
      <ErrorSummary errors={errors} />
      <p>{words.openShift.intro}</p>
      {readyDays?.has(`${picked}.${today}`) && (
        <Lines>
          <Line to={`/tomorrow/${picked}.${today}`} detail={season.readyDetail}>
            {season.ready}
          </Line>
        </Lines>
      )}
      <PickOrAdd
        name="site"
        label={words.openShift.site}
        options={sites.map(({ id, name, stateCode }) => ({ id, label: name, detail: stateCode }))}
        value={picked}
        onChange={(id) => draft.set({ ...draft.value, picked: id })}
        addText={words.openShift.add}
        error={errorOf(errors, 'site')}
      >
        <SiteLines
          value={draft.value.site}
          onChange={(site) => draft.set({ picked: addingNew, site })}
          errors={errors}
          states={states().map(({ code, name }) => ({ value: code, label: name }))}
        />
      </PickOrAdd>
    </Page>
  );
}
