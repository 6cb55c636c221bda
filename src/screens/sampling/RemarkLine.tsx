/** A remark on what was found, which may stay empty: the same on every deed that has one. */
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import type { FieldReader } from '#parts/fieldReader.ts';
import { TextField } from '#parts/TextField.tsx';

export const readRemark = (read: FieldReader, label: string, text: string): string | null =>
  read.text('remark', label, text, { optional: true, most: 2000 });

export interface RemarkLineProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly errors: readonly FieldError[];
}

export function RemarkLine({ label, value, onChange, errors }: RemarkLineProps) {
  return (
    <TextField
      name="remark"
      label={label}
      rows={2}
      value={value}
      onChange={onChange}
      error={errorOf(errors, 'remark')}
    />
  );
}
