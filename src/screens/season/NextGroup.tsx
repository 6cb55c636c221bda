/** One task group: what it needs next, what is known, presumed, due and blocked, and the ways on. */
import { namesIn } from '#findings/naming.ts';
import type { NextToMeasure } from '#findings/season/nextToMeasure.ts';
import { hrefOf } from '#parts/href.ts';
import type { Book } from '#records/book.ts';
import { groupInWords } from '#words/groupInWords.ts';
import { en as words } from '#words/season.ts';
import { againstOf, knownOf, needText } from './groupSentences.ts';
import { OthersMeasured } from './OthersMeasured.tsx';
import styles from './season.module.css';

export interface NextGroupProps {
  readonly group: NextToMeasure;
  readonly book: Book;
}

export function NextGroup({ group, book }: NextGroupProps) {
  const { groupKey, need, needs, plans, published } = group;
  const name = groupInWords(group, namesIn(book));
  const also = needs.filter((each) => each !== need && each.kind !== 'known' && each.kind !== 'planned');
  const against = againstOf(group);
  return (
    <li className={styles.item}>
      <h2 className={styles.name}>{name}</h2>
      <p className={styles.need}>{needText(need, book)}</p>
      {also.map((each) => (
        <p key={`${each.kind} ${each.siteId} ${each.workerIds.join()}`}>
          {words.alsoNeeded} {needText(each, book)}
        </p>
      ))}
      {knownOf(group, book).map((text) => (
        <p key={text}>{text}</p>
      ))}
      {against.length > 0 && (
        <details>
          <summary className={styles.summary}>{words.blockedHeading}</summary>
          <ul className={styles.plain}>
            {against.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </details>
      )}
      {published.length > 0 && <OthersMeasured hints={published} />}
      <div className={styles.ways}>
        {plans.map(({ planId, openCount, slotsCount }) => (
          <Way key={planId} to={`/plan/${planId}`} text={words.openPlan(openCount, slotsCount)} about={name} />
        ))}
        <Way
          to={`/plan?group=${encodeURIComponent(groupKey)}`}
          text={plans.length === 0 ? words.plan : words.planAgain}
          about={name}
        />
        {group.lastDoneOn !== null && (
          <Way to={`/groups?group=${encodeURIComponent(groupKey)}`} text={words.group} about={name} />
        )}
        {group.last !== null && (
          <Way to={`/results-by-date?group=${encodeURIComponent(groupKey)}`} text={words.byDate} about={name} />
        )}
      </div>
    </li>
  );
}

/** `about` says to those who listen which group it is about. */
function Way({ to, text, about }: { readonly to: string; readonly text: string; readonly about: string }) {
  return (
    <a className={styles.way} href={hrefOf(to)} aria-label={words.aboutIt(text, about)}>
      {text}
    </a>
  );
}
