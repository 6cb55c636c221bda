/**
 * Rounding for display, called by words and documents alone. A figure shown never contradicts its verdict: digits are added until
 * the figure shown lies on the same side of every limit as the figure itself.
 */
import { sideOf } from './comparison.ts';

const mostDecimals = 15;

function decimalsFor(value: number, significantDigits: number): number {
  const whole = value === 0 ? 1 : Math.floor(Math.log10(Math.abs(value))) + 1;
  return Math.min(Math.max(significantDigits - whole, 0), mostDecimals);
}

/** Bounds are rounded outwards, so that what is shown never claims more than is known. */
export type RoundingDirection = 'nearest' | 'down' | 'up';

const stepOf = {
  nearest: (scaled: number): number => Math.sign(scaled) * Math.round(Math.abs(scaled)),
  down: Math.floor,
  up: Math.ceil,
};

/** Decimals as by hand: 2.675 is the decimal that was typed, not the binary number just under it, and becomes 2.68. */
function toDecimals(value: number, decimals: number, direction: RoundingDirection): string {
  const scaled = Number(
    `${Number(value.toPrecision(15)).toExponential()}`.replace(/e(.*)$/, (_, e) => `e${+e + decimals}`),
  );
  if (Math.abs(scaled) > 1e15) return value.toFixed(decimals);
  const steps = stepOf[direction](Number(scaled.toPrecision(14)));
  return Number(`${steps}e-${decimals}`).toFixed(decimals);
}

/**
 * The value in plain decimals with a point, to `significantDigits`, or more where a limit asks for them. Whole digits are never
 * dropped (1234 to two digits is 1234). Words turn the point into the reader's own sign.
 */
export function displayRounded(
  value: number,
  limits: readonly number[],
  significantDigits: number,
  direction: RoundingDirection = 'nearest',
): string {
  if (!Number.isFinite(value)) throw new Error(`no figure to show: ${value}`);
  const sides = limits.map((limit) => sideOf(value, limit));
  for (let decimals = decimalsFor(value, significantDigits); decimals <= mostDecimals; decimals += 1) {
    const shown = toDecimals(value, decimals, direction);
    // shown figures are read by eye: there, at the limit means the limit's own digits
    if (limits.every((limit, index) => Math.sign(Number(shown) - limit) === sides[index]))
      return withoutMinusZero(shown);
    const at = limits.find((_, index) => sides[index] === 0);
    if (at !== undefined) return at.toFixed(decimalsFor(at, significantDigits));
  }
  return String(value);
}

const withoutMinusZero = (shown: string): string => (Number(shown) === 0 ? shown.replace('-', '') : shown);
