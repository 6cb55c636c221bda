/** Everything that follows from a book on a day: measurements, task groups, courses, days, notices, determinations, duties. */
import type { Course } from './course/course.ts';
import type { DeterminationFinding } from './determining/determination.ts';
import type { ExposureDays } from './exposure/exposureDays.ts';
import type { TaskGroup } from './groups/taskGroup.ts';
import type { Duty } from './list/duty.ts';
import type { NotHeld } from './list/notHeld.ts';
import type { Measurement } from './measuring/measurement.ts';
import type { NoticeOwed } from './telling/notice.ts';

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
