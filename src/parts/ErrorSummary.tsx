/**
 * Says at the top of the page what stands in the way. Takes the focus when it appears, links to each field by its own words, and
 * puts "Error: " before the title of the window, so that it is heard, seen and found.
 */
import { useEffect, useId, useRef } from 'react';
import styles from './ErrorSummary.module.css';
import { usePartsWords } from './language.ts';

export interface FieldError {
  /** The `name` of the field, or null when the reason belongs to no field. */
  readonly field: string | null;
  readonly text: string;
}

export interface ErrorSummaryProps {
  readonly errors: readonly FieldError[];
  readonly heading?: string;
}

/** The text of a field's own error, for its `error` property. */
export const errorOf = (errors: readonly FieldError[], field: string): string | undefined =>
  errors.find((error) => error.field === field)?.text;

function focusField(name: string): void {
  const target = document.getElementById(name);
  const control = target?.matches('input, select, textarea, button')
    ? target
    : target?.querySelector('input, select, textarea');
  if (!(control instanceof HTMLElement)) return;
  (control.closest('fieldset') ?? control).scrollIntoView({ block: 'start' });
  control.focus({ preventScroll: true });
}

export function ErrorSummary({ errors, heading }: ErrorSummaryProps) {
  const words = usePartsWords();
  const box = useRef<HTMLDivElement>(null);
  const id = useId();
  const shown = errors.length > 0;
  const text = errors.map((error) => error.text).join('\n');
  useEffect(() => {
    if (shown && !document.title.startsWith(words.errorTitle)) document.title = words.errorTitle + document.title;
    return () => {
      if (document.title.startsWith(words.errorTitle)) document.title = document.title.slice(words.errorTitle.length);
    };
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: the focus moves when what is said changes
  useEffect(() => {
    if (shown) box.current?.focus();
  }, [shown, text]);
  if (!shown) return null;
  return (
    <div className={styles.box} role="alert" aria-labelledby={id} tabIndex={-1} ref={box}>
      <h2 id={id}>{heading ?? words.errorHeading}</h2>
      <ul className={styles.list}>
        {errors.map(({ field, text }) => (
          <li key={`${field} ${text}`}>{field === null ? text : <FieldLink field={field} text={text} />}</li>
        ))}
      </ul>
    </div>
  );
}

function FieldLink({ field, text }: { readonly field: string; readonly text: string }) {
  return (
    <a
      href={`#${field}`}
      onClick={(event) => {
        // The part of the address after # is the route: a jump inside the page must not change it.
        event.preventDefault();
        focusField(field);
      }}
    >
      {text}
    </a>
  );
}
