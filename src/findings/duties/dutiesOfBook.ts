/** Everything that follows from a book on a day: measurements, task groups, courses, days, notices, determinations, duties. */
import type { Course } from './course.ts';
import type { DeterminationFinding } from './determination.ts';
import type { Duty } from './duty.ts';
import type { ExposureDays } from './exposureDays.ts';
import type { Measurement } from './measurement.ts';
import type { NotHeld } from './notHeld.ts';
import type { NoticeOwed } from './notice.ts';
import type { TaskGroup } from './taskGroup.ts';

export interface DutiesOfBook {
  readonly today: string;
  /** By id. */
  readonly measurements: ReadonlyMap<string, Measurement>;
  /** By group key. */
  readonly groups: ReadonlyMap<string, TaskGroup>;
  readonly courses: readonly Course[];
  readonly exposureDays: ReadonlyMap<string, ExposureDays>;
  /** One for each measurement with a result, told or not. */
  readonly notices: readonly NoticeOwed[];
  readonly determinations: readonly DeterminationFinding[];
  /** By date and person: overdue first, then by day, then those without a day. Done ones last. */
  readonly duties: readonly Duty[];
  /** Sites whose own rule is not held complete: figures only, no duties, and whose rule governs. */
  readonly notHeld?: readonly NotHeld[];
}
