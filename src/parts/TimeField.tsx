/** A time of day as typed text: 07:12, 712, 7:12 am. What was understood is said under it. */
import { useContext } from 'react';
import { formatClock } from '#words/quantity.ts';
import styles from './Field.module.css';
import { describedBy, Field, type FieldProps } from './Field.tsx';
import { LanguageContext, usePartsWords } from './language.ts';
import { parseClock } from './parseClock.ts';

export interface TimeFieldProps extends FieldProps {
  readonly value: string;
  readonly onChange: (text: string) => void;
}

export function TimeField(props: TimeFieldProps) {
  const { name, value, onChange, error } = props;
  const words = usePartsWords();
  const language = useContext(LanguageContext);
  const parsed = parseClock(value);
  const withHint = { ...props, hint: props.hint ?? words.timeHint };
  return (
    <Field {...withHint}>
      <input
        id={name}
        name={name}
        type="text"
        autoComplete="off"
        spellCheck={false}
        className={`${styles.input} ${styles.number} ${styles.short}`}
        value={value}
        aria-invalid={error === undefined ? undefined : true}
        aria-describedby={describedBy(withHint)}
        onChange={(event) => onChange(event.target.value)}
      />
      <output className={styles.readBack} htmlFor={name}>
        {parsed.kind === 'value' ? formatClock(parsed.value, language) : ''}
      </output>
    </Field>
  );
}
