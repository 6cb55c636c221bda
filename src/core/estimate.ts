/**
 * What is known of a quantity. A result below the reporting limit is `between` 0 and that limit, from mass to verdict; a day with
 * unknown minutes, or a sample without a flow afterwards, is `atLeast`. Nothing unknown is ever written as 0, NaN or null.
 */
export type Estimate =
  | { readonly kind: 'exact'; readonly value: number }
  | { readonly kind: 'between'; readonly lower: number; readonly upper: number }
  | { readonly kind: 'atLeast'; readonly lower: number };

export const exactly = (value: number): Estimate => ({ kind: 'exact', value });
/** Throws (a bug) when the ends cross. */
export function between(lower: number, upper: number): Estimate {
  if (!(lower <= upper)) throw new Error(`bounds cross, ${lower} and ${upper}`);
  return { kind: 'between', lower, upper };
}
export const atLeast = (lower: number): Estimate => ({ kind: 'atLeast', lower });
/** A laboratory's "less than": somewhere from nothing to the reporting limit. */
export const lessThan = (reportingLimit: number): Estimate => between(0, reportingLimit);
export const lowerOf = (e: Estimate): number => (e.kind === 'exact' ? e.value : e.lower);
/** Infinity when nothing bounds it from above. */
export const upperOf = (e: Estimate): number =>
  e.kind === 'exact' ? e.value : e.kind === 'between' ? e.upper : Number.POSITIVE_INFINITY;
