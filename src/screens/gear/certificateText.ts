/** A newer certificate as typed, and reading it. The next one is due twelve months later unless another day is written. */
import { addMonths } from '#core/calendar.ts';
import type { FieldReader } from '#parts/fieldReader.ts';
import { emptyMeter, type MeterText, readCalibrationAir, readPairs } from '#parts/meterText.ts';
import { parseDay } from '#parts/parseDay.ts';
import type { MeterRecord } from '#records/book.ts';
import type { FactBody } from '#records/fact.ts';
import { en } from '#words/gearScreen.ts';

const words = en.certificate;

export interface CertificateText {
  readonly on: string;
  readonly due: string;
  /** The day was changed by hand: it no longer follows the date of the certificate. */
  readonly dueTyped: boolean;
  readonly by: string;
  /** Air and lines, in the fields that a new meter has too. */
  readonly lines: MeterText;
}

export const emptyCertificate = ({ meterKind }: MeterRecord): CertificateText => ({
  on: '',
  due: '',
  dueTyped: false,
  by: '',
  lines: { ...emptyMeter, meterKind },
});

/** Common practice (a year), no source: put in for the person, who may write another day. */
const usualMonths = 12;

/** The day that stands in the field before anybody changed it: as it is typed, or '' while the date cannot be read. */
export function usualDue(on: string, today: string): string {
  const parsed = parseDay(on, today);
  return parsed.kind === 'value' ? addMonths(parsed.value, usualMonths) : '';
}

export const dueOf = ({ dueTyped, due, on }: CertificateText, today: string): string =>
  dueTyped ? due : usualDue(on, today);

/** null, with a sentence at each field, when something stands in the way. */
export function readCertificate(
  read: FieldReader,
  text: CertificateText,
  meter: MeterRecord,
  today: string,
): FactBody<'certificateEntered.v1'> | null {
  const certificateOn = read.day('certificate-on', words.on, text.on, today);
  const dueOn = read.day('certificate-due', words.dueOn, dueOf(text, today), today, { optional: true });
  const by = read.text('certificate-by', words.who, text.by, { optional: true });
  const isTube = meter.meterKind === 'rotameter';
  const air = isTube
    ? readCalibrationAir(read, text.lines)
    : { calibrationTemperatureC: null, calibrationPressureKPa: null };
  const pairs = readPairs(read, text.lines.pairs);
  if (certificateOn !== null && certificateOn > today) read.add('certificate-on', words.future);
  if (certificateOn !== null && dueOn !== null && dueOn <= certificateOn) read.add('certificate-due', words.dueBefore);
  const certificates = meter.certificates ?? [];
  const days = [meter.certificateOn, ...certificates.map((one) => one.certificateOn)];
  if (certificateOn !== null && days.includes(certificateOn)) read.add('certificate-on', words.same);
  if (certificateOn === null || read.errors.length > 0) return null;
  return { meterId: meter.id, certificateOn, dueOn, by, ...air, pairs };
}
