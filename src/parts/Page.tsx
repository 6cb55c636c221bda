/**
 * One page of the notebook: one heading that names the task, its lines, one main action at the foot within the thumb's reach.
 * From 1000 px on `aside` becomes a second column.
 */
import { type ReactNode, useLayoutEffect, useRef } from 'react';
import { hrefOf } from './href.ts';
import { type Language, LanguageContext, usePartsWords } from './language.ts';
import styles from './Page.module.css';

export interface PageProps {
  /** The task, as heading and as the title of the window. */
  readonly heading: string;
  /** A quiet line over the heading: whose, where, which day. */
  readonly over?: ReactNode;
  /** Path of the page one step back, such as '/samples'. */
  readonly back?: string | undefined;
  readonly backText?: string | undefined;
  /** Exactly one MainAction, and at most one QuietAction beside it. */
  readonly action?: ReactNode;
  /** Second column on wide screens, below the rest on a phone. */
  readonly aside?: ReactNode;
  /** Language of this page when it is not that of the app around it: a worker's page. */
  readonly lang?: Language | undefined;
  readonly children?: ReactNode;
}

/** Name of the app as it stands after the heading in the window's title. */
const windowTitle = (heading: string): string => `${heading} · Fullshift`;

export function Page(props: PageProps) {
  const inside = <PageInside {...props} />;
  return props.lang ? <LanguageContext value={props.lang}>{inside}</LanguageContext> : inside;
}

function PageInside({ heading, over, back, backText, action, aside, lang, children }: PageProps) {
  const words = usePartsWords();
  const headingRef = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    document.title = windowTitle(heading);
  }, [heading]);
  // Someone who listens to the page learns that it changed: the heading takes the focus, except on the very first page.
  useLayoutEffect(() => {
    if (document.documentElement.dataset.arrived === 'yes') {
      headingRef.current?.focus({ preventScroll: true });
      window.scrollTo(0, 0);
    }
    document.documentElement.dataset.arrived = 'yes';
  }, []);
  return (
    <main className={styles.page} lang={lang} id="page">
      <div className={aside ? styles.twoColumns : styles.oneColumn}>
        <div className={styles.column}>
          <header className={styles.head}>
            {back !== undefined && (
              <a className={styles.back} href={hrefOf(back)}>
                <span aria-hidden="true">‹</span>
                {backText ?? words.back}
              </a>
            )}
            {over && <p className={styles.over}>{over}</p>}
            <h1 ref={headingRef} tabIndex={-1}>
              {heading}
            </h1>
          </header>
          <div className={styles.body}>{children}</div>
        </div>
        {aside && <aside className={styles.aside}>{aside}</aside>}
      </div>
      {action && (
        <div className={styles.foot} data-part="foot">
          {action}
        </div>
      )}
    </main>
  );
}
