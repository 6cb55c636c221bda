/** A file from the device. Nothing is read before the main action is taken. */
import { describedBy, Field, type FieldProps } from './Field.tsx';
import styles from './FileField.module.css';

export interface FileFieldProps extends FieldProps {
  readonly onChange: (file: File | null) => void;
  /** Endings offered first: '.zip,.txt'. */
  readonly accept?: string | undefined;
}

export function FileField(props: FileFieldProps) {
  const { name, onChange, accept, error } = props;
  return (
    <Field {...props}>
      <input
        id={name}
        name={name}
        type="file"
        accept={accept}
        className={styles.file}
        aria-invalid={error === undefined ? undefined : true}
        aria-describedby={describedBy(props)}
        onChange={(event) => onChange(event.target.files?.[0] ?? null)}
      />
    </Field>
  );
}
