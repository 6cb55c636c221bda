/**
 * Office or supervisor, on any day of the season: what became of a plan, place by place: done, with the laboratory, still to do and why.
 * Afterwards a place has another day, or it is written down why it did not come about.
 */
import { useSearch } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { namesIn } from '#findings/naming.ts';
import { planStanding } from '#findings/season/plan.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book, PlanRecord } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useNow } from '#store/hooks.ts';
import { groupInWords } from '#words/groupInWords.ts';
import { en } from '#words/planScreen.ts';
import { DropPlan } from './DropPlan.tsx';
import { Places } from './Places.tsx';
import { PlanParticulars } from './PlanParticulars.tsx';
import { SlotForm } from './SlotForm.tsx';

const words = en.page;
const minute = 60_000;

export function Plan({ planId = '' }: { readonly planId?: string }) {
  const today = dayOf(useNow(minute), deviceZone());
  const read = useFoundInBook(findDutiesInSteps, today);
  const place = new URLSearchParams(useSearch()).get('place');
  if (read === undefined)
    return (
      <Page heading={en.heading} back="/season" backText={en.backToSeason}>
        <p role="status">{en.looking}</p>
      </Page>
    );
  const { book, found } = read;
  const plan = book.plans.get(planId);
  if (plan === undefined)
    return (
      <Page heading={en.heading} back="/season" backText={en.backToSeason}>
        <p>{en.gone}</p>
      </Page>
    );
  if (place !== null) return <SlotForm plan={plan} book={book} today={today} place={place} />;
  return <PlanPage plan={plan} book={book} found={found} />;
}

interface PlanPageProps {
  readonly plan: PlanRecord;
  readonly book: Book;
  readonly found: DutiesOfBook;
}

function PlanPage({ plan, book, found }: PlanPageProps) {
  const standing = planStanding(plan, book, found);
  const { doneCount, underWayCount, toDoCount } = standing;
  return (
    <Page
      heading={words.heading(groupInWords(plan, namesIn(book)))}
      over={words.over(plan.season)}
      back="/season"
      backText={en.backToSeason}
      action={<MainAction to="/tomorrow">{words.tomorrow}</MainAction>}
      aside={
        <>
          <PlanParticulars plan={plan} standing={standing} book={book} />
          <DropPlan plan={plan} />
        </>
      }
    >
      {plan.dropped !== null && <Notice>{words.dropped(plan.dropped.why)}</Notice>}
      <p>
        <strong>{words.summary(doneCount, underWayCount, toDoCount)}</strong>
      </p>
      <p>{words.proves}</p>
      <Places plan={plan} standing={standing} book={book} found={found} />
    </Page>
  );
}
