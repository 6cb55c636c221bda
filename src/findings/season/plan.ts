/** What became of a plan: which of its places are done, which are under way, which are still to do and why. A plan proves nothing. */
import type { Book, PlanRecord } from '#records/book.ts';
import { blanksNeeded } from '../blanks.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import { planKeyOf, type SlotFinding, slotsOf } from './planSlots.ts';

export { planKeyOf, type SlotFinding, type SlotState, type ToDoWhy } from './planSlots.ts';

export interface PlanStanding {
  readonly planId: string;
  readonly groupKey: string;
  readonly dropped: boolean;
  /** In the order of the plan. */
  readonly slots: readonly SlotFinding[];
  readonly slotsCount: number;
  readonly doneCount: number;
  /** On the worker, sealed, or with the laboratory. */
  readonly underWayCount: number;
  readonly toDoCount: number;
  /** Cassettes of the whole plan, and of what is still to do. */
  readonly samplesCount: number;
  readonly samplesToDoCount: number;
  /** Field blanks of each day by the default rule, of the whole plan and of what is still to do. */
  readonly blanksCount: number;
  readonly blanksToDoCount: number;
}

/** Blanks go with the cassettes of a day; places whose day is open fill as few days as their workers allow. */
function blanksOf(slots: readonly SlotFinding[], cassettesCount: number): number {
  const byDay = new Map<string, number>();
  const openOf = new Map<string, number>();
  for (const { workerId, workOn } of slots) {
    const open = (openOf.get(workerId) ?? 0) + (workOn === null ? 1 : 0);
    openOf.set(workerId, open);
    const day = workOn ?? `open ${open}`;
    byDay.set(day, (byDay.get(day) ?? 0) + cassettesCount);
  }
  return [...byDay.values()].reduce((sum, samples) => sum + blanksNeeded(samples, 'tenPercent').count, 0);
}

export function planStanding(plan: PlanRecord, book: Book, duties: DutiesOfBook): PlanStanding {
  const slots = slotsOf(plan, book, duties);
  const toDo = slots.filter(({ state }) => state === 'toDo');
  const doneCount = slots.filter(({ state }) => state === 'done').length;
  return {
    planId: plan.id,
    groupKey: planKeyOf(plan),
    dropped: plan.dropped !== null,
    slots,
    slotsCount: slots.length,
    doneCount,
    underWayCount: slots.length - doneCount - toDo.length,
    toDoCount: toDo.length,
    samplesCount: slots.length * plan.cassettesCount,
    samplesToDoCount: toDo.length * plan.cassettesCount,
    blanksCount: blanksOf(slots, plan.cassettesCount),
    blanksToDoCount: blanksOf(toDo, plan.cassettesCount),
  };
}
