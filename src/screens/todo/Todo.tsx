/**
 * The office, laptop or phone, on any day: one list of what must be done, for whom, by when and why, from everything in the book.
 * Afterwards each line is done where it is done, or noted as done, and the days stand in the firm's own calendar.
 */
import { useLocation, useSearch } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone, now } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { en as words } from '#words/todo.ts';
import { CalendarFile } from './CalendarFile.tsx';
import { DutyGroups } from './DutyGroups.tsx';
import { fulfilledAt } from './dutyPaths.ts';
import { firstOf, inGroups, ofShown, type Shown } from './inOrder.ts';
import { RulesNotHeld } from './RulesNotHeld.tsx';
import styles from './todo.module.css';

export function Todo() {
  const today = dayOf(now(), deviceZone());
  const found = useFoundInBook(findDutiesInSteps, today);
  const search = new URLSearchParams(useSearch());
  const [, go] = useLocation();
  if (found === undefined)
    return (
      <Page heading={words.heading} back="/">
        <p role="status">{words.looking}</p>
      </Page>
    );
  const { book, found: duties } = found;
  const shown: Shown = { personId: search.get('person'), siteId: search.get('site') };
  const show = (part: Partial<Shown>) => go(`/todo${questionOf({ ...shown, ...part })}`, { replace: true });
  const list = ofShown(duties.duties, shown);
  const open = list.filter(({ done }) => done === null);
  const groups = inGroups(list);
  const first = firstOf(groups);
  return (
    <Page
      heading={words.heading}
      over={words.over}
      back="/"
      action={
        <MainAction to={first === undefined ? '/' : fulfilledAt(first).to}>
          {first === undefined ? words.toToday : words.next}
        </MainAction>
      }
      aside={
        <>
          {open.length > 0 && <CalendarFile today={today} list={open} book={book} />}
          <Also />
        </>
      }
    >
      <RulesNotHeld notHeld={duties.notHeld ?? []} book={book} siteId={shown.siteId} />
      {open.length > 0 && <p>{words.intro}</p>}
      {duties.duties.length > 0 && <Filters book={book} duties={duties.duties} shown={shown} onShow={show} />}
      {list.length === 0 && <p>{duties.duties.length === 0 ? words.empty : words.emptyFiltered}</p>}
      <DutyGroups groups={groups} duties={duties} book={book} />
    </Page>
  );
}

const questionOf = ({ personId, siteId }: Shown): string => {
  const asked = new URLSearchParams();
  if (personId !== null) asked.set('person', personId);
  if (siteId !== null) asked.set('site', siteId);
  return asked.size === 0 ? '' : `?${asked}`;
};

interface FiltersProps {
  readonly book: Book;
  readonly duties: readonly Duty[];
  readonly shown: Shown;
  readonly onShow: (part: Partial<Shown>) => void;
}

/** Stands for everybody, or every site, in the phone's own picker. */
const all = '-';

function Filters({ book, duties, shown, onShow }: FiltersProps) {
  const named = new Set(duties.flatMap(({ workerIds }) => workerIds));
  const people = [...book.people.values()].filter(({ id }) => named.has(id));
  return (
    <details open={shown.personId !== null || shown.siteId !== null}>
      <summary className={styles.summary}>{words.filters.heading}</summary>
      <div className={styles.filters}>
        <SelectField
          name="person"
          label={words.filters.person}
          options={[
            { value: all, label: words.filters.everybody },
            ...people.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          value={shown.personId ?? all}
          onChange={(id) => onShow({ personId: id === all ? null : id })}
        />
        <SelectField
          name="site"
          label={words.filters.site}
          options={[
            { value: all, label: words.filters.everySite },
            ...[...book.sites.values()].map(({ id, name }) => ({ value: id, label: name })),
          ]}
          value={shown.siteId ?? all}
          onChange={(id) => onShow({ siteId: id === all ? null : id })}
        />
      </div>
    </details>
  );
}

function Also() {
  const { more } = words;
  return (
    <Lines heading={more.heading}>
      <Line to="/inspector">{more.inspector}</Line>
      <Line to="/person">{more.people}</Line>
      <Line to="/asked">{more.request}</Line>
      <Line to="/papers">{more.papers}</Line>
    </Lines>
  );
}
