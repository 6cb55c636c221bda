/**
 * The office, before a job goes on or at its end: what may be determined of a task group at a site, and every reason that stands against
 * a negative one with the way to mend it. Afterwards the written record lies ready as a paper, negative or positive.
 */
import { useSearch } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone, now } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useBookMeta } from '#store/hooks.ts';
import { en as words } from '#words/determinationScreen.ts';
import { DeterminationPage } from './DeterminationPage.tsx';
import { determinationHere, groupText } from './determinationHere.ts';

export function Determination({ siteId = '' }: { readonly siteId?: string }) {
  const found = useFoundInBook(findDutiesInSteps, dayOf(now(), deviceZone()));
  const meta = useBookMeta();
  const groupKey = new URLSearchParams(useSearch()).get('group');
  if (found === undefined || meta === undefined)
    return (
      <Page heading={words.heading} back="/todo">
        <p role="status">{words.looking}</p>
      </Page>
    );
  const { book, found: duties } = found;
  if (groupKey === null && book.sites.has(siteId)) return <Choose siteId={siteId} duties={duties} book={book} />;
  const here = determinationHere(siteId, groupKey ?? '', duties, book);
  if (here === null)
    return (
      <Page heading={words.gone.heading} back="/todo" action={<MainAction to="/todo">{words.gone.action}</MainAction>}>
        <p>{words.gone.text}</p>
      </Page>
    );
  return <DeterminationPage key={groupKey} here={here} by={meta.holderPersonId} />;
}

interface ChooseProps {
  readonly siteId: string;
  readonly duties: DutiesOfBook;
  readonly book: Book;
}

function Choose({ siteId, duties, book }: ChooseProps) {
  const list = duties.determinations.filter((one) => one.siteId === siteId);
  return (
    <Page heading={words.heading} over={book.sites.get(siteId)?.name} back="/todo">
      {list.length > 0 && <p>{words.choose.intro}</p>}
      <Lines whenEmpty={words.choose.none}>
        {list.map(({ groupKey, outcome, writtenId, differsFromRecord }) => (
          <Line
            key={groupKey}
            to={`/determination/${siteId}?group=${encodeURIComponent(groupKey)}`}
            detail={[
              words.choose.outcome[outcome],
              ...(writtenId === null ? [] : [differsFromRecord ? words.choose.differs : words.choose.written]),
            ].join('; ')}
          >
            {groupText(groupKey, book)}
          </Line>
        ))}
      </Lines>
    </Page>
  );
}
