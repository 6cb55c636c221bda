/** What is looked up of a plan: its work, when its life began, who was measured at that work, and where each of those stands. */
import { dayOf } from '#core/calendar.ts';
import type { Book, PlanRecord } from '#records/book.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import { groupKeyOf } from '../duties/groups/taskGroup.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import { isInVain, isVoid } from './inVain.ts';
import { isOfPlan, measuredBy } from './ofWorker.ts';

export type SlotState = 'done' | 'onTheWorker' | 'notSent' | 'withTheLaboratory' | 'toDo';

export type Slot = PlanRecord['slots'][number];

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

export function stateOf(one: Measurement, book: Book): SlotState {
  if (one.finding?.samples.some(({ run }) => run.running)) return 'onTheWorker';
  if (isVoid(one)) return 'toDo';
  if (one.resultOwed) {
    const sent = sentOf(book);
    const waiting = (one.finding?.samples ?? []).filter(({ mass, quality }) => mass === null && quality !== 'void');
    return waiting.every(({ sampleId }) => sent.has(sampleId)) ? 'withTheLaboratory' : 'notSent';
  }
  return isInVain(one) ? 'toDo' : 'done';
}

export interface Sight {
  readonly plan: PlanRecord;
  readonly book: Book;
  readonly duties: DutiesOfBook;
  readonly key: string;
  /** First day of its life; null where nobody knows. */
  readonly fromOn: string | null;
  /** Of a worker, of this work, oldest first: looked up once. */
  readonly ownOf: (workerId: string) => readonly Measurement[];
}

export function sightOf(plan: PlanRecord, book: Book, duties: DutiesOfBook): Sight {
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
export const isInLife = ({ workOn }: Measurement, slot: Slot, fromOn: string | null): boolean => {
  const from = fromOn ?? slot.workOn;
  return from !== null && workOn >= from;
};
