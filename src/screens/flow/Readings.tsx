/** Readings of the float, as many as are read: an empty one always waits under the last, up to three without asking. */
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { FloatField, type FloatReading } from '#parts/FloatField.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { en as words } from '#words/flow.ts';

export interface ReadingsProps {
  readonly readings: readonly FloatReading[];
  readonly onChange: (readings: readonly FloatReading[]) => void;
  readonly errors: readonly FieldError[];
}

const empty: FloatReading = { low: '', high: '' };
const isEmpty = ({ low, high }: FloatReading): boolean => low === '' && high === '';
const shownUnasked = 3;
const mostReadings = 20;

export function Readings({ readings, onChange, errors }: ReadingsProps) {
  const last = readings.at(-1);
  const waits = last === undefined || (!isEmpty(last) && readings.length < shownUnasked);
  const shown = waits ? [...readings, empty] : readings;
  return (
    <>
      {shown.map((reading, i) => (
        <FloatField
          // biome-ignore lint/suspicious/noArrayIndexKey: readings have no other name than their place
          key={i}
          name={`reading-${i}`}
          label={words.reading(i + 1)}
          hint={i === 0 ? words.readingHint : ''}
          unit="L/min"
          value={reading}
          onChange={(changed) => onChange(shown.map((each, at) => (at === i ? changed : each)))}
          error={errorOf(errors, `reading-${i}`)}
        />
      ))}
      {!waits && shown.length < mostReadings && last !== undefined && !isEmpty(last) && (
        <div>
          <QuietAction onClick={() => onChange([...readings, empty])}>{words.moreReadings}</QuietAction>
        </div>
      )}
    </>
  );
}
