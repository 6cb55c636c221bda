/** A flow meter that is written down for the first time. A float in a tube also tells what it was calibrated at and its certificate's lines. */
import { en as words } from '#words/gear.ts';
import { Choice } from './Choice.tsx';
import { DateField } from './DateField.tsx';
import { errorOf, type FieldError } from './ErrorSummary.tsx';
import { FloatField } from './FloatField.tsx';
import type { MeterKind, MeterText } from './meterText.ts';
import { QuantityField } from './QuantityField.tsx';
import { TextField } from './TextField.tsx';

export interface MeterLinesProps {
  readonly value: MeterText;
  readonly onChange: (text: MeterText) => void;
  readonly errors: readonly FieldError[];
  readonly today: string;
}

const kinds: readonly MeterKind[] = ['soapFilm', 'dryPiston', 'rotameter', 'other'];

export function MeterLines({ value, onChange, errors, today }: MeterLinesProps) {
  return (
    <>
      <Choice
        name="meter-kind"
        label={words.meter.kind}
        options={kinds.map((kind) => ({ value: kind, label: words.meter.kinds[kind] }))}
        value={value.meterKind}
        onChange={(meterKind) => onChange({ ...value, meterKind })}
        error={errorOf(errors, 'meter-kind')}
      />
      <TextField
        name="meter-serial"
        label={words.meter.serial}
        kind="code"
        value={value.serial}
        onChange={(serial) => onChange({ ...value, serial })}
        error={errorOf(errors, 'meter-serial')}
      />
      <DateField
        name="meter-certificate"
        label={words.meter.certificateOn}
        hint={words.meter.certificateHint}
        value={value.certificateOn}
        today={today}
        onChange={(certificateOn) => onChange({ ...value, certificateOn })}
        error={errorOf(errors, 'meter-certificate')}
      />
      <DateField
        name="meter-due"
        label={words.meter.dueOn}
        value={value.dueOn}
        today={today}
        onChange={(dueOn) => onChange({ ...value, dueOn })}
        error={errorOf(errors, 'meter-due')}
      />
      {value.meterKind === 'rotameter' && <TubeLines value={value} onChange={onChange} errors={errors} />}
    </>
  );
}

/** What a certificate says of a float in a tube: at what it was calibrated, and its lines of read and true flow. */
export function TubeLines(props: Omit<MeterLinesProps, 'today'>) {
  const { value, onChange, errors } = props;
  return (
    <>
      <QuantityField
        name="meter-temperature"
        label={words.meter.calibrationTemperature}
        unit="°C"
        kind="signed"
        value={value.temperature}
        onChange={(temperature) => onChange({ ...value, temperature })}
        error={errorOf(errors, 'meter-temperature')}
      />
      <QuantityField
        name="meter-pressure"
        label={words.meter.calibrationPressure}
        unit="kPa"
        value={value.pressure}
        onChange={(pressure) => onChange({ ...value, pressure })}
        error={errorOf(errors, 'meter-pressure')}
      />
      <PairLines {...props} />
    </>
  );
}

/** Read and true flow, line by line, up to six. */
export function PairLines({ value, onChange, errors }: Omit<MeterLinesProps, 'today'>) {
  const pairs = [...value.pairs, { low: '', high: '' }].slice(0, 6);
  return (
    <>
      {pairs.map((pair, i) => (
        <FloatField
          // biome-ignore lint/suspicious/noArrayIndexKey: the lines of a certificate have no other name
          key={i}
          name={`meter-pair-${i}`}
          label={words.meter.pair(i + 1)}
          unit="L/min"
          hint={i === 0 ? words.meter.pairsHint : ''}
          lowLabel={words.meter.pairRead}
          highLabel={words.meter.pairTrue}
          value={pair}
          onChange={(changed) =>
            onChange({
              ...value,
              pairs: pairs
                .map((each, at) => (at === i ? changed : each))
                .filter((each, at) => at === i || each.low !== '' || each.high !== ''),
            })
          }
          error={errorOf(errors, `meter-pair-${i}`)}
        />
      ))}
    </>
  );
}
