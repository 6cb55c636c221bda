/** What is presumed for tasks until they are measured, and what must be worn meanwhile (29 CFR 1926.62(d)(2)). */
import type { Source } from '#core/formula.ts';
import type { Reason } from './reason.ts';

export interface PresumptionFinding {
  readonly tierId: string | null;
  /** Presumed exposure, µg/m³: above this. */
  readonly presumedAboveUgPerM3: number | null;
  /** and up to this; null where the rule states no upper end. */
  readonly presumedUpToUgPerM3: number | null;
  /** Smallest assigned protection factor of the respirator until measured. */
  readonly assignedProtectionFactorCount: number | null;
  readonly respiratorIds: readonly string[];
  readonly paragraph: string | null;
  readonly source: Source | null;
  /** Tasks whose mapping to the rule's list is open: the higher tier is shown. */
  readonly openTaskIds: readonly string[];
  readonly reasons: readonly Reason[];
}

/** `paintLead` as noted on the day; not known counts as lead present. */
export function findPresumption(
  _taskIds: readonly string[],
  _workOn: string,
  _stateCode: string,
  _paintLead: 'tested' | 'presumed' | 'notKnown',
): PresumptionFinding {
  throw new Error('being written');
}
