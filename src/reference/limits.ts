/** Which limits hold on a day in a state, whose rule governs there, and whether that rule is held complete. */

import acgihTlv from '#shared/limits/beside/acgih-tlv.json';
import auWes from '#shared/limits/beside/au-wes.json';
import eu2024 from '#shared/limits/beside/eu-2024-869.json';
import nioshRel from '#shared/limits/beside/niosh-rel.json';
import ukClaw from '#shared/limits/beside/uk-claw.json';
import caGeneralIndustry from '#shared/limits/beside/us-ca-gi-lead.json';
import fedGeneralIndustry from '#shared/limits/beside/us-fed-gi-lead.json';
import miConstruction from '#shared/limits/beside/us-mi-constr-lead.json';
import waConstruction from '#shared/limits/beside/us-wa-constr-lead.json';
import caConstructionLead from '#shared/limits/us-ca-constr-lead.json';
import fedConstructionLead from '#shared/limits/us-fed-constr-lead.json';
import { type BesideSetFile, besideSetFile } from './besideSet.ts';
import { holdsOn } from './dated.ts';
import { type LimitSet, type LimitSetFile, limitSetFile, type SetLimit, setOn } from './limitSet.ts';
import { type ReadSource, readOnce } from './source.ts';
import { stateByCode } from './states.ts';

export { type LimitSet, type SetLimit, setOn } from './limitSet.ts';

/**
 * Whose rule governs. `federal`: the federal rule as held. `federalForPrivateFirms`: the state's plan is for state and local
 * government workers only. `statePlan`: the state runs its own plan and its own rule is not held; the figures shown are federal.
 * `statePlanPartlyHeld`: the state's limits are held, the rest of its rule is not. `unknownState`: not a state we know.
 * `beforeHeldText`: the day lies before the first text held; its figures are shown, and nothing is promised.
 */
export type Governs =
  | 'federal'
  | 'federalForPrivateFirms'
  | 'statePlan'
  | 'statePlanPartlyHeld'
  | 'unknownState'
  | 'beforeHeldText';

export interface LimitsHere {
  readonly set: LimitSet;
  /** False: figures only, no list of duties, and the words say whose rule governs. */
  readonly heldComplete: boolean;
  readonly governs: Governs;
  readonly source: ReadSource;
}

const federal = readOnce(limitSetFile, fedConstructionLead);
const california = readOnce(limitSetFile, caConstructionLead);
const files = (): readonly LimitSetFile[] => [federal(), california()];

/** Every limit set held, by its file. */
export const allLimitSets = (): readonly LimitSetFile[] => files();

const beside = [
  fedGeneralIndustry,
  caGeneralIndustry,
  waConstruction,
  miConstruction,
  nioshRel,
  acgihTlv,
  eu2024,
  ukClaw,
  auWes,
].map((file) => readOnce(besideSetFile, file));

/** Limits that may be shown beside the rule and judge nothing: other rules, advice. */
export const besideSets = (): readonly BesideSetFile[] => beside.map((read) => read());

const held = new Map<string, LimitsHere>();

/** The limits on a day (2026-11-25) in a state (two letters). A day before a set's first date gets its first values, not held. */
export function limitSetOn(on: string, stateCode: string): LimitsHere {
  const key = `${stateCode} ${on}`;
  const found = held.get(key);
  if (found) return found;
  // days of one firm are few; a long soak of generated days must not grow this for ever
  if (held.size > 5000) held.clear();
  const here = freshLimitSetOn(on, stateCode);
  held.set(key, here);
  return here;
}

function freshLimitSetOn(on: string, stateCode: string): LimitsHere {
  const state = stateByCode(stateCode);
  const file = files().find((one) => one.id === state?.limitSetId) ?? federal();
  const set = setOn(on, file);
  const { governs, source } = governing(file, state);
  if (!holdsOn(on, file.effective)) return { set, heldComplete: false, governs: 'beforeHeldText', source };
  return { set, heldComplete: file.heldComplete && !['statePlan', 'unknownState'].includes(governs), governs, source };
}

function governing(
  file: LimitSetFile,
  state: ReturnType<typeof stateByCode>,
): { governs: Governs; source: ReadSource } {
  if (!state) return { governs: 'unknownState', source: file.pel.twaMin.source };
  if (state.plan === 'none') return { governs: 'federal', source: state.source };
  if (state.plan === 'publicOnly') return { governs: 'federalForPrivateFirms', source: state.source };
  return { governs: state.limitSetId ? 'statePlanPartlyHeld' : 'statePlan', source: state.source };
}

/** The two limits of a set, ready for a comparison. */
export const limitsOf = (set: LimitSet): { readonly actionLevel: SetLimit; readonly pel: SetLimit } => ({
  actionLevel: set.actionLevel,
  pel: set.pel,
});
