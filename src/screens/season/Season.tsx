/**
 * The office or the supervisor before the season, at a table: what to measure next, in order of need, told in sentences. Afterwards one
 * of them is planned. In an empty book it says what to enter first.
 */
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { namesIn } from '#findings/naming.ts';
import type { NeedKind } from '#findings/season/need.ts';
import { nextToMeasure } from '#findings/season/nextToMeasure.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useNow } from '#store/hooks.ts';
import { groupInWords } from '#words/groupInWords.ts';
import { en as words } from '#words/season.ts';
import { NextGroup } from './NextGroup.tsx';
import styles from './season.module.css';

const minute = 60_000;
/** Of these nothing is to be planned now. */
const quiet: ReadonlySet<NeedKind> = new Set(['known', 'planned', 'resultOwed', 'answer', 'notMeasuredNoWork']);

export function Season() {
  const today = dayOf(useNow(minute), deviceZone());
  const read = useFoundInBook(findDutiesInSteps, today);
  if (read === undefined)
    return (
      <Page heading={words.heading} back="/">
        <p role="status">{words.looking}</p>
      </Page>
    );
  const { book, found } = read;
  const groups = nextToMeasure(book, found);
  const first = groups.find(({ need, openCount }) => openCount === 0 && !quiet.has(need.kind));
  return (
    <Page
      heading={words.heading}
      back="/"
      action={
        <MainAction to={first === undefined ? '/plan' : `/plan?group=${encodeURIComponent(first.groupKey)}`}>
          {words.add}
        </MainAction>
      }
      aside={
        <>
          <Plans book={book} />
          <Ways />
        </>
      }
    >
      {groups.length === 0 ? (
        <Empty />
      ) : (
        <>
          <p>{words.intro}</p>
          <ul className={styles.list}>
            {groups.map((group) => (
              <NextGroup key={group.groupKey} group={group} book={book} />
            ))}
          </ul>
        </>
      )}
    </Page>
  );
}

/** An empty book: what to enter first, and why. */
function Empty() {
  return (
    <section>
      <h2>{words.empty.heading}</h2>
      <p>{words.empty.first}</p>
      <ol className={styles.plain}>
        {words.empty.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
    </section>
  );
}

function Plans({ book }: { readonly book: Book }) {
  const plans = [...book.plans.values()].filter(({ dropped }) => dropped === null);
  return (
    <Lines heading={words.plansHeading} whenEmpty={words.plansNone}>
      {plans.map((plan) => (
        <Line key={plan.id} to={`/plan/${plan.id}`}>
          {words.planLine(groupInWords(plan, namesIn(book)), plan.season)}
        </Line>
      ))}
    </Lines>
  );
}

function Ways() {
  const { ways } = words;
  return (
    <Lines heading={ways.heading}>
      <Line to="/tomorrow">{ways.tomorrow}</Line>
      <Line to="/prove">{ways.prove}</Line>
      <Line to="/day-ahead">{ways.dayAhead}</Line>
      <Line to="/money">{ways.money}</Line>
      <Line to="/gear">{ways.gear}</Line>
      <Line to="/results-by-date">{ways.byDate}</Line>
      <Line to="/groups">{ways.groups}</Line>
    </Lines>
  );
}
