/** Label above, hint under it, then the error in words, then the control. All tied together for those who listen. */
import type { ReactNode } from 'react';
import styles from './Field.module.css';
import { usePartsWords } from './language.ts';

export interface FieldProps {
  /** Also the id of the control: unique on the page, and what ErrorSummary links to. */
  readonly name: string;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly error?: string | undefined;
}

/** Ids that describe the control of this field, for aria-describedby. */
export function describedBy({ name, hint, error }: FieldProps): string | undefined {
  const ids = [hint !== undefined && `${name}-hint`, error !== undefined && `${name}-error`].filter(Boolean);
  return ids.length > 0 ? ids.join(' ') : undefined;
}

export function Field(props: FieldProps & { readonly children: ReactNode }) {
  return (
    <div className={props.error === undefined ? styles.field : styles.fieldWithError}>
      <label className={styles.label} htmlFor={props.name}>
        {props.label}
      </label>
      <FieldNotes {...props} />
      {props.children}
    </div>
  );
}

/** A field of several controls: the same, as a group with a legend. */
export function FieldGroup(props: FieldProps & { readonly children: ReactNode }) {
  return (
    <fieldset
      id={props.name}
      aria-describedby={describedBy(props)}
      className={props.error === undefined ? styles.field : styles.fieldWithError}
    >
      <legend className={styles.label}>{props.label}</legend>
      <FieldNotes {...props} />
      {props.children}
    </fieldset>
  );
}

function FieldNotes({ name, hint, error }: FieldProps) {
  const words = usePartsWords();
  return (
    <>
      {hint !== undefined && (
        <p className={styles.hint} id={`${name}-hint`}>
          {hint}
        </p>
      )}
      {error !== undefined && (
        <p className={styles.error} id={`${name}-error`}>
          <span className={styles.errorWord}>{words.errorPrefix}</span>
          {error}
        </p>
      )}
    </>
  );
}
