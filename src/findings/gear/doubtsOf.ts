/**
 * What a doubt about a pump, a flow meter or a lot does to what rests on it. Open, or settled as staying doubtful: whatever rests on the
 * gear within the time proves nothing low; high stays high. Shown to have had no effect: told beside, and nothing more. As found: the
 * flow lies between what was read and what that makes by the factor found.
 */

import type { FactorFound } from '#core/asFound.ts';
import { addDays, dayOf } from '#core/calendar.ts';
import type { Book, FlowCheckRecord, GearBeside, GearDoubt, RecordBase, SampleRecord } from '#records/book.ts';
import type { FactBody } from '#records/fact.ts';
import { type Reason, reason } from '../reason.ts';

export type GearKind = FactBody<'gearDoubted.v1'>['gear'];
export type GearRecord = RecordBase & GearBeside & { readonly serial?: string; readonly lotNumber?: string };

/** What stands of a doubt: `open` and `staysDoubtful` prove nothing low. */
export type DoubtEffect = 'open' | 'staysDoubtful' | 'asFound' | 'noEffect';

const blank = (why: string | null): boolean => why === null || why.trim() === '';

/** A decision counts only with its reason, and one *as found* only of a flow meter and with its factor. */
export function effectOf({ gear, settled }: GearDoubt): DoubtEffect {
  if (!settled || blank(settled.why)) return 'open';
  if (settled.decision !== 'asFound') return settled.decision;
  return gear === 'meter' && settled.trueOverRead !== null ? 'asFound' : 'staysDoubtful';
}

/** Does what rests on the gear prove nothing low? */
export const isDoubted = (doubt: GearDoubt): boolean => {
  const effect = effectOf(doubt);
  return effect === 'open' || effect === 'staysDoubtful';
};

export const hasDoubts = (gear: GearBeside | null | undefined): boolean => (gear?.doubts ?? []).length > 0;

/** From the day of the work to the day on which it ended: a shift may run past midnight. */
export interface DaysOfUse {
  readonly fromOn: string;
  readonly toOn: string;
}

const spanOf = (a: string, b: string): DaysOfUse => (a <= b ? { fromOn: a, toOn: b } : { fromOn: b, toOn: a });
const localDay = (at: string, zone: string | undefined): string => (zone ? dayOf(at, zone) : at.slice(0, 10));

/** The day that a flow check is held to its flow meter's certificate on: that of the work. */
export const dayOfCheck = ({ shiftId, happened }: FlowCheckRecord, book: Book): string =>
  book.shifts.get(shiftId)?.workOn ?? happened.at.slice(0, 10);

export function daysOfCheck(check: FlowCheckRecord, book: Book): DaysOfUse {
  const zone = book.sites.get(book.shifts.get(check.shiftId)?.siteId ?? '')?.zone;
  return spanOf(dayOfCheck(check, book), localDay(check.happened.at, zone));
}

export function daysOfSample({ workOn, stopped, siteId }: SampleRecord, book: Book): DaysOfUse {
  return stopped ? spanOf(workOn, localDay(stopped.at, book.sites.get(siteId)?.zone)) : spanOf(workOn, workOn);
}

/**
 * The last day that it touches: as said. Else, where it was shown to have had no effect, the day of that decision, which cannot be older
 * than what was found. Any other decision mends nothing: it goes on, of a flow meter until the day of a certificate newer than what was
 * found, of other gear for good.
 */
function lastDayOf(doubt: GearDoubt): string | null {
  const { untilOn, settled, foundOn, renewedOn } = doubt;
  if (untilOn !== null) return untilOn;
  const effect = effectOf(doubt);
  if (effect === 'open') return null;
  if (effect !== 'noEffect') return renewedOn ?? null;
  const settledOn = settled?.onDay;
  return settledOn !== undefined && settledOn < foundOn ? foundOn : (settledOn ?? null);
}

/** The first day that it touches: as said, but no later than what was found; null: ever since it was entered. */
const firstDayOf = ({ fromOn, foundOn }: GearDoubt): string | null =>
  fromOn !== null && fromOn > foundOn ? foundOn : fromOn;

export function touchesDays(doubt: GearDoubt, fromOn: string, toOn = fromOn): boolean {
  const [first, last] = [firstDayOf(doubt), lastDayOf(doubt)];
  return (first === null || first <= toOn) && (last === null || fromOn <= last);
}

/** Does what rests on the gear on this day prove nothing low? */
export const isDoubtedOn = (gear: GearBeside | null | undefined, onDay: string): boolean =>
  (gear?.doubts ?? []).some((doubt) => isDoubted(doubt) && touchesDays(doubt, onDay));

/**
 * Does the doubt touch the days of use? The same as over `daysOfSample` or `daysOfCheck`; the local day of the end is worked out only where
 * it could matter.
 */
export function touchesUse(doubt: GearDoubt, workOn: string, at: string | null, days: () => DaysOfUse): boolean {
  if (touchesDays(doubt, workOn)) return true;
  const on = at?.slice(0, 10);
  const [first, last] = [firstDayOf(doubt), lastDayOf(doubt)];
  if (on === undefined) return false;
  if (first !== null && workOn < first && on < addDays(first, -1)) return false;
  if (last !== null && workOn > last && on > addDays(last, 1)) return false;
  const { fromOn, toOn } = days();
  return touchesDays(doubt, fromOn, toOn);
}

export const gearNumberOf = ({ serial, lotNumber, id }: GearRecord): string => serial ?? lotNumber ?? id;

const none: readonly Reason[] = [];
const keys = {
  open: 'gearDoubted',
  staysDoubtful: 'gearDoubted',
  asFound: 'gearAsFound',
  noEffect: 'gearNoEffect',
} as const;

function reasonOf(doubt: GearDoubt, record: GearRecord): Reason {
  const effect = effectOf(doubt);
  const { gear, factId, found, settled } = doubt;
  const params = { gear, gearNumber: gearNumberOf(record), found };
  const because = settled && effect !== 'open' ? [factId, settled.factId] : [factId];
  if (effect === 'asFound')
    return reason(keys[effect], because, { ...params, trueOverRead: settled?.trueOverRead ?? 1 });
  if (effect === 'noEffect') return reason(keys[effect], because, { ...params, why: settled?.why ?? '' });
  return reason(keys[effect], because, params);
}

/** Everything that was found of a pump, a flow meter or a lot, for what rests on it on a day. Only `gearDoubted` blocks *below*. */
export function doubtsOn(gear: GearRecord | null | undefined, onDay: string, toOn = onDay): readonly Reason[] {
  const doubts = gear?.doubts;
  if (!gear || !doubts || doubts.length === 0) return none;
  return doubts.filter((doubt) => touchesDays(doubt, onDay, toOn)).map((doubt) => reasonOf(doubt, gear));
}

type Decided = { readonly decision?: unknown; readonly trueOverRead?: unknown };
const factorIn = ({ decision, trueOverRead }: Decided): number | null =>
  decision === 'asFound' && typeof trueOverRead === 'number' ? trueOverRead : null;

/** What was found by a decision: that which stands, and those that it stands against. Neither a doubt nor a missing reason takes a bound away. */
function factorsOf({ gear, doubtId, settled, factId }: GearDoubt, { conflicts }: GearRecord): FactorFound[] {
  if (gear !== 'meter') return [];
  const others = conflicts.filter(({ path }) => path === `/doubts/${doubtId}`).flatMap(({ candidates }) => candidates);
  const said = others.map(({ correctionId, value }) => ({ by: correctionId, decided: value as Decided }));
  if (said.length === 0 && settled) said.push({ by: settled.factId, decided: settled });
  return said.flatMap(({ by, decided }) => {
    const trueOverRead = factorIn(decided);
    return trueOverRead === null ? [] : [{ trueOverRead, because: [factId, by] }];
  });
}

/** True over read, of every doubt about a flow meter that was settled *as found* and touches the day. */
export const factorsOn = (gear: GearRecord, onDay: string, toOn = onDay): readonly FactorFound[] =>
  (gear.doubts ?? []).flatMap((doubt) => (touchesDays(doubt, onDay, toOn) ? factorsOf(doubt, gear) : []));
