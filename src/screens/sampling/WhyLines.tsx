/** Why the worker went: one of the usual reasons, or another in words. The fact keeps the reason as it was read on the page. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import type { FieldReader } from '#parts/fieldReader.ts';
import { TextField } from '#parts/TextField.tsx';

export interface WhyDraft<R extends string> {
  readonly reason: R | 'other' | null;
  readonly other: string;
}

export interface WhyWords<R extends string> {
  readonly reason: string;
  readonly reasons: Readonly<Record<R | 'other', string>>;
  readonly other: string;
}

export function readWhy<R extends string>(read: FieldReader, words: WhyWords<R>, draft: WhyDraft<R>): string {
  const chosen = read.chosen('reason', words.reason, draft.reason);
  if (chosen === 'other') return read.text('other', words.other, draft.other) ?? '';
  return words.reasons[chosen ?? 'other'];
}

export interface WhyLinesProps<R extends string> {
  readonly words: WhyWords<R>;
  readonly reasons: readonly (R | 'other')[];
  readonly value: WhyDraft<R>;
  readonly onChange: (change: Partial<WhyDraft<R>>) => void;
  readonly errors: readonly FieldError[];
}

export function WhyLines<R extends string>({ words, reasons, value, onChange, errors }: WhyLinesProps<R>) {
  return (
    <>
      <Choice
        name="reason"
        label={words.reason}
        options={reasons.map((each) => ({ value: each, label: words.reasons[each] }))}
        value={value.reason}
        onChange={(reason) => onChange({ reason })}
        error={errorOf(errors, 'reason')}
      />
      {value.reason === 'other' && (
        <TextField
          name="other"
          label={words.other}
          value={value.other}
          onChange={(other) => onChange({ other })}
          error={errorOf(errors, 'other')}
        />
      )}
    </>
  );
}
