/** A lot of cassettes that is opened for the first time. The usual filter for lead stands there already. */
import { en as words } from '#words/gear.ts';
import { DateField } from './DateField.tsx';
import { errorOf, type FieldError } from './ErrorSummary.tsx';
import type { FieldReader } from './fieldReader.ts';
import { TextField } from './TextField.tsx';

export interface LotText {
  readonly lotNumber: string;
  readonly media: string;
  readonly expiresOn: string;
}
export const emptyLot: LotText = { lotNumber: '', media: words.lot.mediaUsual, expiresOn: '' };

export function readLot(read: FieldReader, text: LotText, today: string) {
  const lotNumber = read.text('lot-number', words.lot.lotNumber, text.lotNumber);
  const media = read.text('lot-media', words.lot.media, text.media);
  const expiresOn = read.day('lot-expires', words.lot.expiresOn, text.expiresOn, today, { optional: true });
  return lotNumber === null || media === null ? null : { lotNumber, media, expiresOn };
}

export interface LotLinesProps {
  readonly value: LotText;
  readonly onChange: (text: LotText) => void;
  readonly errors: readonly FieldError[];
  readonly today: string;
}

export function LotLines({ value, onChange, errors, today }: LotLinesProps) {
  return (
    <>
      <TextField
        name="lot-number"
        label={words.lot.lotNumber}
        kind="code"
        value={value.lotNumber}
        onChange={(lotNumber) => onChange({ ...value, lotNumber })}
        error={errorOf(errors, 'lot-number')}
      />
      <TextField
        name="lot-media"
        label={words.lot.media}
        value={value.media}
        onChange={(media) => onChange({ ...value, media })}
        error={errorOf(errors, 'lot-media')}
      />
      <DateField
        name="lot-expires"
        label={words.lot.expiresOn}
        value={value.expiresOn}
        today={today}
        onChange={(expiresOn) => onChange({ ...value, expiresOn })}
        error={errorOf(errors, 'lot-expires')}
      />
    </>
  );
}
