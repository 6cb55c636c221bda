/**
 * A number with its unit, kept as the text that was typed. Its unit stands in the label (it is read out) and again behind the field.
 * `parseQuantity` reads it when the main action is taken.
 */
import type { Unit } from '#core/units.ts';
import styles from './Field.module.css';
import { describedBy, Field, type FieldProps } from './Field.tsx';

export interface QuantityFieldProps extends Omit<FieldProps, 'label'> {
  readonly label: string;
  readonly unit: Unit;
  readonly value: string;
  readonly onChange: (text: string) => void;
  /** Whole numbers bring the keyboard without a decimal mark; below zero needs the full one. */
  readonly kind?: 'decimal' | 'whole' | 'signed' | undefined;
}

/** 'Flow, L/min': what the field is called, on the page and in errors. */
export const labelWithUnit = (label: string, unit: Unit): string => (unit === '' ? label : `${label}, ${unit}`);

const inputModeByKind = { decimal: 'decimal', whole: 'numeric', signed: 'text' } as const;

export function QuantityField(props: QuantityFieldProps) {
  const { name, unit, value, onChange, error, kind = 'decimal' } = props;
  return (
    <Field {...props} label={labelWithUnit(props.label, unit)}>
      <div className={styles.withUnit}>
        <input
          id={name}
          name={name}
          type="text"
          inputMode={inputModeByKind[kind]}
          autoComplete="off"
          spellCheck={false}
          className={`${styles.input} ${styles.number} ${styles.short}`}
          value={value}
          aria-invalid={error === undefined ? undefined : true}
          aria-describedby={describedBy(props)}
          onChange={(event) => onChange(event.target.value)}
        />
        {unit !== '' && (
          <span className={styles.unit} aria-hidden="true">
            {unit}
          </span>
        )}
      </div>
    </Field>
  );
}
