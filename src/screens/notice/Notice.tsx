/**
 * The office, with a result on the desk: who must be told, by when, and the notice itself in the workers' own languages. Afterwards the
 * paper lies ready, each worker who was told is written down, and whoever was not stays on the list.
 */
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { deviceZone, now } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useBookMeta } from '#store/hooks.ts';
import { en as words } from '#words/noticeScreen.ts';
import { NoticePage } from './NoticePage.tsx';
import { noticeHere } from './noticeHere.ts';

export function Notice({ measurementId = '' }: { readonly measurementId?: string }) {
  const found = useFoundInBook(findDutiesInSteps, dayOf(now(), deviceZone()));
  const meta = useBookMeta();
  if (found === undefined || meta === undefined)
    return (
      <Page heading={words.heading} back="/todo">
        <p role="status">{words.looking}</p>
      </Page>
    );
  const here = noticeHere(measurementId, found.found, found.book);
  if (here === null)
    return (
      <Page heading={words.gone.heading} back="/todo" action={<MainAction to="/todo">{words.gone.action}</MainAction>}>
        <p>{words.gone.text}</p>
      </Page>
    );
  return <NoticePage here={here} by={meta.holderPersonId} />;
}
