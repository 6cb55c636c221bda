/** Readings of the float, as many as are read: an empty one always waits under the last, up to three without asking. And reading them. */
import { en as words } from '#words/flow.ts';
import { errorOf, type FieldError } from './ErrorSummary.tsx';
import { FloatField, type FloatReading } from './FloatField.tsx';
import type { FieldReader } from './fieldReader.ts';
import { QuietAction } from './QuietAction.tsx';

export interface FloatReadingsProps {
  /** Fields are called `<name>-0` and so on. */
  readonly name?: string | undefined;
  readonly readings: readonly FloatReading[];
  readonly onChange: (readings: readonly FloatReading[]) => void;
  readonly errors: readonly FieldError[];
}

const empty: FloatReading = { low: '', high: '' };
const isEmpty = ({ low, high }: FloatReading): boolean => low === '' && high === '';
const shownUnasked = 3;
const mostReadings = 20;

export function FloatReadings({ name = 'reading', readings, onChange, errors }: FloatReadingsProps) {
  const last = readings.at(-1);
  const waits = last === undefined || (!isEmpty(last) && readings.length < shownUnasked);
  const shown = waits ? [...readings, empty] : readings;
  return (
    <>
      {shown.map((reading, i) => (
        <FloatField
          // biome-ignore lint/suspicious/noArrayIndexKey: readings have no other name than their place
          key={i}
          name={`${name}-${i}`}
          label={words.reading(i + 1)}
          hint={i === 0 ? words.readingHint : ''}
          unit="L/min"
          value={reading}
          onChange={(changed) => onChange(shown.map((each, at) => (at === i ? changed : each)))}
          error={errorOf(errors, `${name}-${i}`)}
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

/** What a flow meter can show at all; a slip of a thousand (mL/min) is caught here, the method's range is a finding. */
const plausible = { least: 0.01, most: 50 };

export type ReadFloat = { readonly lowLPerMin: number; readonly highLPerMin: number };

/** The readings that can be read so far; errors gather in `read`. A steady float needs the first field only. */
export function readFloats(read: FieldReader, readings: readonly FloatReading[], name = 'reading'): ReadFloat[] {
  return readings.flatMap(({ low, high }, i) => {
    const field = `${name}-${i}`;
    const label = words.reading(i + 1);
    if (low.trim() === '' && high.trim() === '') return [];
    if (low.trim() === '') {
      read.add(field, words.readingHalf(i + 1));
      return [];
    }
    const before = read.errors.length;
    const lowLPerMin = read.quantity(field, label, 'L/min', low, plausible);
    const highLPerMin = high.trim() === '' ? lowLPerMin : read.quantity(field, label, 'L/min', high, plausible);
    if (read.errors.length > before || lowLPerMin === null || highLPerMin === null) return [];
    if (lowLPerMin > highLPerMin) {
      read.add(field, words.readingTurned(i + 1));
      return [];
    }
    return [{ lowLPerMin, highLPerMin }];
  });
}
