/** Money in whole cents: added exactly, never as binary fractions. */

/** Less than this is no cent, and would be written with an exponent of its own. */
const noCent = 1e-6;

/** Whole cents of an amount as typed: 23.1 is 2310; parts of a cent to the nearest. Throws (a bug) on what is no amount. */
export function centsOf(amountUsd: number): number {
  if (Math.abs(amountUsd) < noCent) return 0;
  const cents = Math.round(Number(`${Number(amountUsd.toPrecision(15))}e2`));
  if (!Number.isSafeInteger(cents)) throw new Error(`no amount of money: ${amountUsd}`);
  return cents;
}

export const usdOf = (cents: number): number => cents / 100;

/** Sum of amounts, exact to the cent. */
export const sumUsd = (amountsUsd: readonly number[]): number =>
  usdOf(amountsUsd.reduce((sum, one) => sum + centsOf(one), 0));

/** An amount shared among some, to the nearest cent (half a cent up). */
export const sharedUsd = (amountUsd: number, count: number): number => usdOf(Math.round(centsOf(amountUsd) / count));
