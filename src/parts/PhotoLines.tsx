/** Pictures of a record, small, each with when and by whom. A tap shows one large where it stands. Where the bytes are not here, it says so. */
import { useState } from 'react';
import { en as words } from '#words/photos.ts';
import styles from './PhotoLines.module.css';

export interface ShownPhoto {
  readonly key: string;
  readonly of: keyof typeof words.alt;
  /** When, and by whom, as shown. */
  readonly taken: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** null: not on this device. undefined: it is being looked for. */
  readonly url: string | null | undefined;
}

export function PhotoLines({ photos }: { readonly photos: readonly ShownPhoto[] }) {
  if (photos.length === 0) return null;
  return (
    <ul className={styles.photos}>
      {photos.map((photo) => (
        <OnePhoto key={photo.key} photo={photo} />
      ))}
    </ul>
  );
}

function OnePhoto({ photo }: { readonly photo: ShownPhoto }) {
  const { of, taken, widthPx, heightPx, url } = photo;
  const [large, setLarge] = useState(false);
  return (
    <li className={large ? styles.large : styles.small}>
      {typeof url === 'string' && (
        <button
          type="button"
          className={styles.button}
          aria-expanded={large}
          title={large ? words.smaller : words.larger}
          onClick={() => setLarge(!large)}
        >
          <img
            className={styles.picture}
            src={url}
            width={widthPx}
            height={heightPx}
            alt={words.altAt(words.alt[of], taken)}
          />
        </button>
      )}
      <p className={styles.taken}>
        {url === null && <span className={styles.missing}>{`${words.alt[of]}. ${words.notHere}`}</span>}
        {taken}
      </p>
    </li>
  );
}
