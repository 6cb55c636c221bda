/** Folded away: ranges of others with their source, and that they prove nothing. */
import type { PublishedHint } from '#findings/season/publishedExposures.ts';
import { en as published } from '#words/published.ts';
import { en as words } from '#words/season.ts';
import styles from './season.module.css';

export function OthersMeasured({ hints }: { readonly hints: readonly PublishedHint[] }) {
  return (
    <details>
      <summary className={styles.summary}>{words.othersHeading}</summary>
      <p>{words.othersProve}</p>
      <ul className={styles.plain}>
        {hints.map(({ exposure, setting }) => (
          <li key={exposure.id}>
            <p>{published.line(exposure)}</p>
            <p className={styles.quiet}>{published.detail(exposure, setting)}</p>
            <p className={styles.quiet}>{published.source(exposure)}</p>
          </li>
        ))}
      </ul>
    </details>
  );
}
