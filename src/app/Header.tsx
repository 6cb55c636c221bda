/** Over every page: whose hands the device is in, EXAMPLE across a practice book, and the pages of the book in plain words. */
import { useLocation } from 'wouter';
import { hrefOf } from '#parts/href.ts';
import { useBookMeta, useBookState } from '#store/hooks.ts';
import { en as words } from '#words/shell.ts';
import styles from './shell.module.css';

const pages = [
  ['/', words.pages.today],
  ['/samples', words.pages.samples],
  ['/results', words.pages.results],
  ['/boxes', words.pages.boxes],
  ['/keep', words.pages.keep],
] as const;

export function Header() {
  const state = useBookState();
  return (
    <header className={styles.header}>
      <button
        type="button"
        className={styles.skip}
        onClick={() => document.querySelector<HTMLElement>('#page h1')?.focus()}
      >
        {words.skip}
      </button>
      <div className={styles.top}>
        <a className={styles.name} href={hrefOf('/')}>
          {words.appName}
        </a>
        {state.kind === 'open' && <Holder />}
      </div>
      {state.kind === 'open' && <Contents />}
    </header>
  );
}

function Holder() {
  const meta = useBookMeta();
  if (meta === undefined) return <span className={styles.holder} />;
  return (
    <>
      {meta.practice && (
        <strong className={styles.example} title={words.exampleMeaning}>
          {words.example}
        </strong>
      )}
      <a className={styles.holder} href={hrefOf('/who')}>
        {meta.holderName === null ? words.heldByNobody : words.heldBy(meta.holderName)}
      </a>
    </>
  );
}

function Contents() {
  const [location] = useLocation();
  return (
    <nav aria-label={words.nav}>
      <ul className={styles.contents}>
        {pages.map(([path, text]) => (
          <li key={path}>
            <a className={styles.content} href={hrefOf(path)} aria-current={location === path ? 'page' : undefined}>
              {text}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
