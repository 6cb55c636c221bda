/** Somebody who is written down for the first time, of this firm or of another that works beside it. */
import { en } from '#words/roster.ts';
import { Choice } from './Choice.tsx';
import { errorOf, type FieldError } from './ErrorSummary.tsx';
import type { FieldReader } from './fieldReader.ts';
import { TextField } from './TextField.tsx';

const words = en.person;

export interface PersonText {
  readonly name: string;
  readonly employer: string;
  readonly identifier: string;
  readonly language: 'en' | 'es';
}
export const emptyPerson: PersonText = { name: '', employer: '', identifier: '', language: 'en' };

export interface PersonFieldsProps {
  /** Fields are called `<name>-name` and so on. */
  readonly name: string;
  readonly value: PersonText;
  readonly onChange: (text: PersonText) => void;
  readonly errors: readonly FieldError[];
}

export function PersonFields({ name, value, onChange, errors }: PersonFieldsProps) {
  const line = (key: 'name' | 'employer' | 'identifier', label: string, hint?: string) => (
    <TextField
      name={`${name}-${key}`}
      label={label}
      hint={hint}
      value={value[key]}
      onChange={(text) => onChange({ ...value, [key]: text })}
      error={errorOf(errors, `${name}-${key}`)}
    />
  );
  return (
    <>
      {line('name', words.name)}
      {line('employer', words.employer, words.employerHint)}
      {line('identifier', words.identifier, words.identifierHint)}
      <Choice
        name={`${name}-language`}
        label={words.language}
        options={(['en', 'es'] as const).map((code) => ({ value: code, label: words.languages[code] }))}
        value={value.language}
        onChange={(language) => onChange({ ...value, language })}
      />
    </>
  );
}

/** The body of a new person without an id; null when the name is missing. */
export function readPerson(read: FieldReader, name: string, text: PersonText) {
  const optional = { optional: true } as const;
  const named = read.text(`${name}-name`, words.name, text.name);
  const employer = read.text(`${name}-employer`, words.employer, text.employer, optional);
  const identifier = read.text(`${name}-identifier`, words.identifier, text.identifier, optional);
  return named === null ? null : { name: named, identifier, language: text.language, employer };
}
