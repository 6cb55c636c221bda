import type { Book, PlanRecord } from '#records/book.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import type { Reason } from '../reason.ts';
import { inVainWhy } from './inVain.ts';
import { isOfPlan, measuredBy } from './ofWorker.ts';
import { placesFilled } from './placesFilled.ts';
import { isInLife, type Sight, type Slot, type SlotState, sightOf, stateOf } from './planSight.ts';

export { planKeyOf, type SlotState } from './planSight.ts';

/**
 * Why a place is still to do. Of what was said: declined, rained off … Of what was measured: `void`, `irregularDay`, `doubtful`,
 * `otherTasks` (the day was, or may have been, of another group). `passed`: the day went by with nothing. `ahead`, `dayOpen`: not yet.
 */
export type ToDoWhy =
  | PlanRecord['missed'][number]['because']
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

type Said = Omit<SlotFinding, 'workerId' | 'workOn'>;

const ofMeasurement = (one: Measurement, state: SlotState, why: ToDoWhy | null): Said => ({
  state,
  why,
  remark: null,
  measurementId: one.id,
  measuredOn: one.workOn,
  reasons: state === 'done' ? [] : one.blocks,
  because: one.because,
});

const without = (why: ToDoWhy, remark: string | null = null, because: readonly string[] = []): Said => ({
  state: 'toDo',
  why,
  remark,
  measurementId: null,
  measuredOn: null,
  reasons: [],
  because,
});

/** Nothing fills it: what was said of it, what was measured in vain, or where its day stands. */
function leftOver(slot: Slot, sight: Sight): Said {
  const { plan, duties, key, fromOn } = sight;
  const { workerId, workOn } = slot;
  const isOn = (on: string): boolean => workOn === null || on === workOn;
  const inVain = sight
    .ownOf(workerId)
    .findLast((one) => isOn(one.workOn) && isInLife(one, slot, fromOn) && stateOf(one, sight.book) === 'toDo');
  if (inVain) return ofMeasurement(inVain, 'toDo', inVainWhy(inVain));
  // by now whatever was measured that day was of other work, or at another site
  const other = measuredBy(workerId, duties).findLast(
    (one) => one.workOn === workOn && !isOfPlan(one, key, plan.siteId),
  );
  if (other) return ofMeasurement(other, 'toDo', 'otherTasks');
  const missed = plan.missed.findLast((one) => one.workerId === workerId && isOn(one.workOn));
  if (missed) return without(missed.because, missed.remark, [missed.factId]);
  if (workOn === null) return without('dayOpen');
  return without(workOn < duties.today ? 'passed' : 'ahead');
}

/** In the order of the plan. */
export function slotsOf(plan: PlanRecord, book: Book, duties: DutiesOfBook): readonly SlotFinding[] {
  const sight = sightOf(plan, book, duties);
  const good = placesFilled(plan, book, duties);
  return plan.slots.map((slot, place): SlotFinding => {
    const { workerId, workOn } = slot;
    const one = good.get(place);
    const said = one ? ofMeasurement(one, stateOf(one, book), null) : leftOver(slot, sight);
    return { workerId, workOn, ...said };
  });
}
