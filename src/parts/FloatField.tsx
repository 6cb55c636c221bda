/** Lowest and highest that a bouncing float was seen at, side by side: one reading. */
import type { Unit } from '#core/units.ts';
import styles from './Field.module.css';
import { describedBy, FieldGroup, type FieldProps } from './Field.tsx';
import { usePartsWords } from './language.ts';
import { labelWithUnit } from './QuantityField.tsx';

export interface FloatReading {
  readonly low: string;
  readonly high: string;
}

export interface FloatFieldProps extends Omit<FieldProps, 'label'> {
  readonly label: string;
  readonly unit: Unit;
  readonly value: FloatReading;
  readonly onChange: (reading: FloatReading) => void;
  /** Other words over the two: what a certificate calls read and true. */
  readonly lowLabel?: string | undefined;
  readonly highLabel?: string | undefined;
}

export function FloatField(props: FloatFieldProps) {
  const { name, label, unit, value, onChange } = props;
  const words = usePartsWords();
  const withHint = { ...props, label: labelWithUnit(label, unit), hint: props.hint ?? words.floatHint };
  const end = (side: 'low' | 'high', text: string) => (
    <div>
      <label className={styles.pairLabel} htmlFor={`${name}-${side}`}>
        {text}
      </label>
      <input
        id={`${name}-${side}`}
        name={`${name}-${side}`}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        spellCheck={false}
        className={`${styles.input} ${styles.number}`}
        value={value[side]}
        aria-invalid={props.error === undefined ? undefined : true}
        aria-describedby={describedBy(withHint)}
        onChange={(event) => onChange({ ...value, [side]: event.target.value })}
      />
    </div>
  );
  return (
    <FieldGroup {...withHint}>
      <div className={styles.pair}>
        {end('low', props.lowLabel ?? words.floatLow)}
        {end('high', props.highLabel ?? words.floatHigh)}
      </div>
    </FieldGroup>
  );
}
