/** What each worker did and breathed on each day: by the roster, measured, and represented in writing. */
import type { Book } from '#records/book.ts';
import type { Measurement } from '../measuring/measurement.ts';
import { namedInWriting } from './standsFor.ts';
import type { GroupDay } from './taskGroup.ts';

/** What one worker did and breathed on one day. */
export interface WorkerDay {
  readonly on: string;
  readonly workerId: string;
  readonly groupDays: GroupDay[];
  readonly own: Measurement[];
  /** Of others, standing for this worker on this day in writing. */
  readonly inWriting: Measurement[];
}

/** All of a book; or some workers, with all that bears on them. */
export interface Bearing {
  readonly measurements: ReadonlyMap<string, Measurement>;
  readonly days: readonly GroupDay[];
  readonly workers?: ReadonlySet<string>;
}

class WorkerDays {
  readonly byKey = new Map<string, WorkerDay>();
  private readonly workers: ReadonlySet<string> | undefined;

  constructor(workers: ReadonlySet<string> | undefined) {
    this.workers = workers;
  }

  /** undefined: of a worker who is not asked for. */
  of(workerId: string, on: string): WorkerDay | undefined {
    if (this.workers?.has(workerId) === false) return;
    const key = `${on} ${workerId}`;
    const known = this.byKey.get(key);
    if (known) return known;
    const made: WorkerDay = { on, workerId, groupDays: [], own: [], inWriting: [] };
    this.byKey.set(key, made);
    return made;
  }
}

/** In the order of days. */
export function workerDaysOf(
  { measurements, days, workers }: Bearing,
  book: Book,
  today: string,
): readonly WorkerDay[] {
  const found = new WorkerDays(workers);
  for (const day of days) if (day.workOn <= today) found.of(day.workerId, day.workOn)?.groupDays.push(day);
  for (const measurement of measurements.values()) {
    const { workerId, workOn } = measurement;
    if (workOn > today) continue;
    if (workerId !== null) found.of(workerId, workOn)?.own.push(measurement);
    for (const other of namedInWriting(measurement, book))
      if (other !== workerId) found.of(other, workOn)?.inWriting.push(measurement);
  }
  return [...found.byKey.values()].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
}
