/** Says that it is written down, once it is; heard without taking the focus. */
import { usePartsWords } from './language.ts';
import styles from './Saved.module.css';

export interface SavedProps {
  /** 'saved' only after the store said so. */
  readonly state: 'idle' | 'saving' | 'saved' | 'notSaved';
  /** Local time as printed, '07:12'. */
  readonly at?: string | undefined;
  readonly id?: string | undefined;
}

export function Saved({ state, at, id }: SavedProps) {
  const words = usePartsWords();
  const textByState = {
    idle: '',
    saving: words.saving,
    saved: at === undefined ? words.saved : words.savedAt(at),
    notSaved: words.notSaved,
  };
  return (
    <p role="status" id={id} className={state === 'notSaved' ? styles.loud : styles.quiet}>
      {textByState[state]}
    </p>
  );
}
