/** The natural logarithm of the gamma function, for counts that need not be whole. */

/**
 * Stirling's series, ln Γ(z) = ½ ln 2π + (z − ½) ln z − z + Σ B2n / (2n (2n − 1) z^(2n − 1)): read at
 * https://mathworld.wolfram.com/StirlingsSeries.html, (7) and (8), on 2026-11-25. The fractions are those of the Bernoulli numbers
 * 1/6, −1/30, 1/42, −1/30, 5/66, −691/2730, 7/6.
 */
const bernoulli: readonly number[] = [1 / 6, -1 / 30, 1 / 42, -1 / 30, 5 / 66, -691 / 2730, 7 / 6];

/** From here on seven terms leave less than one part in 10^15 (the last one is 7e-16 of 13); below it Γ(z + 1) = z Γ(z) leads up. */
const seriesFrom = 10;

/** For z above 0. Throws (a bug) elsewhere. */
export function logGamma(z: number): number {
  if (!(z > 0) || !Number.isFinite(z)) throw new Error(`no logarithm of the gamma function at ${z}`);
  let product = 1;
  let x = z;
  for (; x < seriesFrom; x += 1) product *= x;
  const series = bernoulli.reduce((sum, B, index) => {
    const twoN = 2 * (index + 1);
    return sum + B / (twoN * (twoN - 1) * x ** (twoN - 1));
  }, 0);
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(x) - x + series - Math.log(product);
}
