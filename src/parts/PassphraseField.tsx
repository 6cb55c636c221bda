/** A passphrase: pasted, filled in by a password manager or typed, and shown when asked, so that nothing has to be remembered blind. */
import { useState } from 'react';
import styles from './Field.module.css';
import { describedBy, Field, type FieldProps } from './Field.tsx';
import { usePartsWords } from './language.ts';
import { QuietAction } from './QuietAction.tsx';

export interface PassphraseFieldProps extends FieldProps {
  readonly value: string;
  readonly onChange: (text: string) => void;
  /** `new`: a password manager may offer one and keep it. */
  readonly use: 'new' | 'current';
}

export function PassphraseField(props: PassphraseFieldProps) {
  const { name, value, onChange, use, error } = props;
  const words = usePartsWords();
  const [shown, setShown] = useState(false);
  return (
    <Field {...props}>
      <div className={styles.withShow}>
        <input
          id={name}
          name={name}
          type={shown ? 'text' : 'password'}
          value={value}
          autoComplete={use === 'new' ? 'new-password' : 'current-password'}
          autoCapitalize="off"
          spellCheck={false}
          className={styles.input}
          aria-invalid={error === undefined ? undefined : true}
          aria-describedby={describedBy(props)}
          onChange={(event) => onChange(event.target.value)}
        />
        <QuietAction onClick={() => setShown(!shown)}>{shown ? words.hide : words.show}</QuietAction>
      </div>
    </Field>
  );
}
