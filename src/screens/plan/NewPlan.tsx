/**
 * The office, ahead of the season: which work, whom, on which days, how. From a group of the list, or of tasks chosen here, also in an
 * empty book. Afterwards the plan has its own page, and nothing of it is asked again on the day.
 */

import { useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { nextToMeasure } from '#findings/season/nextToMeasure.ts';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone, happenedNow } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useBookMeta, useDraft, useNow } from '#store/hooks.ts';
import { en as words } from '#words/planScreen.ts';
import { notWritten } from '#words/saving.ts';
import { HowLines } from './HowLines.tsx';
import { PlanDays } from './PlanDays.tsx';
import { emptyPlan, type PlanDraft, readPlan } from './planDraft.ts';
import { Whom } from './Whom.tsx';
import { WorkOfPlan } from './WorkOfPlan.tsx';

const minute = 60_000;

export function NewPlan() {
  const today = dayOf(useNow(minute), deviceZone());
  const read = useFoundInBook(findDutiesInSteps, today);
  const groupKey = new URLSearchParams(useSearch()).get('group');
  if (read === undefined)
    return (
      <Page heading={words.heading} back="/season" backText={words.backToSeason}>
        <p role="status">{words.looking}</p>
      </Page>
    );
  const group = nextToMeasure(read.book, read.found).find((each) => each.groupKey === groupKey);
  const first: PlanDraft =
    group === undefined
      ? emptyPlan
      : {
          ...emptyPlan,
          taskIds: group.taskIds,
          setting: group.setting,
          jobId: group.jobClassificationId,
          crew: group.workers.map(({ workerId }) => workerId).filter((id) => read.book.people.has(id)),
        };
  return <PlanForm book={read.book} today={today} first={first} draftKey={`book/plan/${group?.groupKey ?? ''}`} />;
}

interface PlanFormProps {
  readonly book: Book;
  readonly today: string;
  readonly first: PlanDraft;
  readonly draftKey: string;
}

function PlanForm({ book, today, first, draftKey }: PlanFormProps) {
  const draft = useDraft<PlanDraft>(draftKey, first);
  const meta = useBookMeta();
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const [, go] = useLocation();
  const typed = draft.value;
  const change = (part: Partial<PlanDraft>) => draft.set({ ...typed, ...part });
  const submit = async () => {
    const entry = { happened: happenedNow(deviceZone()), by: meta?.holderPersonId ?? null };
    const { errors: found, facts, planId } = readPlan(typed, today, entry);
    setErrors(found);
    if (found.length > 0) return;
    const written = await writing.run(facts, { draftKey });
    if (written === null) return;
    setErrors(notWritten(written, { slots: 'day-0', workOn: 'day-0', reason: 'reason' }));
    if (written.kind === 'written') go(`/plan/${planId}`, { replace: true });
  };
  const fields = { book, today, draft: typed, onChange: change, errors };
  return (
    <Page
      heading={words.heading}
      back="/season"
      backText={words.backToSeason}
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.save}
        </MainAction>
      }
      aside={
        <>
          <PlanDays {...fields} />
          <HowLines {...fields} />
        </>
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      <WorkOfPlan {...fields} isOfGroup={first.taskIds.length > 0} />
      <Whom {...fields} />
    </Page>
  );
}
