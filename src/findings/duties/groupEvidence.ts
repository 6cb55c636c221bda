/**
 * What earlier measurements of a task group say of a later day on which nobody was measured. At or above carries over as it stands. Below
 * carries over only to the same site, or to a job that may rest on it, where the conditions of both days are noted and alike in all five
 * terms and no change was noted since: doubt leaves the day presumed.
 */
import { daysBetween } from '#core/calendar.ts';
import type { Book } from '#records/book.ts';
import { courseRuleOf } from './courseRule.ts';
import type { Measurement } from './measurement.ts';
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
}

const unknown: Standing = { deciding: null, lowsInRow: 0, lastLowOn: null };

function next(before: Standing, measurement: Measurement): Standing {
  const side = sideOfActionLevel(measurement);
  if (side === 'yes') return { ...unknown, deciding: measurement };
  const rule = courseRuleOf(measurement.limits.set);
  if (side === null || !rule) return { ...unknown, deciding: before.deciding };
  const apart = before.lastLowOn === null ? 0 : daysBetween(before.lastLowOn, measurement.workOn);
  const lowsInRow = before.lastLowOn !== null && apart >= rule.daysApart ? before.lowsInRow + 1 : 1;
  const wasHigh = before.deciding !== null && sideOfActionLevel(before.deciding) === 'yes';
  const deciding = wasHigh && lowsInRow < rule.consecutive ? before.deciding : measurement;
  return { deciding, lowsInRow, lastLowOn: measurement.workOn };
}

/** Takes days in their order, and measurements as their day comes. */
export class GroupEvidence {
  private readonly book: Book;
  private readonly measurements: ReadonlyMap<string, Measurement>;
  private readonly waiting: readonly Measurement[];
  private place = 0;
  /** By group, then worker. */
  private readonly latest = new Map<string, Map<string, Standing>>();
  private readonly changeDays = new Map<string, string[]>();
  private readonly reliances = new Map<string, RelianceFinding[]>();

  constructor(measurements: ReadonlyMap<string, Measurement>, book: Book) {
    this.book = book;
    this.measurements = measurements;
    this.waiting = [...measurements.values()].sort((a, b) => (a.workOn < b.workOn ? -1 : a.workOn > b.workOn ? 1 : 0));
    for (const shift of book.shifts.values()) {
      const change = changeNotedOn(shift);
      if (change) add(this.changeDays, shift.siteId, change.on);
    }
    for (const one of reliancesOf(measurements, book).values())
      if (one.valid) add(this.reliances, `${one.siteId} ${one.groupKey}`, one);
  }

  /** What is known of the group on a day: the worker's own first, then everybody else's. `openHere`: nothing may be relaxed. */
  of(day: GroupDay, openHere: boolean): Evidence | null {
    this.takeUntil(day.workOn);
    // entries that differ leave open which work it was: what may have been high counts, and nothing low carries over
    const onlyHigh = openHere || day.mayBeKeys !== undefined;
    const byWorker = this.latest.get(day.groupKey);
    const own = byWorker?.get(day.workerId)?.deciding ?? null;
    const others = [...(byWorker?.values() ?? [])].flatMap(({ deciding }) =>
      deciding && deciding !== own ? [deciding] : [],
    );
    const relied = this.reliedOn(day);
    if (own && sideOfActionLevel(own) === 'yes') return { measurement: own, atOrAbove: 'yes' };
    if (own && !onlyHigh && this.carries(own, day)) return { measurement: own, atOrAbove: 'no' };
    const mayBe = (day.mayBeKeys ?? []).flatMap((key) => this.decidingIn(key));
    const candidates = [...others, ...mayBe, ...relied.map(({ measurement }) => measurement)];
    const high = candidates.find((one) => sideOfActionLevel(one) === 'yes');
    if (high) return { measurement: high, atOrAbove: 'yes' };
    if (onlyHigh) return null;
    const low = others.find((one) => this.carries(one, day)) ?? relied.find(({ carries }) => carries)?.measurement;
    return low ? { measurement: low, atOrAbove: 'no' } : null;
  }

  private decidingIn(groupKey: string): readonly Measurement[] {
    return [...(this.latest.get(groupKey)?.values() ?? [])].flatMap(({ deciding }) => deciding ?? []);
  }

  private takeUntil(on: string): void {
    for (let one = this.waiting[this.place]; one && one.workOn <= on; one = this.waiting[++this.place]) {
      this.take(one, one.groupKey);
      if (sideOfActionLevel(one) !== 'no') for (const key of one.mayBeKeys ?? []) this.take(one, key);
    }
  }

  private take(one: Measurement, groupKey: string): void {
    const byWorker = this.latest.get(groupKey) ?? new Map<string, Standing>();
    const workerId = one.workerId ?? one.id;
    byWorker.set(workerId, next(byWorker.get(workerId) ?? unknown, one));
    this.latest.set(groupKey, byWorker);
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
