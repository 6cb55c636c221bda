/** What is asked once for the whole day: one piece more, where, in which state, on which day. */
import { Choice } from '#parts/Choice.tsx';
import { DateField } from '#parts/DateField.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { states } from '#reference/states.ts';
import { en } from '#words/dayAhead.ts';
import { en as screen } from '#words/dayAheadScreen.ts';
import { type DayAheadText, stateNotKnown } from './dayAheadDraft.ts';

const words = en.fields;

export interface AroundProps {
  readonly text: DayAheadText;
  readonly today: string;
  readonly onChange: (part: Partial<DayAheadText>) => void;
  readonly onAdd: (() => void) | undefined;
  readonly errors: readonly FieldError[];
}

export const Around = ({ text, today, onChange, onAdd, errors }: AroundProps) => (
  <>
    {onAdd !== undefined && (
      <div>
        <QuietAction onClick={onAdd}>{words.add}</QuietAction>
      </div>
    )}
    <p>{en.restOfDay}</p>
    <Choice
      name="setting"
      label={words.setting}
      options={(['both', 'indoors', 'outdoors'] as const).map((value) => ({ value, label: words.settings[value] }))}
      value={text.setting}
      onChange={(setting) => onChange({ setting })}
    />
    <SelectField
      name="state"
      label={words.state}
      options={[
        { value: stateNotKnown, label: screen.stateNotKnown },
        ...states().map(({ code, name }) => ({ value: code, label: name })),
      ]}
      value={text.state}
      onChange={(state) => onChange({ state })}
    />
    <DateField
      name="day"
      label={words.day}
      hint={screen.dayHint}
      today={today}
      value={text.day}
      onChange={(day) => onChange({ day })}
      error={errorOf(errors, 'day')}
    />
  </>
);
