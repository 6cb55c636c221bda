/** A calendar day as typed text: 2026-11-25, 11/25/2026, today, yesterday. What was understood is said under it, with the weekday. */
import { useContext } from 'react';
import { formatDay } from '#words/quantity.ts';
import styles from './Field.module.css';
import { describedBy, Field, type FieldProps } from './Field.tsx';
import { LanguageContext, usePartsWords } from './language.ts';
import { parseDay } from './parseDay.ts';

export interface DateFieldProps extends FieldProps {
  readonly value: string;
  readonly onChange: (text: string) => void;
  /** The day at the site, handed in: nothing here reads the clock. */
  readonly today: string;
}

export function DateField(props: DateFieldProps) {
  const { name, value, onChange, today, error } = props;
  const words = usePartsWords();
  const language = useContext(LanguageContext);
  const parsed = parseDay(value, today);
  const withHint = { ...props, hint: props.hint ?? words.dateHint };
  return (
    <Field {...withHint}>
      <input
        id={name}
        name={name}
        type="text"
        autoComplete="off"
        spellCheck={false}
        className={`${styles.input} ${styles.short}`}
        value={value}
        aria-invalid={error === undefined ? undefined : true}
        aria-describedby={describedBy(withHint)}
        onChange={(event) => onChange(event.target.value)}
      />
      <output className={styles.readBack} htmlFor={name}>
        {parsed.kind === 'value' ? formatDay(parsed.value, language, 'weekday') : ''}
      </output>
    </Field>
  );
}
