/** A time as it stands on the paper; where the clock showed it twice that night, which of the two. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { comesTwice, type MomentPlace } from '#parts/parseMoment.ts';
import { TimeField } from '#parts/TimeField.tsx';
import { en as moment } from '#words/moment.ts';
import type { TimeText } from './keyInDraft.ts';

export interface PaperTimeProps {
  /** The fields are `<name>-time` and `<name>-which`. */
  readonly name: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly value: TimeText;
  readonly onChange: (text: TimeText) => void;
  /** The day of the form, as typed. */
  readonly day: string;
  readonly place: MomentPlace;
  readonly errors: readonly FieldError[];
}

export function PaperTime({ name, label, hint, value, onChange, day, place, errors }: PaperTimeProps) {
  return (
    <>
      <TimeField
        name={`${name}-time`}
        label={label}
        hint={hint}
        value={value.time}
        onChange={(time) => onChange({ time, which: null })}
        error={errorOf(errors, `${name}-time`)}
      />
      {comesTwice({ day, time: value.time, from: '', which: null }, place) && (
        <Choice
          name={`${name}-which`}
          label={moment.twice(value.time)}
          options={[
            { value: 'first', label: moment.first },
            { value: 'second', label: moment.second },
          ]}
          value={value.which}
          onChange={(which) => onChange({ ...value, which })}
          error={errorOf(errors, `${name}-which`)}
        />
      )}
    </>
  );
}
