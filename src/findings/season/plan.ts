/** What became of a plan: which of its places are done, which are under way, which are still to do and why. A plan proves nothing. */
import type { Book, PlanRecord } from '#records/book.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import type { Reason } from '../reason.ts';

export type SlotState = 'done' | 'onTheWorker' | 'notSent' | 'withTheLaboratory' | 'toDo';

/**
 * Why a place is still to do. Of what was said: declined, rained off … Of what was measured: `void`, `irregularDay`, `doubtful`,
 * `otherTasks` (the day was, or may have been, of another group). `passed`: the day went by with nothing. `ahead`, `dayOpen`: not yet.
 */
export type ToDoWhy =
  | 'declined'
  | 'rainedOff'
  | 'otherWork'
  | 'notAtWork'
  | 'gear'
  | 'other'
  | 'void'
  | 'irregularDay'
  | 'doubtful'
  | 'otherTasks'
  | 'passed'
  | 'ahead'
  | 'dayOpen';

export interface SlotFinding {
  readonly workerId: string;
  /** As planned. */
  readonly workOn: string | null;
  readonly state: SlotState;
  /** null unless it is to do. */
  readonly why: ToDoWhy | null;
  /** What was written beside a planned day that did not come about. */
  readonly remark: string | null;
  /** The one that fills it, or that failed to. */
  readonly measurementId: string | null;
  readonly measuredOn: string | null;
  readonly reasons: readonly Reason[];
  readonly because: readonly string[];
}

export interface PlanStanding {
  readonly planId: string;
  readonly groupKey: string;
  readonly dropped: boolean;
  readonly slots: readonly SlotFinding[];
  readonly slotsCount: number;
  readonly doneCount: number;
  /** On the worker, sealed, or with the laboratory. */
  readonly underWayCount: number;
  readonly toDoCount: number;
  /** Cassettes of the whole plan, and of what is still to do. */
  readonly samplesCount: number;
  readonly samplesToDoCount: number;
  /** Field blanks by the rule asked for, of the whole plan and of what is still to do. */
  readonly blanksCount: number;
  readonly blanksToDoCount: number;
}

export function planStanding(plan: PlanRecord, book: Book, duties: DutiesOfBook): PlanStanding {
  void book;
  void duties;
  throw new Error(`${plan.id}: not written yet`);
}
