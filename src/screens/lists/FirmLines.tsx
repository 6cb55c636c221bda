/** The lines of a person, a job classification and a laboratory. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en as gear } from '#words/gear.ts';
import type { PersonText } from './firmEntries.ts';
import type { LinesProps } from './registers.ts';

export function PersonLines({ value, onChange, errors }: LinesProps<PersonText>) {
  return (
    <>
      <TextField
        name="person-name"
        label={gear.person.name}
        value={value.name}
        onChange={(name) => onChange({ ...value, name })}
        error={errorOf(errors, 'person-name')}
      />
      <TextField
        name="person-identifier"
        label={gear.person.identifier}
        hint={gear.person.identifierHint}
        value={value.identifier}
        onChange={(identifier) => onChange({ ...value, identifier })}
        error={errorOf(errors, 'person-identifier')}
      />
      <Choice
        name="person-language"
        label={gear.person.language}
        options={[
          { value: 'en', label: gear.person.languages.en },
          { value: 'es', label: gear.person.languages.es },
        ]}
        value={value.language}
        onChange={(language) => onChange({ ...value, language })}
      />
      <TextField
        name="person-employer"
        label={gear.person.otherEmployer}
        value={value.employer}
        onChange={(employer) => onChange({ ...value, employer })}
        error={errorOf(errors, 'person-employer')}
      />
    </>
  );
}

export function JobLines({ value, onChange, errors }: LinesProps<{ readonly name: string }>) {
  return (
    <TextField
      name="job-name"
      label={gear.job.name}
      value={value.name}
      onChange={(name) => onChange({ name })}
      error={errorOf(errors, 'job-name')}
    />
  );
}
