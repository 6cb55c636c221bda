/**
 * What earlier measurements of a task group say of a later day on which nobody was measured. At or above carries over as it stands. Below
 * carries over only to the same site, or to a job that may rest on it, where the conditions of both days are noted and alike in all five
 * terms and no change was noted since: doubt leaves the day presumed.
 */
import { daysBetween } from '#core/calendar.ts';
import type { Book } from '#records/book.ts';
import { courseRuleOf } from '../course/courseRule.ts';
import { bearsOn, boxedIdsOf } from '../determining/determinationScope.ts';
import type { Measurement } from '../measuring/measurement.ts';
import { type RelianceFinding, reliancesOf } from './reliance.ts';
import { allAlike, compareTerms, termsOn } from './resemblance.ts';
import type { GroupDay } from './taskGroup.ts';
import { changeNotedOn } from './taskGroups.ts';

/** By the rule alone; `null`: it proves nothing of the action level. */
export function sideOfActionLevel(measurement: Measurement): 'yes' | 'no' | null {
  const { band, provesBelowActionLevel } = measurement.byRule ?? measurement;
  if (band === 'actionLevelToPel' || band === 'abovePel') return 'yes';
  return provesBelowActionLevel ? 'no' : null;
}

export interface Evidence {
  readonly measurement: Measurement;
  readonly atOrAbove: 'yes' | 'no';
}

function add<T>(byKey: Map<string, T[]>, key: string, one: T): void {
  const found = byKey.get(key);
  if (found) found.push(one);
  else byKey.set(key, [one]);
}

/** After a high one it takes as many low ones in a row as stop the monitoring before the low ones speak for other days. */
interface Standing {
  readonly deciding: Measurement | null;
  readonly lowsInRow: number;
  readonly lastLowOn: string | null;
  /** One that may have been high came before. */
  readonly unsure: boolean;
}

const unknown: Standing = { deciding: null, lowsInRow: 0, lastLowOn: null, unsure: false };

const isHigh = (one: Measurement | null): boolean => one !== null && sideOfActionLevel(one) === 'yes';

function next(before: Standing, measurement: Measurement): Standing {
  const side = sideOfActionLevel(measurement);
  if (side === 'yes') return { ...unknown, deciding: measurement };
  const rule = courseRuleOf(measurement.limits.set);
  const wasHigh = isHigh(before.deciding);
  if (side === null || !rule) return { ...unknown, deciding: wasHigh ? before.deciding : null, unsure: true };
  const apart = before.lastLowOn === null ? 0 : daysBetween(before.lastLowOn, measurement.workOn);
  const lowsInRow = before.lastLowOn !== null && apart >= rule.daysApart ? before.lowsInRow + 1 : 1;
  const isEnough = lowsInRow >= rule.consecutive || !(wasHigh || before.unsure);
  const deciding = isEnough ? measurement : wasHigh ? before.deciding : null;
  return { deciding, lowsInRow, lastLowOn: measurement.workOn, unsure: before.unsure && !isEnough };
}

/** Groups of which it is evidence: what is not low, also of those it may have been of. */
export const evidenceKeysOf = (one: Measurement): readonly string[] =>
  sideOfActionLevel(one) === 'no' ? [one.groupKey] : [one.groupKey, ...(one.mayBeKeys ?? [])];

/** Of one group: its measurements in the order of days, and how far they were taken. */
interface Taken {
  readonly waiting: Measurement[];
  place: number;
  readonly byWorker: Map<string, Standing>;
}

const nobody: ReadonlyMap<string, Standing> = new Map();

const isInOrder = (ones: readonly Measurement[]): boolean =>
  ones.every(({ workOn }, i) => i === 0 || (ones[i - 1]?.workOn ?? '') <= workOn);

/** Takes days in their order, and measurements as their day comes. */
export class GroupEvidence {
  private readonly book: Book;
  private readonly measurements: ReadonlyMap<string, Measurement>;
  private readonly byGroup = new Map<string, Taken>();
  /** By worker: the groups that were looked at for any day, whether anything was there or not. */
  readonly lookedAt = new Map<string, Set<string>>();
  private readonly changeDays = new Map<string, string[]>();
  private readonly reliances = new Map<string, RelianceFinding[]>();

  constructor(measurements: ReadonlyMap<string, Measurement>, book: Book) {
    this.book = book;
    this.measurements = measurements;
    const ones = [...measurements.values()];
    if (!isInOrder(ones)) ones.sort((a, b) => (a.workOn < b.workOn ? -1 : a.workOn > b.workOn ? 1 : 0));
    const boxedIds = boxedIdsOf(book);
    for (const one of ones) if (bearsOn(one, boxedIds)) this.await(one);
    for (const shift of book.shifts.values()) {
      const change = changeNotedOn(shift);
      if (change) add(this.changeDays, shift.siteId, change.on);
    }
    for (const one of reliancesOf(measurements, book).values())
      if (one.valid) add(this.reliances, `${one.siteId} ${one.groupKey}`, one);
  }

  private await(one: Measurement): void {
    for (const key of evidenceKeysOf(one)) {
      const taken = this.byGroup.get(key);
      if (taken) taken.waiting.push(one);
      else this.byGroup.set(key, { waiting: [one], place: 0, byWorker: new Map() });
    }
  }

  /** What is known of the group on a day: the worker's own first, then everybody else's. `openHere`: nothing may be relaxed. */
  of(day: GroupDay, openHere: boolean): Evidence | null {
    // entries that differ leave open which work it was: what may have been high counts, and nothing low carries over
    const onlyHigh = openHere || day.mayBeKeys !== undefined;
    const byWorker = this.standings(day.groupKey, day);
    const own = byWorker.get(day.workerId)?.deciding ?? null;
    const others = [...byWorker.values()].flatMap(({ deciding }) => (deciding && deciding !== own ? [deciding] : []));
    const relied = this.reliedOn(day);
    if (own && sideOfActionLevel(own) === 'yes') return { measurement: own, atOrAbove: 'yes' };
    if (own && !onlyHigh && this.carries(own, day)) return { measurement: own, atOrAbove: 'no' };
    const mayBe = (day.mayBeKeys ?? []).flatMap((key) =>
      [...this.standings(key, day).values()].flatMap(({ deciding }) => deciding ?? []),
    );
    const candidates = [...others, ...mayBe, ...relied.map(({ measurement }) => measurement)];
    const high = candidates.find((one) => sideOfActionLevel(one) === 'yes');
    if (high) return { measurement: high, atOrAbove: 'yes' };
    if (onlyHigh) return null;
    const low = others.find((one) => this.carries(one, day)) ?? relied.find(({ carries }) => carries)?.measurement;
    return low ? { measurement: low, atOrAbove: 'no' } : null;
  }

  /** Of a group, as its measurements stand on that day. */
  private standings(groupKey: string, { workerId, workOn }: GroupDay): ReadonlyMap<string, Standing> {
    const looked = this.lookedAt.get(workerId);
    if (looked) looked.add(groupKey);
    else this.lookedAt.set(workerId, new Set([groupKey]));
    const taken = this.byGroup.get(groupKey);
    if (!taken) return nobody;
    const { waiting, byWorker } = taken;
    for (let one = waiting[taken.place]; one && one.workOn <= workOn; one = waiting[++taken.place]) {
      const who = one.workerId ?? one.id;
      byWorker.set(who, next(byWorker.get(who) ?? unknown, one));
    }
    return byWorker;
  }

  private carries(low: Measurement, day: GroupDay): boolean {
    if (low.siteId !== day.siteId || this.changedWithin(day.siteId, low.workOn, day.workOn)) return false;
    return low.shiftIds.length > 0 && low.shiftIds.every((shiftId) => this.isAlike(shiftId, day));
  }

  /** Jobs at this site that rest on an earlier measurement. */
  private reliedOn(day: GroupDay): readonly { readonly measurement: Measurement; readonly carries: boolean }[] {
    const found = this.reliances.get(`${day.siteId} ${day.groupKey}`) ?? [];
    return found.flatMap(({ measurementId, reliedOn, shiftId }) => {
      const measurement = this.measurements.get(measurementId);
      if (!measurement || reliedOn > day.workOn) return [];
      const unchanged = !this.changedWithin(day.siteId, reliedOn, day.workOn) && this.isAlike(shiftId, day);
      return [{ measurement, carries: unchanged && sideOfActionLevel(measurement) === 'no' }];
    });
  }

  private isAlike(shiftId: string, { shiftId: dayShiftId, taskIds }: GroupDay): boolean {
    const [a, b] = [shiftId, dayShiftId].map((id) => termsOn(this.book.shifts.get(id)?.conditions ?? null, taskIds));
    return a !== undefined && b !== undefined && allAlike(compareTerms(a, b));
  }

  /** After one day, up to another. */
  private changedWithin(siteId: string, afterOn: string, untilOn: string): boolean {
    return (this.changeDays.get(siteId) ?? []).some((on) => afterOn < on && on <= untilOn);
  }
}
