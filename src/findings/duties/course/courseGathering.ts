/** What is gathered of each worker in each task group before a course is read from it. */
import type { Book } from '#records/book.ts';
import { bearsOn, boxedIdsOf } from '../determining/determinationScope.ts';
import type { Measurement } from '../measuring/measurement.ts';
import type { ChangeNoted, Occasion } from './courseInput.ts';
import type { CourseRule } from './courseRule.ts';

/** What is gathered of one worker in one group. */
export interface Gathered {
  readonly workerId: string;
  readonly groupKey: string;
  readonly occasionByDay: Map<string, Occasion>;
  readonly changes: ChangeNoted[];
  /** Whether a measurement without a figure may still come to one: a void cassette that was never sent does not. */
  readonly bears: (measurement: Measurement) => boolean;
  rule: CourseRule | null;
  lastDoneOn: string | null;
  /** The first day on which an occasion of the worker's own, or in writing, said something. */
  decidedOn: string | null;
}

export class Gathering {
  readonly found = new Map<string, Gathered>();
  private readonly bears: Gathered['bears'];

  constructor(book: Book) {
    const boxedIds = boxedIdsOf(book);
    this.bears = (measurement) => bearsOn(measurement, boxedIds);
  }

  of(workerId: string, groupKey: string): Gathered {
    const key = `${workerId} ${groupKey}`;
    const known = this.found.get(key);
    if (known) return known;
    const made: Gathered = {
      workerId,
      groupKey,
      occasionByDay: new Map(),
      changes: [],
      bears: this.bears,
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
