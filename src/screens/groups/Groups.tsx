/**
 * The office or the supervisor, planning: the task groups of the book, what is least known first. A group opens to its five terms, its
 * workers and its measurements; there it is said in writing whom else a measurement stands for.
 */
import { useSearch } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { Page } from '#parts/Page.tsx';
import { deviceZone } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useBookMeta, useNow } from '#store/hooks.ts';
import { en as words } from '#words/groups.ts';
import { GroupPage } from './GroupPage.tsx';
import { groupName, leastKnownFirst, standingOf } from './groupText.ts';
import { StandsToo } from './StandsToo.tsx';

const minute = 60_000;

export function Groups() {
  const read = useFoundInBook(findDutiesInSteps, dayOf(useNow(minute), deviceZone()));
  const meta = useBookMeta();
  const asked = new URLSearchParams(useSearch());
  const groupKey = asked.get('group');
  const stands = asked.get('stands');
  if (read === undefined || meta === undefined) return <Page heading={words.heading} />;
  const { book, found } = read;
  if (stands !== null) return <StandsToo book={book} found={found} measurementId={stands} by={meta.holderPersonId} />;
  if (groupKey !== null) return <GroupPage book={book} found={found} groupKey={groupKey} />;
  return (
    <Page
      heading={words.heading}
      aside={
        <Lines heading={words.also}>
          <Line to="/reported" detail={words.toReportedDetail}>
            {words.toReported}
          </Line>
          <Line to="/key-in">{words.toKeyIn}</Line>
        </Lines>
      }
    >
      <p>{words.intro}</p>
      <Lines heading={words.list} whenEmpty={words.none}>
        {leastKnownFirst(found).map((group) => (
          <Line
            key={group.key}
            to={`/groups?group=${encodeURIComponent(group.key)}`}
            detail={`${standingOf(group.key, found)} ${words.detail(group.workerIds.length, group.days.length, group.lastOn)}`}
          >
            {groupName(group, book)}
          </Line>
        ))}
      </Lines>
    </Page>
  );
}
