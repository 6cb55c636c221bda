/**
 * Reads the typed text of a form, field by field, and gathers what stands in the way as sentences that tell what to do. A field with
 * an error reads as null; the form is good when `errors` stayed empty.
 */
import type { Unit } from '#core/units.ts';
import type { PartsWords } from '#words/parts.ts';
import type { FieldError } from './ErrorSummary.tsx';
import { parseClock } from './parseClock.ts';
import { parseDay } from './parseDay.ts';
import { type ParsedQuantity, parseQuantity, type QuantityRange } from './parseQuantity.ts';

export interface Optional {
  /** May stay empty. */
  readonly optional?: boolean;
}

/** The sentence for a quantity that could not be read; null when it could. */
export function quantityError(parsed: ParsedQuantity, label: string, unit: Unit, words: PartsWords): string | null {
  if (parsed.kind !== 'error') return null;
  const { key, found, least, most } = parsed;
  const text = (bound: number | undefined): string | undefined => (bound === undefined ? undefined : String(bound));
  return words.quantity[key]({ label, unit, found, least: text(least), most: text(most) });
}

/** A reader for one attempt to save. `words` are those of the language of the page. */
export function fieldReader(words: PartsWords) {
  const errors: FieldError[] = [];
  const add = (field: string | null, text: string): null => {
    errors.push({ field, text });
    return null;
  };
  return {
    errors,
    add,
    /** A number in `unit`; null when empty (and allowed to be) or not readable. */
    quantity(field: string, label: string, unit: Unit, text: string, range: QuantityRange & Optional = {}) {
      const parsed = parseQuantity(text, unit, range);
      if (parsed.kind === 'value') return parsed.value;
      if (parsed.kind === 'empty') return range.optional ? null : add(field, words.missing(label));
      return add(field, quantityError(parsed, label, unit, words) ?? '');
    },
    /** Text without blanks around it, at most `most` characters. */
    text(field: string, label: string, text: string, { optional, most = 400 }: Optional & { most?: number } = {}) {
      const trimmed = text.trim();
      if (trimmed.length > most) return add(field, words.tooLong(label, most));
      if (trimmed !== '') return trimmed;
      return optional ? null : add(field, words.missing(label));
    },
    /** An ISO day. */
    day(field: string, label: string, text: string, today: string, options: Optional & { past?: boolean } = {}) {
      const parsed = parseDay(text, today, options.past ? { past: true } : {});
      if (parsed.kind === 'value') return parsed.value;
      if (parsed.kind === 'empty') return options.optional ? null : add(field, words.missing(label));
      return add(field, `${label}: ${words.date[parsed.key]}`);
    },
    /** A wall time such as 07:12. */
    clock(field: string, label: string, text: string) {
      const parsed = parseClock(text);
      if (parsed.kind === 'value') return parsed.value;
      return add(field, parsed.kind === 'empty' ? words.missing(label) : `${label}: ${words.time[parsed.key]}`);
    },
    /** What was chosen. */
    chosen<V>(field: string, label: string, value: V | null | undefined | ''): V | null {
      return value === null || value === undefined || value === '' ? add(field, words.choose(label)) : value;
    },
  };
}

export type FieldReader = ReturnType<typeof fieldReader>;
