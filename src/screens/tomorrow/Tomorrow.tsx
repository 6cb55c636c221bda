/**
 * The supervisor, in the evening at the van, and in the morning before anybody enters: who wears which pump, cassette, at what work, what
 * lies ready beside. Afterwards the sheet and the labels are made, and the day opens with all of it in place.
 */
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { dayIn, siteIn } from '#findings/season/tomorrow.ts';
import { Page } from '#parts/Page.tsx';
import { deviceZone } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useBookMeta, useNow } from '#store/hooks.ts';
import { en as words } from '#words/tomorrowScreen.ts';
import { DayForm } from './DayForm.tsx';

const minute = 60_000;

export function Tomorrow({ shiftId = '' }: { readonly shiftId?: string }) {
  const now = useNow(minute);
  const read = useFoundInBook(findDutiesInSteps, dayOf(now, deviceZone()));
  const meta = useBookMeta();
  if (read === undefined || meta === undefined)
    return (
      <Page heading={words.heading.evening} back="/tomorrow">
        <p role="status">{words.looking}</p>
      </Page>
    );
  const { book, found } = read;
  const site = book.sites.get(siteIn(shiftId));
  if (site === undefined)
    return (
      <Page heading={words.heading.evening} back="/tomorrow">
        <p>{words.noSite}</p>
      </Page>
    );
  const asked = dayOf(now, site.zone) < dayIn(shiftId) ? 'evening' : 'morning';
  return <DayForm key={asked} shiftId={shiftId} asked={asked} site={site} book={book} duties={found} meta={meta} />;
}
