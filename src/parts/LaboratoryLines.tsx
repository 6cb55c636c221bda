/** A laboratory that is written down for the first time: its name, the address on the box, its accreditation. */
import { en } from '#words/lists.ts';
import { errorOf, type FieldError } from './ErrorSummary.tsx';
import type { FieldReader } from './fieldReader.ts';
import { TextField } from './TextField.tsx';

const words = en.laboratory;

export interface LaboratoryText {
  readonly name: string;
  readonly address: string;
  readonly accreditation: string;
}
export const emptyLaboratory: LaboratoryText = { name: '', address: '', accreditation: '' };

const optional = { optional: true } as const;
const addressMost = 2000;

export function readLaboratory(read: FieldReader, text: LaboratoryText) {
  const name = read.text('laboratory-name', words.name, text.name);
  const address = read.text('laboratory-address', words.address, text.address, { ...optional, most: addressMost });
  const accreditation = read.text('laboratory-accreditation', words.accreditation, text.accreditation, optional);
  return name === null ? null : { name, address, accreditation };
}

export interface LaboratoryLinesProps {
  readonly value: LaboratoryText;
  readonly onChange: (text: LaboratoryText) => void;
  readonly errors: readonly FieldError[];
}

export function LaboratoryLines({ value, onChange, errors }: LaboratoryLinesProps) {
  return (
    <>
      <TextField
        name="laboratory-name"
        label={words.name}
        value={value.name}
        onChange={(name) => onChange({ ...value, name })}
        error={errorOf(errors, 'laboratory-name')}
      />
      <TextField
        name="laboratory-address"
        label={words.address}
        rows={3}
        value={value.address}
        onChange={(address) => onChange({ ...value, address })}
        error={errorOf(errors, 'laboratory-address')}
      />
      <TextField
        name="laboratory-accreditation"
        label={words.accreditation}
        hint={words.accreditationHint}
        value={value.accreditation}
        onChange={(accreditation) => onChange({ ...value, accreditation })}
        error={errorOf(errors, 'laboratory-accreditation')}
      />
    </>
  );
}
