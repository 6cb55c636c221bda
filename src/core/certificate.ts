/** A meter certificate's pairs of read and true flow, applied linearly between two of them and refused outside. */
import { lowerOf, upperOf } from './estimate.ts';
import { formula, type Term, type Working } from './formula.ts';

/** True flow between two pairs of the certificate, r1 < r2. L/min. */
export const certificateFlow = formula({
  symbol: 'Q',
  name: 'certificateFlow',
  unit: 'L/min',
  inputs: {
    r: { name: 'flowRead', unit: 'L/min' },
    r1: { name: 'pairBelowRead', unit: 'L/min' },
    q1: { name: 'pairBelowTrue', unit: 'L/min' },
    r2: { name: 'pairAboveRead', unit: 'L/min' },
    q2: { name: 'pairAboveTrue', unit: 'L/min' },
  },
  expression: 'Q = q1 + (r − r1) × (q2 − q1) / (r2 − r1)',
  source: { title: 'Straight line between two points of the certificate', mark: 'DERIVED' },
  compute: ({ r, r1, q1, r2, q2 }) => (r === r2 ? q2 : q1 + ((r - r1) * (q2 - q1)) / (r2 - r1)),
});

/** One pair of the certificate. */
export interface CertificatePair {
  readonly read: Term;
  readonly true: Term;
}

export type CertificateAnswer =
  | { readonly kind: 'applied'; readonly flow: Working }
  | { readonly kind: 'outside'; readonly lowestLPerMin: number; readonly highestLPerMin: number }
  | { readonly kind: 'pairsUnusable' };

const exactRead = (pair: CertificatePair): number => lowerOf(pair.read.estimate);
const exactTrue = (pair: CertificatePair): number => lowerOf(pair.true.estimate);

/**
 * True flow of a reading by the certificate. Two pairs at the same reading, or a true flow that does not rise with the reading, make
 * the certificate unusable; a single pair cannot carry a line.
 */
export function flowByCertificate(read: Term, pairs: readonly CertificatePair[]): CertificateAnswer {
  const sorted = [...pairs].sort((a, b) => exactRead(a) - exactRead(b));
  const [first] = sorted;
  const last = sorted.at(-1);
  if (!first || !last || sorted.length < 2) return { kind: 'pairsUnusable' };
  for (const [index, pair] of sorted.entries()) {
    const next = sorted[index + 1];
    if (next && !(exactRead(pair) < exactRead(next) && exactTrue(pair) < exactTrue(next)))
      return { kind: 'pairsUnusable' };
  }
  const [low, high] = [lowerOf(read.estimate), upperOf(read.estimate)];
  if (low < exactRead(first) || high > exactRead(last)) {
    return { kind: 'outside', lowestLPerMin: exactRead(first), highestLPerMin: exactRead(last) };
  }
  const index = sorted.findIndex((pair, at) => at > 0 && low <= exactRead(pair));
  const [below, above] = [sorted[index - 1], sorted[index]];
  if (!below || !above) throw new Error('a reading inside the certificate has no pair around it');
  return {
    kind: 'applied',
    flow: certificateFlow.of({ r: read, r1: below.read, q1: below.true, r2: above.read, q2: above.true }),
  };
}
