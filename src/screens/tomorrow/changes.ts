/** What differs in the morning from what was said the evening before, in sentences. */
import type { Book, DayPlanRecord } from '#records/book.ts';
import { en } from '#words/tomorrowScreen.ts';
import { bodyOf, type DayDraft, type WearerDraft } from './dayDraft.ts';

const words = en.changes;

type Prepared = NonNullable<DayPlanRecord['prepared']>;

const same = (a: readonly string[], b: readonly string[]): boolean => [...a].sort().join() === [...b].sort().join();

function ofWearer(was: Prepared['wearers'][number], is: WearerDraft, name: string, book: Book): readonly string[] {
  return [
    ...(was.pumpId === is.pumpId ? [] : [words.pump(name, book.pumps.get(is.pumpId ?? '')?.serial ?? null)]),
    ...(was.lotId === is.lotId ? [] : [words.lot(name, book.lots.get(is.lotId ?? '')?.lotNumber ?? null)]),
    ...(same(was.taskIds, is.taskIds) ? [] : [words.work(name)]),
  ];
}

export function changesSince(prepared: Prepared, draft: DayDraft, shiftId: string, book: Book): readonly string[] {
  const name = (id: string): string => book.people.get(id)?.name ?? '';
  const wearers = draft.wearers.flatMap((is) => {
    const was = prepared.wearers.find(({ workerId }) => workerId === is.workerId);
    return was === undefined ? [words.added(name(is.workerId))] : ofWearer(was, is, name(is.workerId), book);
  });
  const gone = prepared.wearers.filter((was) => !draft.wearers.some(({ workerId }) => workerId === was.workerId));
  const is = bodyOf(draft, shiftId, 'morning');
  const besideSame =
    same(prepared.sparePumpIds, is.sparePumpIds) &&
    prepared.spareCassettesCount === is.spareCassettesCount &&
    prepared.chargedById === is.chargedById &&
    prepared.remark === is.remark;
  return [...gone.map(({ workerId }) => words.gone(name(workerId))), ...wearers, ...(besideSame ? [] : [words.spare])];
}
