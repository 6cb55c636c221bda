/** People who are written down for the first time, of this firm or of another that works beside it. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import { newId } from '#store/device.ts';
import { en } from '#words/roster.ts';
import type { AddedPerson } from './rosterDraft.ts';

const words = en.person;

export interface AddPeopleProps {
  readonly people: readonly AddedPerson[];
  readonly onChange: (people: readonly AddedPerson[]) => void;
  readonly errors: readonly FieldError[];
}

export function AddPeople({ people, onChange, errors }: AddPeopleProps) {
  const blank = (): AddedPerson => ({ id: newId(), name: '', employer: '', identifier: '', language: 'en' });
  return (
    <>
      {people.map((person, at) => (
        <PersonLines
          key={person.id}
          heading={words.heading(at + 1)}
          person={person}
          onChange={(changed) => onChange(people.map((each) => (each.id === changed.id ? changed : each)))}
          onRemove={() => onChange(people.filter(({ id }) => id !== person.id))}
          errors={errors}
        />
      ))}
      <div>
        <QuietAction onClick={() => onChange([...people, blank()])}>{words.add}</QuietAction>
      </div>
    </>
  );
}

interface PersonLinesProps {
  readonly heading: string;
  readonly person: AddedPerson;
  readonly onChange: (person: AddedPerson) => void;
  readonly onRemove: () => void;
  readonly errors: readonly FieldError[];
}

function PersonLines({ heading, person, onChange, onRemove, errors }: PersonLinesProps) {
  const line = (key: 'name' | 'employer' | 'identifier', label: string, hint?: string) => (
    <TextField
      name={`${person.id}-${key}`}
      label={label}
      hint={hint}
      value={person[key]}
      onChange={(text) => onChange({ ...person, [key]: text })}
      error={errorOf(errors, `${person.id}-${key}`)}
    />
  );
  return (
    <fieldset aria-label={heading}>
      <h2>{heading}</h2>
      {line('name', words.name)}
      {line('employer', words.employer, words.employerHint)}
      {line('identifier', words.identifier, words.identifierHint)}
      <Choice
        name={`${person.id}-language`}
        label={words.language}
        options={(['en', 'es'] as const).map((code) => ({ value: code, label: words.languages[code] }))}
        value={person.language}
        onChange={(language) => onChange({ ...person, language })}
      />
      <div>
        <QuietAction onClick={onRemove}>{words.remove}</QuietAction>
      </div>
    </fieldset>
  );
}
