/** One place of a plan, a worker and a day: what fills it, or why it is still to do. */
import { dayOf } from '#core/calendar.ts';
import type { Book, PlanRecord } from '#records/book.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import { groupKeyOf } from '../duties/groups/taskGroup.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import type { Reason } from '../reason.ts';
import { inVainWhy, isInVain, isVoid } from './inVain.ts';
import { isOfPlan, measuredBy } from './ofWorker.ts';

export type SlotState = 'done' | 'onTheWorker' | 'notSent' | 'withTheLaboratory' | 'toDo';

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

type Slot = Pick<SlotFinding, 'workerId' | 'workOn'>;
type Said = Omit<SlotFinding, 'workerId' | 'workOn'>;

export const planKeyOf = ({ setting, jobClassificationId, taskIds }: PlanRecord): string =>
  groupKeyOf(setting, jobClassificationId, taskIds);

const handedOver = new WeakMap<Book['boxes'], ReadonlySet<string>>();

/** Samples whose box was handed over. */
function sentOf({ boxes }: Book): ReadonlySet<string> {
  const known = handedOver.get(boxes);
  if (known) return known;
  const sent = new Set([...boxes.values()].flatMap((box) => (box.handedOver ? box.packed.sampleIds : [])));
  handedOver.set(boxes, sent);
  return sent;
}

function stateOf(one: Measurement, book: Book): SlotState {
  if (one.finding?.samples.some(({ run }) => run.running)) return 'onTheWorker';
  if (isVoid(one)) return 'toDo';
  if (one.resultOwed) {
    const sent = sentOf(book);
    const waiting = (one.finding?.samples ?? []).filter(({ mass, quality }) => mass === null && quality !== 'void');
    return waiting.every(({ sampleId }) => sent.has(sampleId)) ? 'withTheLaboratory' : 'notSent';
  }
  return isInVain(one) ? 'toDo' : 'done';
}

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

interface Sight {
  readonly plan: PlanRecord;
  readonly book: Book;
  readonly duties: DutiesOfBook;
  readonly key: string;
  /** First day of its life; null where nobody knows. */
  readonly fromOn: string | null;
  /** Of a worker, of this work, oldest first: looked up once. */
  readonly ownOf: (workerId: string) => readonly Measurement[];
}

function sightOf(plan: PlanRecord, book: Book, duties: DutiesOfBook): Sight {
  const zone = book.sites.get(plan.siteId ?? '')?.zone;
  const at = plan.plannedAt;
  const fromOn = at === undefined ? null : zone === undefined ? at.slice(0, 10) : dayOf(at, zone);
  const key = planKeyOf(plan);
  const own = new Map<string, readonly Measurement[]>();
  const ownOf = (workerId: string): readonly Measurement[] => {
    const found = own.get(workerId) ?? measuredBy(workerId, duties).filter((one) => isOfPlan(one, key, plan.siteId));
    own.set(workerId, found);
    return found;
  };
  return { plan, book, duties, key, fromOn, ownOf };
}

/** In the plan's life; where nobody knows when it began, only after the day of the slot. */
const isInLife = ({ workOn }: Measurement, slot: Slot, fromOn: string | null): boolean => {
  const from = fromOn ?? slot.workOn;
  return from !== null && workOn >= from;
};

/** Each good measurement fills one place: first that of its own day, then the first one that is left. */
function filled(slots: readonly Slot[], sight: Sight): ReadonlyMap<number, Said> {
  const found = new Map<number, Said>();
  const used = new Set<Measurement>();
  const take = (place: number, fits: (one: Measurement, slot: Slot) => boolean): void => {
    const slot = slots[place];
    if (!slot || found.has(place)) return;
    const one = sight
      .ownOf(slot.workerId)
      .find((each) => !used.has(each) && fits(each, slot) && stateOf(each, sight.book) !== 'toDo');
    if (!one) return;
    used.add(one);
    found.set(place, ofMeasurement(one, stateOf(one, sight.book), null));
  };
  slots.forEach((_, place) => {
    take(place, (one, { workOn }) => one.workOn === workOn);
  });
  slots.forEach((_, place) => {
    take(place, (one, slot) => isInLife(one, slot, sight.fromOn));
  });
  return found;
}

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
  const good = filled(plan.slots, sight);
  return plan.slots.map((slot, place): SlotFinding => {
    const { workerId, workOn } = slot;
    return { workerId, workOn, ...(good.get(place) ?? leftOver(slot, sight)) };
  });
}
