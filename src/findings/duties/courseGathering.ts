/** What is gathered of each worker in each task group before a course is read from it. */
import type { ChangeNoted, Occasion } from './courseInput.ts';
import type { CourseRule } from './courseRule.ts';

/** What is gathered of one worker in one group. */
export interface Gathered {
  readonly workerId: string;
  readonly groupKey: string;
  readonly occasionByDay: Map<string, Occasion>;
  readonly changes: ChangeNoted[];
  rule: CourseRule | null;
  lastDoneOn: string | null;
  /** The first day on which an occasion of the worker's own, or in writing, said something. */
  decidedOn: string | null;
}

export class Gathering {
  readonly found = new Map<string, Gathered>();

  of(workerId: string, groupKey: string): Gathered {
    const key = `${workerId} ${groupKey}`;
    const known = this.found.get(key);
    if (known) return known;
    const made: Gathered = {
      workerId,
      groupKey,
      occasionByDay: new Map(),
      changes: [],
      rule: null,
      lastDoneOn: null,
      decidedOn: null,
    };
    this.found.set(key, made);
    return made;
  }
}

/** The tasks were done on this day. */
export function noteDone(own: Gathered, workOn: string): void {
  if (own.lastDoneOn === null || own.lastDoneOn < workOn) own.lastDoneOn = workOn;
}
