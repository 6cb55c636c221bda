/** One of many: the phone's own picker, which also answers to the first letters typed. */
import styles from './Choice.module.css';
import { describedBy, Field, type FieldProps } from './Field.tsx';
import { usePartsWords } from './language.ts';

export interface SelectOption {
  readonly value: string;
  readonly label: string;
}

export interface SelectFieldProps extends FieldProps {
  readonly options: readonly SelectOption[];
  /** '' while nothing is chosen. */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

export function SelectField(props: SelectFieldProps) {
  const { name, options, value, onChange, error } = props;
  const words = usePartsWords();
  return (
    <Field {...props}>
      <select
        className={styles.select}
        id={name}
        name={name}
        value={value}
        aria-invalid={error === undefined ? undefined : true}
        aria-describedby={describedBy(props)}
        onChange={(event) => onChange(event.target.value)}
      >
        <option value="" disabled>
          {words.chooseOne}
        </option>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </Field>
  );
}
