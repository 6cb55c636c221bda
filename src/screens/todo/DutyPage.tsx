/**
 * One thing to do, opened from the list: all that is known of it, and the way to note that it was done, by whom, and where the paper
 * lies. Afterwards it stands under what is done, with date and name; if it was not done after all, it is opened again with the reason.
 */
import { dayOf } from '#core/calendar.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import { Line, Lines, Particulars } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone, now } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { whatFulfils, whoseDecision } from '#words/duties.ts';
import { formatDay } from '#words/quantity.ts';
import { en, whenText } from '#words/todo.ts';
import { lateText, paragraphOf } from './DutyLine.tsx';
import { becauseOf, fulfilledAt } from './dutyPaths.ts';
import { NoteDone } from './NoteDone.tsx';
import { Reopen } from './Reopen.tsx';
import { becauseOfWhat, whatToDo } from './whatToDo.ts';

const words = en.one;

export function DutyPage({ dutyId = '' }: { readonly dutyId?: string }) {
  const today = dayOf(now(), deviceZone());
  const found = useFoundInBook(findDutiesInSteps, today);
  if (found === undefined)
    return (
      <Page heading={en.heading} back="/todo">
        <p role="status">{en.looking}</p>
      </Page>
    );
  const { book, found: duties } = found;
  const duty = duties.duties.find(({ id }) => id === dutyId);
  if (duty === undefined)
    return (
      <Page heading={words.goneHeading} back="/todo" action={<MainAction to="/todo">{words.back}</MainAction>}>
        <p>{words.gone}</p>
      </Page>
    );
  return <OnePage duty={duty} duties={duties} book={book} />;
}

interface OnePageProps {
  readonly duty: Duty;
  readonly duties: DutiesOfBook;
  readonly book: Book;
}

function OnePage({ duty, duties, book }: OnePageProps) {
  const { done } = duty;
  const because = becauseOf(duty, duties, book);
  const fulfil = fulfilledAt(duty);
  const ways = [because, done === null && fulfil.text !== en.fulfil.note ? fulfil : null].filter((way) => way !== null);
  const isNoted = book.duties.has(duty.id) && done !== null;
  const shared = { duty, book, today: duties.today };
  if (done === null && fallsByItself(duty))
    return (
      <Page
        heading={whatToDo(duty, book)}
        over={en.over}
        back="/todo"
        action={<MainAction to={fulfil.to}>{fulfil.text}</MainAction>}
      >
        <Known duty={duty} book={book} today={duties.today} />
        <p>{words.fallsByItself}</p>
        <Ways ways={because === null ? [] : [because]} />
      </Page>
    );
  if (done === null)
    return (
      <NoteDone {...shared} over={en.over}>
        <Known duty={duty} book={book} today={duties.today} />
        <Ways ways={ways} />
      </NoteDone>
    );
  return (
    <Page
      heading={whatToDo(duty, book)}
      over={en.over}
      back="/todo"
      action={<MainAction to="/todo">{words.back}</MainAction>}
    >
      <p>{en.doneOn(formatDay(done.on), book.people.get(done.byId ?? '')?.name ?? null)}</p>
      <p>{done.whereItLies === null ? en.noPlace : en.whereItLies(done.whereItLies)}</p>
      <Known duty={duty} book={book} today={duties.today} />
      <Ways ways={ways} />
      {isNoted && <Reopen {...shared} />}
      {isNoted && (
        <Lines>
          <Line to={`/story/${encodeURIComponent(`duty:${duty.id}`)}`}>{words.story}</Line>
        </Lines>
      )}
    </Page>
  );
}

/** Nothing noted ends it: only the measurement, the notice or the determination itself. */
const fallsByItself = ({ fulfilledBy }: Duty): boolean =>
  fulfilledBy === 'measurement' || fulfilledBy === 'notice' || fulfilledBy === 'determination';

interface KnownProps {
  readonly duty: Duty;
  readonly book: Book;
  readonly today: string;
}

function Known({ duty, book, today }: KnownProps) {
  const names = duty.workerIds.map((id) => book.people.get(id)?.name).filter((name) => name !== undefined);
  const site = book.sites.get(duty.siteId ?? '')?.name;
  const late = lateText(duty);
  return (
    <>
      <p>{becauseOfWhat(duty, book)}</p>
      <Particulars
        items={[
          [words.by, whenText(duty, today)],
          ...(names.length === 0 ? [] : [[words.whom, names.join(', ')] as const]),
          ...(site === undefined ? [] : [[words.where, site] as const]),
          [words.paragraph, paragraphOf(duty)],
          [words.fulfils, whatFulfils(duty)],
          [words.decides, whoseDecision(duty)],
        ]}
      />
      {duty.presumed && <p>{en.presumed}</p>}
      {late !== null && <p>{late}</p>}
    </>
  );
}

function Ways({ ways }: { readonly ways: readonly { readonly to: string; readonly text: string }[] }) {
  if (ways.length === 0) return null;
  return (
    <Lines>
      {ways.map(({ to, text }) => (
        <Line key={to} to={to}>
          {text}
        </Line>
      ))}
    </Lines>
  );
}
