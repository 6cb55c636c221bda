/** One line of text, or several. Shows the text as typed; nothing is checked before the main action is taken. */

import styles from './Field.module.css';
import { describedBy, Field, type FieldProps } from './Field.tsx';

export interface TextFieldProps extends FieldProps {
  readonly value: string;
  readonly onChange: (text: string) => void;
  /** Widens the letters of a number or code that must be compared by eye. */
  readonly kind?: 'plain' | 'code' | 'digits' | 'passphrase' | undefined;
  readonly rows?: number | undefined;
  readonly autoComplete?: string | undefined;
  readonly lang?: string | undefined;
}

export function TextField(props: TextFieldProps) {
  const { name, value, onChange, kind = 'plain', rows = 1, error } = props;
  const shared = {
    id: name,
    name,
    value,
    autoComplete: props.autoComplete ?? 'off',
    spellCheck: kind === 'plain' && rows > 1,
    autoCapitalize: kind === 'plain' ? undefined : 'off',
    lang: props.lang,
    'aria-invalid': error === undefined ? undefined : true,
    'aria-describedby': describedBy(props),
    onChange: (event: { readonly target: { readonly value: string } }) => onChange(event.target.value),
  };
  const coded = kind === 'code' || kind === 'digits';
  return (
    <Field {...props}>
      {rows > 1 ? (
        <textarea {...shared} rows={rows} className={`${styles.input} ${styles.long}`} />
      ) : (
        <input
          {...shared}
          type={kind === 'passphrase' ? 'password' : 'text'}
          inputMode={kind === 'digits' ? 'numeric' : undefined}
          className={coded ? `${styles.input} ${styles.code}` : styles.input}
        />
      )}
    </Field>
  );
}
