/** What is said of one place of a plan, and reading it: a plan said anew with another day, or a planned day that did not come about. */
import { fieldReader } from '#parts/fieldReader.ts';
import type { PlanRecord } from '#records/book.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en as partsWords } from '#words/parts.ts';
import { en } from '#words/planScreen.ts';
import { placeIn } from './places.ts';

const words = en.slot;

export interface SlotDraft {
  readonly what: 'move' | 'missed' | null;
  readonly because: FactBody<'plannedDayMissed.v1'>['because'] | null;
  readonly remark: string;
  readonly newDay: string;
}

export const emptySlot: SlotDraft = { what: null, because: null, remark: '', newDay: '' };

export interface SlotAt {
  readonly plan: PlanRecord;
  readonly place: string;
  readonly today: string;
  readonly entry: Entry;
}

/** The plan as it stands, with one place on another day. It follows what it knew. */
function planWith(plan: PlanRecord, at: number, workOn: string | null): FactBody<'measurementPlanned.v1'> {
  const { jobClassificationId, setting, taskIds, siteId, season, crewCount, choice, reason } = plan;
  const { methodId, reportingLimitUg, flowLPerMin, cassettesCount, remark } = plan;
  return {
    planId: plan.id,
    ...{ jobClassificationId, setting, taskIds: [...taskIds], siteId, season, crewCount, choice, reason },
    slots: plan.slots.map((slot, i) => (i === at ? { ...slot, workOn } : { ...slot })),
    ...{ methodId, reportingLimitUg, flowLPerMin, cassettesCount, remark },
    knew: [plan.plannedFactId],
  };
}

export function readSlot(draft: SlotDraft, { plan, place, today, entry }: SlotAt) {
  const read = fieldReader(partsWords);
  const at = placeIn(plan, place);
  const slot = plan.slots[at];
  if (slot === undefined) read.add(null, words.gone);
  if (draft.what === null) read.add('what', words.missing);
  const facts: NewFact[] = [];
  if (slot !== undefined && draft.what === 'move') {
    const workOn = read.day('newDay', words.newDay, draft.newDay, today, { optional: true });
    const isTaken = plan.slots.some((one, i) => i !== at && one.workerId === slot.workerId && one.workOn === workOn);
    if (isTaken && workOn !== null) read.add('newDay', words.taken);
    facts.push(newFact('measurementPlanned.v1', planWith(plan, at, workOn), entry));
  }
  if (slot !== undefined && draft.what === 'missed') {
    const because = read.chosen('because', words.because, draft.because);
    const remark = read.text('remark', words.remark, draft.remark, { optional: true, most: 2000 });
    if (slot.workOn === null) read.add('what', words.noDay);
    else if (because !== null) {
      const body = { planId: plan.id, workerId: slot.workerId, workOn: slot.workOn, because, remark };
      facts.push(newFact('plannedDayMissed.v1', body, entry));
    }
  }
  return { errors: read.errors, facts };
}
