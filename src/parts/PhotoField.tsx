/**
 * A picture taken with the phone's camera, or chosen where there is none. Until it is handed in it is shown small as it will be kept, and
 * can be left out. The whole button is the browser's own control: thumb, keyboard and screen reader all find it.
 */
import { useEffect, useRef } from 'react';
import { en as words } from '#words/photos.ts';
import { describedBy } from './Field.tsx';
import { usePartsWords } from './language.ts';
import styles from './PhotoField.module.css';
import { QuietAction } from './QuietAction.tsx';

export interface PhotoFieldProps {
  readonly name: string;
  /** What the button says: 'Take a photo of the reading'. */
  readonly label: string;
  readonly hint?: string | undefined;
  readonly state: 'none' | 'preparing' | 'ready' | 'refused';
  readonly why: keyof typeof words.refused | null;
  readonly url: string | null;
  readonly onChoose: (file: Blob) => void;
  readonly onRemove: () => void;
}

export function PhotoField({ name, label, hint = words.hint, state, why, url, onChoose, onRemove }: PhotoFieldProps) {
  const input = useRef<HTMLInputElement>(null);
  const hadPicture = useRef(false);
  // The button that was tapped is gone: whoever uses the keyboard goes on at the one that comes in its place.
  useEffect(() => {
    if (hadPicture.current && state === 'none' && document.activeElement === document.body) input.current?.focus();
    hadPicture.current = state === 'ready';
  }, [state]);
  const parts = usePartsWords();
  const error = why === null ? undefined : words.refused[why];
  if (state === 'ready' && url !== null)
    return (
      <div className={styles.ready}>
        <img className={styles.small} src={url} alt={words.preview} />
        <QuietAction onClick={onRemove}>{words.remove}</QuietAction>
      </div>
    );
  return (
    <div className={error === undefined ? undefined : styles.withError}>
      <div className={styles.button}>
        <label htmlFor={name}>{label}</label>
        <input
          ref={input}
          id={name}
          name={name}
          type="file"
          accept="image/*"
          capture="environment"
          className={styles.input}
          aria-invalid={error === undefined ? undefined : true}
          aria-describedby={describedBy({ name, label, hint, error })}
          onChange={(event) => {
            const file = event.target.files?.[0];
            if (file !== undefined) onChoose(file);
            // The same file can be chosen again after it was left out.
            event.target.value = '';
          }}
        />
      </div>
      <p className={styles.hint} id={`${name}-hint`}>
        {hint}
      </p>
      {error !== undefined && (
        <p className={styles.error} id={`${name}-error`}>
          {parts.errorPrefix}
          {error}
        </p>
      )}
      <p role="status">{state === 'preparing' ? words.preparing : ''}</p>
    </div>
  );
}
