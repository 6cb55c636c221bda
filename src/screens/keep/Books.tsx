/** The practice book and the real one: which of the two is open, and the way to the other. They never mix. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { QuietAction } from '#parts/QuietAction.tsx';
import { switchBook } from '#store/opening.ts';
import { bookState } from '#store/session.ts';
import { en as words } from '#words/keep.ts';
import styles from './keep.module.css';

const text = words.books;

export function Books({ practice }: { readonly practice: boolean }) {
  const [busy, setBusy] = useState(false);
  const [, go] = useLocation();
  const change = async () => {
    setBusy(true);
    await switchBook(practice ? 'book' : 'practice');
    go(bookState().kind === 'open' ? '/' : '/start');
  };
  return (
    <section className={styles.section}>
      <h2>{text.heading}</h2>
      <p>{practice ? text.inPractice : text.inReal}</p>
      <div>
        <QuietAction busy={busy} onClick={() => void change()}>
          {busy ? text.busy : practice ? text.toReal : text.toPractice}
        </QuietAction>
      </div>
    </section>
  );
}
