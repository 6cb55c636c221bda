/** The lines for a time typed afterwards: time, day at the site, from what and by whom. Never a correction: a normal entry. */
import { en as words } from '#words/moment.ts';
import { Choice } from './Choice.tsx';
import { DateField } from './DateField.tsx';
import { errorOf, type FieldError } from './ErrorSummary.tsx';
import { comesTwice, type MomentDraft, type MomentPlace } from './parseMoment.ts';
import { TextField } from './TextField.tsx';
import { TimeField } from './TimeField.tsx';

export interface MomentFieldsProps {
  /** Fields are called `<name>-time` and so on. */
  readonly name: string;
  readonly value: MomentDraft;
  readonly onChange: (draft: MomentDraft) => void;
  readonly place: MomentPlace;
  readonly errors: readonly FieldError[];
  readonly timeLabel?: string | undefined;
  /** A correction has its reason instead. */
  readonly withoutFrom?: boolean | undefined;
}

export function MomentFields({ name, value, onChange, place, errors, timeLabel, withoutFrom }: MomentFieldsProps) {
  return (
    <>
      <TimeField
        name={`${name}-time`}
        label={timeLabel ?? words.time}
        value={value.time}
        onChange={(time) => onChange({ ...value, time, which: null })}
        error={errorOf(errors, `${name}-time`)}
      />
      <DateField
        name={`${name}-day`}
        label={words.day}
        value={value.day}
        today={place.today}
        onChange={(day) => onChange({ ...value, day, which: null })}
        error={errorOf(errors, `${name}-day`)}
      />
      {comesTwice(value, place) && (
        <Choice
          name={`${name}-which`}
          label={words.twice(value.time)}
          options={[
            { value: 'first', label: words.first },
            { value: 'second', label: words.second },
          ]}
          value={value.which}
          onChange={(which) => onChange({ ...value, which })}
          error={errorOf(errors, `${name}-which`)}
        />
      )}
      {!withoutFrom && (
        <TextField
          name={`${name}-from`}
          label={words.from}
          hint={words.fromHint}
          value={value.from}
          onChange={(from) => onChange({ ...value, from })}
          error={errorOf(errors, `${name}-from`)}
        />
      )}
    </>
  );
}
