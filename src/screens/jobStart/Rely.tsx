/**
 * The supervisor or the office before a job: may it rest on an earlier measurement? Both days stand beside each other, a person answers
 * five comparisons, and every reason against it is said. Afterwards the job rests on it, or everybody knows why not.
 */
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { placeOfShift } from '#findings/place.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { deviceZone } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useBookMeta, useNow } from '#store/hooks.ts';
import { en as words } from '#words/reliance.ts';
import { workOfShift } from './earlier.ts';
import { RelyForm } from './RelyForm.tsx';

const minute = 60_000;

export function Rely({ shiftId = '' }: { readonly shiftId?: string }) {
  const now = useNow(minute);
  const read = useFoundInBook(findDutiesInSteps, dayOf(now, deviceZone()));
  const meta = useBookMeta();
  if (read === undefined || meta === undefined) return <Page heading={words.heading} back={`/shift/${shiftId}`} />;
  const { book, found } = read;
  const place = placeOfShift(shiftId, book, now);
  if (place === null)
    return (
      <Page heading={words.heading} back="/">
        <p>{words.noShift}</p>
      </Page>
    );
  const works = workOfShift(shiftId, book);
  if (works.length === 0)
    return (
      <Page
        heading={words.heading}
        over={place.site.name}
        back={`/shift/${shiftId}`}
        action={<MainAction to={`/shift/${shiftId}/roster`}>{words.toRoster}</MainAction>}
      >
        <p>{words.noRoster}</p>
      </Page>
    );
  return <RelyForm book={book} found={found} place={place} works={works} by={meta.holderPersonId} />;
}
