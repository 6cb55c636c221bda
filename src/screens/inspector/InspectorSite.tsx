/**
 * One site for whoever asks at the door: days with figures, who, told, determined, worn, programme and where papers lie, custody sheets.
 * Nothing of another site stands here. Printed, it is one paper.
 */
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { type InspectorView, inspectorView } from '#findings/duties/list/inspector.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { deviceZone, now } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { en as words } from '#words/inspector.ts';
import { formatQuantity } from '#words/quantity.ts';
import { Boxes } from './Boxes.tsx';
import { Figures } from './Figures.tsx';
import { Programme } from './Programme.tsx';
import { Told } from './Told.tsx';
import { Who } from './Who.tsx';

export function InspectorSite({ siteId = '' }: { readonly siteId?: string }) {
  const today = dayOf(now(), deviceZone());
  const found = useFoundInBook(findDutiesInSteps, today);
  if (found === undefined)
    return (
      <Page heading={words.heading} back="/inspector">
        <p role="status">{words.looking}</p>
      </Page>
    );
  const { book, found: duties } = found;
  if (!book.sites.has(siteId))
    return (
      <Page
        heading={words.gone.heading}
        back="/inspector"
        action={<MainAction to="/inspector">{words.gone.action}</MainAction>}
      >
        <p>{words.gone.text}</p>
      </Page>
    );
  const view = inspectorView(siteId, duties, book);
  return (
    <Page
      heading={words.siteHeading(view.name)}
      over={words.siteOver(book.book?.firmName ?? '', today)}
      back="/inspector"
      action={<MainAction onClick={() => window.print()}>{words.print}</MainAction>}
      aside={
        <>
          <Told view={view} />
          <Programme view={view} book={book} duties={duties.duties} today={today} />
          <Boxes siteId={siteId} book={book} />
        </>
      }
    >
      <Rule view={view} />
      <Figures view={view} book={book} />
      <Who view={view} />
    </Page>
  );
}

function Rule({ view: { limits } }: { readonly view: InspectorView }) {
  const { set, heldComplete } = limits;
  const level = (value: number): string => formatQuantity(value, 'µg/m³');
  return (
    <>
      <p>{words.rule(set.document, level(set.actionLevel.value), level(set.pel.value))}</p>
      {!heldComplete && <p>{words.notHeld}</p>}
    </>
  );
}
