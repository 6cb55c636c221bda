/** One of a few, as large ruled rows: the whole row is the target. */
import styles from './Choice.module.css';
import { FieldGroup, type FieldProps } from './Field.tsx';

export interface ChoiceOption<V extends string = string> {
  readonly value: V;
  readonly label: string;
  readonly hint?: string | undefined;
}

export interface ChoiceProps<V extends string> extends FieldProps {
  readonly options: readonly ChoiceOption<V>[];
  readonly value: V | null;
  readonly onChange: (value: V) => void;
}

export function Choice<V extends string>(props: ChoiceProps<V>) {
  const { name, options, value, onChange } = props;
  return (
    <FieldGroup {...props}>
      <div className={styles.rows}>
        {options.map((option) => (
          <ChoiceRow
            key={option.value}
            kind="radio"
            name={name}
            option={option}
            checked={option.value === value}
            onChange={() => onChange(option.value)}
          />
        ))}
      </div>
    </FieldGroup>
  );
}

interface ChoiceRowProps {
  readonly kind: 'radio' | 'checkbox';
  readonly name: string;
  readonly option: ChoiceOption;
  readonly checked: boolean;
  readonly onChange: () => void;
}

/** One ruled row with its own control. */
export function ChoiceRow({ kind, name, option, checked, onChange }: ChoiceRowProps) {
  const id = `${name}-${option.value}`;
  return (
    <div className={styles.row}>
      <input
        className={styles.control}
        id={id}
        type={kind}
        name={name}
        value={option.value}
        checked={checked}
        aria-describedby={option.hint === undefined ? undefined : `${id}-hint`}
        onChange={onChange}
      />
      <label className={styles.label} htmlFor={id}>
        {option.label}
      </label>
      {option.hint !== undefined && (
        <span className={styles.hint} id={`${id}-hint`}>
          {option.hint}
        </span>
      )}
    </div>
  );
}
