/** Which measurement fills which place of which plan: one measurement is never counted for places of several days. */
import type { Book, PlanRecord } from '#records/book.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import { isInLife, type Sight, type Slot, sightOf, stateOf } from './planSight.ts';

/** By place of the plan. */
type Places = ReadonlyMap<number, Measurement>;
type ByPlan = ReadonlyMap<PlanRecord, Places>;

const held = new WeakMap<DutiesOfBook['measurements'], { readonly plans: Book['plans']; readonly places: ByPlan }>();

const order = ({ plannedAt, id }: PlanRecord): string => `${plannedAt ?? '~'} ${id}`;

type Fits = (one: Measurement, slot: Slot) => boolean;

function fill(sight: Sight, into: Map<number, Measurement>, taken: ReadonlySet<Measurement>, fits: Fits): void {
  const own = new Set(into.values());
  sight.plan.slots.forEach((slot, place) => {
    if (into.has(place)) return;
    const isFree = (one: Measurement): boolean => !own.has(one) && !taken.has(one);
    const one = sight
      .ownOf(slot.workerId)
      .find((each) => isFree(each) && fits(each, slot) && stateOf(each, sight.book) !== 'toDo');
    if (!one) return;
    own.add(one);
    into.set(place, one);
  });
}

const none: ReadonlySet<Measurement> = new Set();

/**
 * Every place first by what was measured on its own day: plans that name the same worker and day share it, since nobody is measured twice
 * on a day. Then, plan by plan as they were made, by the first good one in the plan's life that no other place has.
 */
function allOf(plans: readonly PlanRecord[], book: Book, duties: DutiesOfBook): ByPlan {
  const sights = [...plans]
    .sort((a, b) => (order(a) < order(b) ? -1 : 1))
    .map((plan) => ({ sight: sightOf(plan, book, duties), places: new Map<number, Measurement>() }));
  for (const { sight, places } of sights) fill(sight, places, none, (one, { workOn }) => one.workOn === workOn);
  const taken = new Set(sights.flatMap(({ places }) => [...places.values()]));
  for (const { sight, places } of sights) {
    fill(sight, places, taken, (one, slot) => isInLife(one, slot, sight.fromOn));
    for (const one of places.values()) taken.add(one);
  }
  return new Map(sights.map(({ sight, places }) => [sight.plan, places]));
}

const isLive = ({ dropped }: PlanRecord): boolean => dropped === null;
const nothing: Places = new Map();

/** A plan that was given up takes nothing from others. */
export function placesFilled(plan: PlanRecord, book: Book, duties: DutiesOfBook): Places {
  if (!isLive(plan)) return allOf([plan], book, duties).get(plan) ?? nothing;
  const others = [...book.plans.values()].filter(isLive);
  if (book.plans.get(plan.id) !== plan)
    return allOf([...others.filter(({ id }) => id !== plan.id), plan], book, duties).get(plan) ?? nothing;
  const known = held.get(duties.measurements);
  if (known?.plans === book.plans) return known.places.get(plan) ?? nothing;
  const places = allOf(others, book, duties);
  held.set(duties.measurements, { plans: book.plans, places });
  return places.get(plan) ?? nothing;
}
