/** A worker who is written down for the first time: name, the firm's own number, and the language the worker reads. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en as words } from '#words/gear.ts';
import type { WorkerText } from './fitDraft.ts';

export interface WorkerLinesProps {
  readonly value: WorkerText;
  readonly onChange: (text: WorkerText) => void;
  readonly errors: readonly FieldError[];
}

export function WorkerLines({ value, onChange, errors }: WorkerLinesProps) {
  return (
    <>
      <TextField
        name="worker-name"
        label={words.person.name}
        value={value.name}
        onChange={(name) => onChange({ ...value, name })}
        error={errorOf(errors, 'worker-name')}
      />
      <Choice
        name="worker-language"
        label={words.person.language}
        options={(['en', 'es'] as const).map((code) => ({ value: code, label: words.person.languages[code] }))}
        value={value.language}
        onChange={(language) => onChange({ ...value, language })}
      />
      <TextField
        name="worker-identifier"
        label={words.person.identifier}
        hint={words.person.identifierHint}
        value={value.identifier}
        onChange={(identifier) => onChange({ ...value, identifier })}
        error={errorOf(errors, 'worker-identifier')}
      />
    </>
  );
}
