/** What is due next, on each worker and in the office, as data in the order of the day. */
import type { Book } from '#records/book.ts';

export type DueKey =
  | 'flowBefore'
  | 'fit'
  | 'putOn'
  | 'look'
  | 'stop'
  | 'flowAfter'
  | 'seal'
  | 'blanks'
  | 'conditions'
  | 'regularDay'
  | 'lockIn'
  | 'sendToLaboratory'
  | 'backup';

export interface Due {
  readonly key: DueKey;
  readonly sampleId: string | null;
  readonly workerId: string | null;
  readonly shiftId: string | null;
  readonly workdayId: string | null;
  readonly boxId: string | null;
  /** Since when, or at what time, it is due; null where no time is set. */
  readonly dueAt: string | null;
  readonly overdue: boolean;
  readonly params: Readonly<Record<string, string | number>>;
}

export interface DueContext {
  /** Instant of the last whole-book backup, or null when there was none. */
  readonly lastBackupAt: string | null;
}

/** What is due, soonest first. `now` is an instant. */
export function findDue(_book: Book, _now: string, _context?: DueContext): Due[] {
  throw new Error('being written');
}
