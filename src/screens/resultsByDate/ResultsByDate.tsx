/**
 * The office or the supervisor, looking back: the results of one task group by date against the limits of their day, as a picture and as
 * a table that says the same. Afterwards a day is opened, or the next one is planned.
 */
import { useLocation, useSearch } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { namesIn } from '#findings/naming.ts';
import { seasonPicture } from '#findings/season/picture.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useNow } from '#store/hooks.ts';
import { groupInWords } from '#words/groupInWords.ts';
import { en as screen } from '#words/resultsByDate.ts';
import { en as words } from '#words/seasonPicture.ts';
import { Awaited } from './Awaited.tsx';
import { Limits, Picture } from './Picture.tsx';

const minute = 60_000;

export function ResultsByDate() {
  const read = useFoundInBook(findDutiesInSteps, dayOf(useNow(minute), deviceZone()));
  if (read === undefined)
    return (
      <Page heading={words.heading} back="/season">
        <p role="status">{screen.looking}</p>
      </Page>
    );
  return <Of book={read.book} duties={read.found} />;
}

interface OfProps {
  readonly book: Book;
  readonly duties: DutiesOfBook;
}

/** Those with most results first. */
function groupsOf({ groups, measurements }: DutiesOfBook) {
  const all = [...measurements.values()];
  return [...groups.values()]
    .map((group) => ({ group, count: all.filter(({ groupKey }) => groupKey === group.key).length }))
    .sort((a, b) => b.count - a.count || a.group.key.localeCompare(b.group.key));
}

function Of({ book, duties }: OfProps) {
  const asked = new URLSearchParams(useSearch()).get('group');
  const [, go] = useLocation();
  const groups = groupsOf(duties);
  const groupKey = asked ?? groups[0]?.group.key;
  if (groupKey === undefined)
    return (
      <Page heading={words.heading} back="/season" action={<MainAction to="/season">{screen.toSeason}</MainAction>}>
        <p>{screen.noGroups}</p>
      </Page>
    );
  const picture = seasonPicture(book, duties, groupKey);
  const nameOf = namesIn(book);
  return (
    <Page
      heading={words.heading}
      back="/season"
      action={<MainAction to={`/groups?group=${encodeURIComponent(groupKey)}`}>{screen.groupAction}</MainAction>}
      aside={
        <>
          <Limits limits={picture.limits} />
          <Awaited picture={picture} book={book} />
          <p>{words.lowest}</p>
        </>
      }
    >
      <p>{words.intro}</p>
      <SelectField
        name="group"
        label={words.choose}
        options={groups.map(({ group, count }) => ({
          value: group.key,
          label: `${groupInWords(group, nameOf)} (${screen.measured(count)})`,
        }))}
        value={groupKey}
        onChange={(key) => go(`/results-by-date?group=${encodeURIComponent(key)}`)}
      />
      <h2>{groupInWords(picture, nameOf)}</h2>
      <Picture picture={picture} book={book} />
    </Page>
  );
}
