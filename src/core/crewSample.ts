/** How many of a crew to draw by lot, so that one of the most exposed is very likely among them. */
import { sideOf } from './comparison.ts';
import { formula } from './formula.ts';
import { logGamma } from './logGamma.ts';

/** The most exposed part of the crew. It need not be whole: then the gamma function stands between the whole numbers. */
export const mostExposedOfCrew = formula({
  symbol: 'N0',
  name: 'mostExposedOfCrew',
  unit: '',
  inputs: { N: { name: 'crew', unit: '' }, p: { name: 'topShare', unit: '%' } },
  increasesWith: ['N', 'p'],
  expression: 'N0 = N × p / 100',
  source: {
    title: 'NIOSH 77-173, as told in a lecture: one of the top tenth is to be among those sampled',
    url: 'https://fr.slideserve.com/roz/occupational-air-sampling-strategies-who-when-how',
    mark: 'READ-2',
  },
  compute: ({ N, p }) => (N * p) / 100,
});

/**
 * Chance that at least one of the top N0 is among n drawn from N without putting back. For whole N0 it is the hypergeometric one,
 * 1 − C(N − N0, n) / C(N, n). Holds for 0 ≤ n ≤ N and 0 < N0 ≤ N; where fewer than n lie outside the top it is certain.
 */
export const chanceOfOneMostExposed = formula({
  symbol: 'P',
  name: 'chanceOfOneMostExposed',
  unit: '%',
  inputs: {
    N: { name: 'crew', unit: '' },
    N0: { name: 'mostExposedOfCrew', unit: '' },
    n: { name: 'drawn', unit: '' },
  },
  expression: 'P = 100 × (1 − Γ(N − N0 + 1) Γ(N − n + 1) / (Γ(N − N0 − n + 1) Γ(N + 1)))',
  source: {
    title: 'The hypergeometric chance, with the gamma function for a top that is not whole',
    mark: 'DERIVED',
    note: 'The idea is that of NIOSH 77-173 (READ-2, as told in a lecture); the manual and its table were not opened',
  },
  compute: ({ N, N0, n }) => {
    const left = N - N0 - n + 1;
    if (left <= 0) return 100;
    return 100 * (1 - Math.exp(logGamma(N - N0 + 1) + logGamma(N - n + 1) - logGamma(left) - logGamma(N + 1)));
  },
});

/** The smallest number whose chance reaches `confidencePct`; everyone where no smaller number does. `crewCount` is whole. */
export function fewestToDraw(crewCount: number, topSharePct: number, confidencePct: number): number {
  const N0 = mostExposedOfCrew.compute({ N: crewCount, p: topSharePct });
  for (let n = 0; n < crewCount; n++)
    if (sideOf(chanceOfOneMostExposed.compute({ N: crewCount, N0, n }), confidencePct) >= 0) return n;
  return crewCount;
}
