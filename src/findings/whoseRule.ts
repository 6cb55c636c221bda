/** Whose rule a worker's day is held against: by the states of the sites worked at. Doubt about the state relaxes nothing. */
import type { Book, SampleRecord } from '#records/book.ts';
import { type LimitsHere, limitSetOn } from '#reference/limits.ts';
import { type Reason, reason } from './reason.ts';

export interface WhoseRule {
  readonly stateCode: string | null;
  readonly limits: LimitsHere;
  readonly reasons: readonly Reason[];
}

/** The states of the samples' sites; null stands for a site that is not in the book. Without samples, of the only site there is. */
function statesOf(samples: readonly SampleRecord[], book: Book): (string | null)[] {
  if (samples.length === 0 && book.sites.size === 1) return [...book.sites.values()].map(({ stateCode }) => stateCode);
  if (samples.length === 0) return [null];
  const codes = new Set<string | null>();
  for (const { siteId } of samples) codes.add(book.sites.get(siteId)?.stateCode ?? null);
  return [...codes];
}

interface Here {
  readonly stateCode: string | null;
  readonly limits: LimitsHere;
}

/** The lower action level first; of two alike the rule that is not held complete, so that no duties are listed for it. */
const byCare = (a: Here, b: Here): number =>
  a.limits.set.actionLevel.value - b.limits.set.actionLevel.value ||
  Number(a.limits.heldComplete) - Number(b.limits.heldComplete) ||
  ((a.stateCode ?? '') < (b.stateCode ?? '') ? -1 : 1);

export function whoseRule(samples: readonly SampleRecord[], workOn: string, book: Book): WhoseRule {
  const rules = statesOf(samples, book).map(
    (stateCode): Here => ({ stateCode, limits: limitSetOn(workOn, stateCode ?? '') }),
  );
  const [judging, ...others] = rules.sort(byCare);
  if (!judging) throw new Error('no rule for this day');
  const { stateCode, limits } = judging;
  const heldComplete = rules.every((one) => one.limits.heldComplete);
  const reasons: Reason[] = [];
  if (rules.some((one) => one.limits.governs === 'unknownState')) reasons.push(reason('stateNotKnown'));
  if (others.some((one) => one.limits.set.id !== limits.set.id)) reasons.push(reason('statesDiffer'));
  if (!heldComplete) reasons.push(reason('stateRuleNotHeld', [], { stateCode: stateCode ?? '' }));
  return { stateCode, limits: heldComplete ? limits : { ...limits, heldComplete }, reasons };
}
