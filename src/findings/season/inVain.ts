/** Measured, and it proves nothing: then the work of measuring is still to do, for the list of what to measure next and for plans alike. */
import { provesNothingLow } from '../duties/list/dutyTriggersMeasuring.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import { blocking } from '../reason.ts';

const irregular: ReadonlySet<string> = new Set(['notRegular', 'regularNotSaid']);

const isHigh = ({ band }: Measurement): boolean => band === 'actionLevelToPel' || band === 'abovePel';

/** Where the rule is held, what the duty to measure again says; elsewhere whatever stands against a figure that is not high. */
export function isInVain(one: Measurement): boolean {
  if (one.resultOwed) return false;
  if (one.limits.heldComplete) return provesNothingLow(one);
  if (isHigh(one)) return false;
  return (
    one.twa8UgPerM3 === null || blocking(one.blocks).length > 0 || one.blocks.some(({ key }) => irregular.has(key))
  );
}

/** Every cassette of the day is void, and no pump runs. */
export const isVoid = ({ finding }: Measurement): boolean =>
  finding !== null &&
  finding.samples.length > 0 &&
  finding.samples.every(({ quality, run }) => quality === 'void' && !run.running);

/** Why it proves nothing, in one word; its reasons tell more. */
export function inVainWhy(one: Measurement): 'void' | 'irregularDay' | 'doubtful' {
  if (isVoid(one)) return 'void';
  return one.blocks.some(({ key }) => key === 'notRegular') ? 'irregularDay' : 'doubtful';
}
