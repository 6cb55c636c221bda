/** What a correction of plans, gear and money must keep. What is said anew when it changes is not corrected; what was decided stays. */
import type { Fact, FactBody, FactKind } from '../fact.ts';
import type { Ask } from './ask.ts';
import { certificateFault, windowFault } from './gear.ts';
import { brokenAmounts } from './money.ts';
import { refuseLaterDay } from './roster.ts';

/** Said anew instead, so that all of it fits together again. */
const saidAnew: readonly FactKind[] = ['measurementPlanned.v1', 'dayPrepared.v1', 'gearHeld.v1', 'gearDoubtSettled.v1'];
/** Papers and decisions: the numbers are printed, and what was struck was struck. */
const fixedKinds: readonly FactKind[] = ['labelsMade.v1', 'planDropped.v1', 'spendingStruck.v1'];
/** Where another value would make it an entry about something else. */
const fixedPlaces: Partial<Record<FactKind, RegExp>> = { 'gearDoubted.v1': /^\/(gear|gearId|doubtId)$/ };
const pastDays: Partial<Record<FactKind, string>> = {
  'certificateEntered.v1': '/certificateOn',
  'gearDoubted.v1': '/foundOn',
  'moneySpent.v1': '/spentOn',
};

function refuseOrder({ refuse }: Ask, { kind }: Fact, changed: unknown): void {
  const fault =
    kind === 'certificateEntered.v1'
      ? certificateFault(changed as FactBody<'certificateEntered.v1'>)
      : kind === 'gearDoubted.v1'
        ? windowFault(changed as FactBody<'gearDoubted.v1'>)
        : null;
  if (fault) refuse(fault, ['body/new']);
}

/** `changed`: the body as the correction leaves it. */
export function refuseOnSeason(ask: Ask<'valueCorrected.v1'>, fact: Fact, changed: unknown): void {
  const { path, new: value } = ask.fact.body;
  const { kind } = fact;
  if (saidAnew.includes(kind)) ask.refuse('sayAnew', ['body/path'], { path });
  if (fixedKinds.includes(kind) || fixedPlaces[kind]?.test(path)) ask.refuse('fieldFixed', ['body/path'], { path });
  if (pastDays[kind] === path && typeof value === 'string') refuseLaterDay(ask as Ask, 'body/new', value);
  if ((kind === 'pricesStated.v1' || kind === 'moneySpent.v1') && brokenAmounts(changed as object).length > 0)
    ask.refuse('notWholeCents', ['body/new']);
  refuseOrder(ask as Ask, fact, changed);
}
