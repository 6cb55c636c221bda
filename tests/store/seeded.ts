/** Random numbers from a seed, for books that must come out the same every time. */

const alphabet = '0123456789abcdefghjkmnpqrstvwxyz';

export interface Seeded {
  /** A whole number from `low` to `high`, both included. */
  readonly between: (low: number, high: number) => number;
  readonly pick: <T>(choices: readonly T[]) => T;
  /** Twelve characters: a record id or a writer. */
  readonly id: () => string;
}

/** Mulberry32: small, well spread, and good enough to fill a book. */
export function seededRandom(seed: number): Seeded {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const between = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  return {
    between,
    pick: (choices) => choices[between(0, choices.length - 1)] as (typeof choices)[number],
    id: () => Array.from({ length: 12 }, () => alphabet[between(0, 31)]).join(''),
  };
}
