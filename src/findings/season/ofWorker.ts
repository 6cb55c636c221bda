/** Measurements by worker, and whether one is of the work that a plan names. */
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';

type ByWorker = ReadonlyMap<string, readonly Measurement[]>;

const held = new WeakMap<DutiesOfBook['measurements'], ByWorker>();
const none: readonly Measurement[] = [];

const byDay = (a: Measurement, b: Measurement): number =>
  a.workOn < b.workOn ? -1 : a.workOn > b.workOn ? 1 : a.id < b.id ? -1 : 1;

function byWorkerOf(measurements: DutiesOfBook['measurements']): ByWorker {
  const known = held.get(measurements);
  if (known) return known;
  const found = new Map<string, Measurement[]>();
  for (const one of measurements.values()) {
    if (one.workerId === null) continue;
    const own = found.get(one.workerId);
    if (own) own.push(one);
    else found.set(one.workerId, [one]);
  }
  for (const own of found.values()) own.sort(byDay);
  held.set(measurements, found);
  return found;
}

/** Oldest first. */
export const measuredBy = (workerId: string, { measurements }: DutiesOfBook): readonly Measurement[] =>
  byWorkerOf(measurements).get(workerId) ?? none;

const [setting, job, tasks] = [0, 1, 2];

/** The work of a plan that names no job classification is that of any. */
export function isSameWork(planKey: string, key: string): boolean {
  const [plan, one] = [planKey.split('|'), key.split('|')];
  if (plan[setting] !== one[setting] || plan[tasks] !== one[tasks]) return false;
  return plan[job] === '-' || plan[job] === one[job];
}

const isThere = (one: Measurement, siteId: string | null): boolean => siteId === null || one.siteId === siteId;

/** Surely of the work that the plan names, and at its site: not where it may have been, in part or in whole, of other work. */
export const isOfPlan = (one: Measurement, planKey: string, siteId: string | null): boolean =>
  isThere(one, siteId) && [one.groupKey, ...(one.mayBeKeys ?? [])].every((key) => isSameWork(planKey, key));
