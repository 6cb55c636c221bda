/** A flow meter as typed, and reading it. Temperature and pressure of the calibration are only asked of a float in a tube. */
import { en as words } from '#words/gear.ts';
import type { FloatReading } from './FloatField.tsx';
import type { FieldReader } from './fieldReader.ts';

export type MeterKind = keyof typeof words.meter.kinds;

export interface MeterText {
  readonly meterKind: MeterKind | null;
  readonly serial: string;
  readonly certificateOn: string;
  readonly dueOn: string;
  readonly temperature: string;
  readonly pressure: string;
  /** `low` is what was read, `high` the true flow. */
  readonly pairs: readonly FloatReading[];
}

export const emptyMeter: MeterText = {
  meterKind: null,
  serial: '',
  certificateOn: '',
  dueOn: '',
  temperature: '',
  pressure: '',
  pairs: [],
};

/** What a thermometer and a barometer can show where people work; wider than the weather. */
export const temperatureRange = { least: -40, most: 60, negative: true } as const;
export const pressureRange = { least: 30, most: 120 } as const;

/** Lines of a certificate; one of which only half is written is an error. */
export function readPairs(read: FieldReader, pairs: readonly FloatReading[]) {
  return pairs.flatMap(({ low, high }, i) => {
    if (low.trim() === '' && high.trim() === '') return [];
    const name = `meter-pair-${i}`;
    if (low.trim() === '' || high.trim() === '') {
      read.add(name, words.meter.pairMissing(i + 1));
      return [];
    }
    const readLPerMin = read.quantity(name, words.meter.pair(i + 1), 'L/min', low, { least: 0.001, most: 100 });
    const trueLPerMin = read.quantity(name, words.meter.pair(i + 1), 'L/min', high, { least: 0.001, most: 100 });
    return readLPerMin === null || trueLPerMin === null ? [] : [{ readLPerMin, trueLPerMin }];
  });
}

/** Air in which a float in a tube was calibrated; either may stay blank. */
export function readCalibrationAir(read: FieldReader, text: Pick<MeterText, 'temperature' | 'pressure'>) {
  const { calibrationTemperature, calibrationPressure } = words.meter;
  const optional = { optional: true } as const;
  return {
    calibrationTemperatureC: read.quantity('meter-temperature', calibrationTemperature, '°C', text.temperature, {
      ...temperatureRange,
      ...optional,
    }),
    calibrationPressureKPa: read.quantity('meter-pressure', calibrationPressure, 'kPa', text.pressure, {
      ...pressureRange,
      ...optional,
    }),
  };
}

export function readMeter(read: FieldReader, text: MeterText, today: string) {
  const before = read.errors.length;
  const meterKind = read.chosen('meter-kind', words.meter.kind, text.meterKind);
  const serial = read.text('meter-serial', words.meter.serial, text.serial);
  const optional = { optional: true } as const;
  const certificateOn = read.day('meter-certificate', words.meter.certificateOn, text.certificateOn, today, {
    ...optional,
    past: true,
  });
  const dueOn = read.day('meter-due', words.meter.dueOn, text.dueOn, today, optional);
  const isTube = meterKind === 'rotameter';
  const { calibrationTemperatureC, calibrationPressureKPa } = isTube
    ? readCalibrationAir(read, text)
    : { calibrationTemperatureC: null, calibrationPressureKPa: null };
  const pairs = isTube ? readPairs(read, text.pairs) : [];
  if (read.errors.length > before || meterKind === null || serial === null) return null;
  return { meterKind, serial, certificateOn, dueOn, calibrationTemperatureC, calibrationPressureKPa, pairs };
}
