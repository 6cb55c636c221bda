/**
 * The list as the office reads it: what has passed, then day by day, then as soon as possible. What lasts with the work, and what waits
 * until it goes on, is folded under one line for each site, so that what has a day is seen first. Afterwards a line is opened or done.
 */
import type { ReactNode } from 'react';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import type { Book } from '#records/book.ts';
import { dayHeading, en as words } from '#words/todo.ts';
import { DutyLine } from './DutyLine.tsx';
import type { DutyGroups as Groups } from './inOrder.ts';
import styles from './todo.module.css';

interface DutyGroupsProps {
  readonly groups: Groups;
  readonly duties: DutiesOfBook;
  readonly book: Book;
}

export function DutyGroups({ groups, ...rest }: DutyGroupsProps) {
  return (
    <>
      {groups.overdue.length > 0 && (
        <section>
          <h2>{words.groups.overdue}</h2>
          <p>{words.late}</p>
          <DutyLines some={groups.overdue} {...rest} />
        </section>
      )}
      {groups.dated.size > 0 && (
        <section>
          <h2>{words.groups.dated}</h2>
          {[...groups.dated].map(([day, some]) => (
            <section key={day} className={styles.part}>
              <h3>{dayHeading(day, rest.duties.today)}</h3>
              <DutyLines some={some} {...rest} />
            </section>
          ))}
        </section>
      )}
      {groups.soon.length > 0 && (
        <section>
          <h2>{words.groups.soon}</h2>
          <DutyLines some={groups.soon} {...rest} isSaidAbove />
        </section>
      )}
      <FoldedBySite heading={words.groups.again} bySite={groups.again} {...rest} />
      <FoldedBySite heading={words.groups.lasting} bySite={groups.lasting} {...rest} />
      {groups.lateDone.length > 0 && (
        <section>
          <h2>{words.groups.lateDone}</h2>
          <DutyLines some={groups.lateDone} {...rest} />
        </section>
      )}
      {groups.done.length > 0 && (
        <Folded text={words.done(groups.done.length)}>
          <DutyLines some={groups.done} {...rest} />
        </Folded>
      )}
    </>
  );
}

interface FoldedBySiteProps extends Omit<DutyGroupsProps, 'groups'> {
  readonly heading: string;
  readonly bySite: ReadonlyMap<string, readonly Duty[]>;
}

function FoldedBySite({ heading, bySite, ...rest }: FoldedBySiteProps) {
  if (bySite.size === 0) return null;
  return (
    <section>
      <h2>{heading}</h2>
      {[...bySite].map(([siteId, some]) => (
        <Folded key={siteId} text={words.atOne(rest.book.sites.get(siteId)?.name ?? words.noSite, some.length)}>
          <DutyLines some={some} {...rest} isSaidAbove />
        </Folded>
      ))}
    </section>
  );
}

function Folded({ text, children }: { readonly text: string; readonly children: ReactNode }) {
  return (
    <details>
      <summary className={styles.summary}>{text}</summary>
      {children}
    </details>
  );
}

interface DutyLinesProps extends Omit<DutyGroupsProps, 'groups'> {
  readonly some: readonly Duty[];
  readonly isSaidAbove?: boolean;
}

function DutyLines({ some, ...rest }: DutyLinesProps) {
  return (
    <ul className={styles.list}>
      {some.map((duty) => (
        <DutyLine key={duty.id} duty={duty} {...rest} />
      ))}
    </ul>
  );
}
