/**
 * The office, laptop or phone, on any day: one list of what must be done, for whom, by when and why, from everything in the book.
 * Afterwards each line is done where it is done, or noted as done, and the days stand in the firm's own calendar.
 */
import { useLocation, useSearch } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Duty } from '#findings/duties/duty.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone, now } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { en as words } from '#words/todo.ts';
import { CalendarFile } from './CalendarFile.tsx';
import { DutyLine } from './DutyLine.tsx';
import { fulfilledAt } from './dutyPaths.ts';
import { inGroups, ofShown, type Shown } from './inOrder.ts';
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
  const [first] = open;
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
          <Filters book={book} duties={duties.duties} shown={shown} onShow={show} />
          {open.length > 0 && <CalendarFile today={today} list={open} book={book} />}
          <Also />
        </>
      }
    >
      <RulesNotHeld notHeld={duties.notHeld ?? []} book={book} siteId={shown.siteId} />
      {open.length > 0 && <p>{words.intro}</p>}
      {list.length === 0 && <p>{duties.duties.length === 0 ? words.empty : words.emptyFiltered}</p>}
      <Groups list={list} duties={duties} book={book} />
    </Page>
  );
}

const questionOf = ({ personId, siteId }: Shown): string => {
  const asked = new URLSearchParams();
  if (personId !== null) asked.set('person', personId);
  if (siteId !== null) asked.set('site', siteId);
  return asked.size === 0 ? '' : `?${asked}`;
};

interface GroupsProps {
  readonly list: readonly Duty[];
  readonly duties: DutiesOfBook;
  readonly book: Book;
}

function Groups({ list, duties, book }: GroupsProps) {
  const groups = inGroups(list);
  const lines = (some: readonly Duty[]) => (
    <ul className={styles.list}>
      {some.map((duty) => (
        <DutyLine key={duty.id} duty={duty} duties={duties} book={book} />
      ))}
    </ul>
  );
  return (
    <>
      {(['overdue', 'dated', 'undated', 'lateDone'] as const).map((name) =>
        groups[name].length === 0 ? null : (
          <section key={name}>
            <h2>{words.groups[name]}</h2>
            {name === 'overdue' && <p>{words.late}</p>}
            {lines(groups[name])}
          </section>
        ),
      )}
      {groups.done.length > 0 && (
        <details>
          <summary className={styles.summary}>{words.done(groups.done.length)}</summary>
          {lines(groups.done)}
        </details>
      )}
    </>
  );
}

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
    <section className={styles.section}>
      <h2>{words.filters.heading}</h2>
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
    </section>
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
