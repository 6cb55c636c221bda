/** Any of a few, as large ruled rows. */
import styles from './Choice.module.css';
import { type ChoiceOption, ChoiceRow } from './Choice.tsx';
import { FieldGroup, type FieldProps } from './Field.tsx';

export interface ChecklistProps<V extends string> extends FieldProps {
  readonly options: readonly ChoiceOption<V>[];
  readonly value: readonly V[];
  /** The ticked values, in the order of the options. */
  readonly onChange: (value: readonly V[]) => void;
}

export function Checklist<V extends string>(props: ChecklistProps<V>) {
  const { name, options, value, onChange } = props;
  const toggled = (changed: V): readonly V[] =>
    options.map((option) => option.value).filter((each) => (each === changed) !== value.includes(each));
  return (
    <FieldGroup {...props}>
      <div className={styles.rows}>
        {options.map((option) => (
          <ChoiceRow
            key={option.value}
            kind="checkbox"
            name={name}
            option={option}
            checked={value.includes(option.value)}
            onChange={() => onChange(toggled(option.value))}
          />
        ))}
      </div>
    </FieldGroup>
  );
}
