/**
 * Reads the mass that a laboratory's report gives for one cassette: '12.4', or '<2.5' where it found less than its reporting limit.
 * Micrograms only. "ND" and the like carry no number, so they are asked about; nothing is ever read as zero.
 */
import { type ParsedQuantity, parseQuantity, type QuantityRange } from './parseQuantity.ts';

export type ParsedMass =
  | { readonly kind: 'measured'; readonly massUg: number }
  | { readonly kind: 'lessThan'; readonly reportingLimitUg: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'noNumber'; readonly found: string }
  /** A laboratory finds no exact nothing: its report says less than what. */
  | { readonly kind: 'zero' }
  | Extract<ParsedQuantity, { readonly kind: 'error' }>;

const lessThan = /^(?:<\s*=?|≤|less than|below|menos de)\s*/i;
/** What reports write where nothing was found: without a limit it says nothing that a figure could stand on. */
const notFound =
  /^(?:n\.?\s?d\.?|not detected|none detected|non-?detect|n\/d|bdl|bql|brl|b?lod|b?loq|<\s*(?:rl|lod|loq|mdl))\.?$/i;

/** Far above any filter of ours: a slip of the keys, or another unit. */
const range: QuantityRange = { most: 100_000 };

/** Text as keyed in to micrograms, a "less than", nothing, or the reason why not. Never throws. */
export function parseMass(text: string): ParsedMass {
  const typed = text.normalize('NFKC').trim();
  if (typed === '') return { kind: 'empty' };
  if (notFound.test(typed)) return { kind: 'noNumber', found: typed };
  const sign = lessThan.exec(typed);
  const parsed = parseQuantity(sign ? typed.slice(sign[0].length) : typed, 'µg', range);
  if (parsed.kind === 'error') return parsed;
  if (parsed.kind === 'empty') return { kind: 'noNumber', found: typed };
  if (parsed.value === 0) return { kind: 'zero' };
  return sign ? { kind: 'lessThan', reportingLimitUg: parsed.value } : { kind: 'measured', massUg: parsed.value };
}
