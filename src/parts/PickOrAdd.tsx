/**
 * Choose one from a register, or write a new one down where it is first needed: the last row opens the lines of a new entry in place.
 * Up to seven stand as rows; a longer register becomes the phone's own picker.
 */
import { type ReactNode, useContext } from 'react';
import styles from './Choice.module.css';
import { ChoiceRow } from './Choice.tsx';
import { describedBy, Field, FieldGroup, type FieldProps } from './Field.tsx';
import { LanguageContext, usePartsWords } from './language.ts';

/** The value that means: a new entry, being written below. Never an id of a record. */
export const addingNew = '+';

export interface PickOption {
  readonly id: string;
  readonly label: string;
  readonly detail?: string | undefined;
}

export interface PickOrAddProps extends FieldProps {
  readonly options: readonly PickOption[];
  /** An option's id, `addingNew`, or null when nothing is chosen. */
  readonly value: string | null;
  readonly onChange: (id: string) => void;
  /** 'Add a pump': the last row. */
  readonly addText: string;
  /** The lines of the new entry, shown while `value` is `addingNew`. */
  readonly children: ReactNode;
}

const rowsAtMost = 7;

export function PickOrAdd(props: PickOrAddProps) {
  const { options, value, addText, children } = props;
  const chosen = options.length === 0 ? (value ?? addingNew) : value;
  return (
    <div>
      {options.length > rowsAtMost ? <PickFromLong {...props} /> : <PickFromRows {...props} value={chosen} />}
      {chosen === addingNew && (
        <fieldset className={styles.adding} aria-label={addText}>
          {children}
        </fieldset>
      )}
    </div>
  );
}

function PickFromRows(props: PickOrAddProps) {
  const { name, options, value, onChange, addText } = props;
  return (
    <FieldGroup {...props}>
      <div className={styles.rows}>
        {options.map(({ id, label, detail }) => (
          <ChoiceRow
            key={id}
            kind="radio"
            name={name}
            option={{ value: id, label, hint: detail }}
            checked={value === id}
            onChange={() => onChange(id)}
          />
        ))}
        <ChoiceRow
          kind="radio"
          name={name}
          option={{ value: addingNew, label: addText }}
          checked={value === addingNew}
          onChange={() => onChange(addingNew)}
        />
      </div>
    </FieldGroup>
  );
}

function PickFromLong(props: PickOrAddProps) {
  const { name, options, value, onChange, addText, error } = props;
  const words = usePartsWords();
  const language = useContext(LanguageContext);
  return (
    <Field {...props}>
      <select
        className={styles.select}
        id={name}
        name={name}
        lang={language}
        value={value ?? ''}
        aria-invalid={error === undefined ? undefined : true}
        aria-describedby={describedBy(props)}
        onChange={(event) => onChange(event.target.value)}
      >
        <option value="" disabled>
          {words.chooseOne}
        </option>
        {options.map(({ id, label, detail }) => (
          <option key={id} value={id}>
            {detail === undefined ? label : `${label}, ${detail}`}
          </option>
        ))}
        <option value={addingNew}>{addText}</option>
      </select>
    </Field>
  );
}
