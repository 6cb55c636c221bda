/** A pump that is written down for the first time: the number on it, and its make if somebody likes. */
import { en as words } from '#words/gear.ts';
import { errorOf, type FieldError } from './ErrorSummary.tsx';
import type { FieldReader } from './fieldReader.ts';
import { TextField } from './TextField.tsx';

export interface PumpText {
  readonly serial: string;
  readonly model: string;
}
export const emptyPump: PumpText = { serial: '', model: '' };

export function readPump(read: FieldReader, text: PumpText) {
  const serial = read.text('pump-serial', words.pump.serial, text.serial);
  const model = read.text('pump-model', words.pump.model, text.model, { optional: true });
  return serial === null ? null : { serial, model };
}

export interface PumpLinesProps {
  readonly value: PumpText;
  readonly onChange: (text: PumpText) => void;
  readonly errors: readonly FieldError[];
}

export function PumpLines({ value, onChange, errors }: PumpLinesProps) {
  return (
    <>
      <TextField
        name="pump-serial"
        label={words.pump.serial}
        hint={words.pump.serialHint}
        kind="code"
        value={value.serial}
        onChange={(serial) => onChange({ ...value, serial })}
        error={errorOf(errors, 'pump-serial')}
      />
      <TextField
        name="pump-model"
        label={words.pump.model}
        value={value.model}
        onChange={(model) => onChange({ ...value, model })}
        error={errorOf(errors, 'pump-model')}
      />
    </>
  );
}
