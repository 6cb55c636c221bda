/** What is ticked and typed for a day, where it comes from before anybody typed, and reading it into the fact that makes the day ready. */
import { isDoubtedOn } from '#findings/gear/doubtsOf.ts';
import { plannedOn } from '#findings/season/plannedOn.ts';
import { dayIn, siteIn } from '#findings/season/tomorrow.ts';
import { fieldReader } from '#parts/fieldReader.ts';
import type { Book, DayPlanRecord, LotRecord, PumpRecord, SampleRecord } from '#records/book.ts';
import type { FactBody } from '#records/fact.ts';
import type { Without } from '#records/recordBase.ts';
import { en as partsWords } from '#words/parts.ts';
import { en as words } from '#words/tomorrowScreen.ts';

type Prepared = FactBody<'dayPrepared.v1'>;

export interface WearerDraft {
  readonly workerId: string;
  readonly planId: string | null;
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly pumpId: string | null;
  readonly lotId: string | null;
}

export interface DayDraft {
  readonly wearers: readonly WearerDraft[];
  readonly sparePumpIds: readonly string[];
  readonly spareCassettes: string;
  readonly chargedById: string | null;
  readonly remark: string;
}

/** Not to be had for that day: out of use, or found bad, so that a low result with it would prove nothing. */
const isOut = (gear: PumpRecord | LotRecord | undefined, day: string): boolean =>
  gear === undefined || gear.held?.retired === true || isDoubtedOn(gear, day);

/** The last cassette that somebody wore before that day. */
function lastWorn(workerId: string, day: string, book: Book): SampleRecord | undefined {
  return [...book.samples.values()]
    .filter((one) => one.workerId === workerId && one.sampleKind === 'air' && one.workOn < day && !one.voided)
    .sort((a, b) => a.preparedAt.localeCompare(b.preparedAt))
    .at(-1);
}

/** The lot that was opened last and has not run out by that day; of one lot there is no choice. */
function usualLot(day: string, book: Book): string | null {
  const usable = [...book.lots.values()].filter(
    (lot) => !isOut(lot, day) && (lot.expiresOn === null || lot.expiresOn >= day),
  );
  const used = [...book.samples.values()].sort((a, b) => a.preparedAt.localeCompare(b.preparedAt)).at(-1)?.lotId;
  return usable.find(({ id }) => id === used)?.id ?? usable.at(-1)?.id ?? null;
}

/** What somebody would wear: the work of the plan, else of the last cassette; the pump and lot of the last time, where they are to be had. */
export function wearerFor(workerId: string, shiftId: string, book: Book): WearerDraft {
  const day = dayIn(shiftId);
  const plan = plannedOn(book, day, siteIn(shiftId)).find((one) => one.workerId === workerId);
  const last = lastWorn(workerId, day, book);
  const pumpId = last?.pumpId ?? null;
  return {
    workerId,
    planId: plan?.planId ?? null,
    taskIds: plan?.taskIds ?? last?.taskIds ?? [],
    jobClassificationId: (plan ?? last)?.jobClassificationId ?? book.people.get(workerId)?.jobClassificationId ?? null,
    pumpId: pumpId === null || isOut(book.pumps.get(pumpId), day) ? null : pumpId,
    lotId: usualLot(day, book),
  };
}

/** Two who wore the same pump on different days: the second one is given a pump that is free, or none. */
function eachItsOwn(wearers: readonly WearerDraft[], day: string, book: Book): readonly WearerDraft[] {
  const taken = new Set<string>();
  const wanted = new Set(wearers.map(({ pumpId }) => pumpId));
  const free = [...book.pumps.values()].filter((pump) => !isOut(pump, day) && !wanted.has(pump.id)).map(({ id }) => id);
  return wearers.map((wearer) => {
    const { pumpId } = wearer;
    if (pumpId === null || !taken.has(pumpId)) {
      if (pumpId !== null) taken.add(pumpId);
      return wearer;
    }
    return { ...wearer, pumpId: free.shift() ?? null };
  });
}

/** The day that was made ready last at this site: who charges, and which pump lies ready, is often the same. */
const dayBefore = (shiftId: string, book: Book): DayPlanRecord | undefined =>
  [...book.dayPlans.values()]
    .filter(({ siteId, workOn }) => siteId === siteIn(shiftId) && workOn < dayIn(shiftId))
    .sort((a, b) => a.workOn.localeCompare(b.workOn))
    .at(-1);

/** What was said of this day stands; before that, the plans and what was worn last. */
export function firstDraft(shiftId: string, book: Book): DayDraft {
  const prepared = book.dayPlans.get(shiftId)?.prepared ?? null;
  if (prepared !== null)
    return {
      wearers: prepared.wearers.map(({ workerId, planId, taskIds, jobClassificationId, pumpId, lotId }) => ({
        ...{ workerId, planId, taskIds, jobClassificationId, pumpId, lotId },
      })),
      sparePumpIds: prepared.sparePumpIds,
      spareCassettes: String(prepared.spareCassettesCount),
      chargedById: prepared.chargedById,
      remark: prepared.remark ?? '',
    };
  const before = dayBefore(shiftId, book)?.prepared ?? null;
  const planned = plannedOn(book, dayIn(shiftId), siteIn(shiftId)).filter(({ missed }) => missed === null);
  const workerIds = [...new Set(planned.map(({ workerId }) => workerId))];
  const wearers = eachItsOwn(
    workerIds.map((id) => wearerFor(id, shiftId, book)),
    dayIn(shiftId),
    book,
  );
  const worn = new Set(wearers.map(({ pumpId }) => pumpId));
  return {
    wearers,
    sparePumpIds: (before?.sparePumpIds ?? []).filter(
      (id) => !isOut(book.pumps.get(id), dayIn(shiftId)) && !worn.has(id),
    ),
    spareCassettes: before === null ? '' : String(before.spareCassettesCount),
    chargedById: before?.chargedById ?? null,
    remark: '',
  };
}

const countOf = (text: string): number | null => {
  const typed = text.trim();
  return typed === '' ? 0 : /^\d{1,3}$/.test(typed) && Number(typed) <= 200 ? Number(typed) : null;
};

/** As a body; what cannot be read stands as nothing, and is told when it is saved. */
export const bodyOf = (draft: DayDraft, shiftId: string, asked: Prepared['asked']): Without<Prepared, 'knew'> => ({
  shiftId,
  asked,
  wearers: draft.wearers
    .filter(({ taskIds }) => taskIds.length > 0)
    .map((wearer) => ({ ...wearer, taskIds: [...wearer.taskIds] })),
  sparePumpIds: [...draft.sparePumpIds],
  spareCassettesCount: countOf(draft.spareCassettes) ?? 0,
  chargedById: draft.chargedById,
  remark: draft.remark.trim() === '' ? null : draft.remark.trim(),
});

export function readDay(draft: DayDraft, book: Book) {
  const read = fieldReader(partsWords);
  if (draft.wearers.length === 0) read.add('wearers', words.whoNobody);
  for (const { workerId, taskIds } of draft.wearers)
    if (taskIds.length === 0) read.add(`work-${workerId}`, words.workMissing(book.people.get(workerId)?.name ?? ''));
  if (countOf(draft.spareCassettes) === null) read.add('spareCassettes', words.spare.cassettesBad);
  read.text('remark', words.spare.remark, draft.remark, { optional: true, most: 2000 });
  return read.errors;
}

/** The day as it would stand if this were saved: what is still missing can be told while it is typed. */
export function bookWith(draft: DayDraft, shiftId: string, asked: Prepared['asked'], book: Book): Book {
  const held = book.dayPlans.get(shiftId);
  const { shiftId: _, ...body } = bodyOf(draft, shiftId, asked);
  const blank = { key: `dayPlan:${shiftId}`, id: shiftId, factIds: [], strikes: [], conflicts: [], notUnderstood: [] };
  const record: DayPlanRecord = {
    ...(held ?? { ...blank, siteId: siteIn(shiftId), workOn: dayIn(shiftId), labels: [] }),
    prepared: { ...body, factId: '' },
  };
  return { ...book, dayPlans: new Map([...book.dayPlans, [shiftId, record]]) };
}
