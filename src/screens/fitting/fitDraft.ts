/** What is typed while a worker is prepared, and reading it: into facts, or the sentences of what stands in the way. */
import { freeLabels, type ReadyWearer } from '#findings/season/readyWearers.ts';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { emptyLot, type LotText, readLot } from '#parts/LotLines.tsx';
import { addingNew } from '#parts/PickOrAdd.tsx';
import { emptyPump, type PumpText, readPump } from '#parts/PumpLines.tsx';
import type { Book, ShiftRecord } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { nextFreeNumber } from '#store/write.ts';
import { en as words } from '#words/fitting.ts';
import { en as gear } from '#words/gear.ts';
import { en as partsWords } from '#words/parts.ts';

export interface WorkerText {
  readonly name: string;
  readonly identifier: string;
  readonly language: 'en' | 'es';
}

export interface FitDraft {
  readonly workerId: string | null;
  readonly worker: WorkerText;
  readonly taskIds: readonly string[];
  readonly find: string;
  readonly jobId: string | null;
  readonly jobName: string;
  readonly pumpId: string | null;
  readonly pump: PumpText;
  readonly lotId: string | null;
  readonly lot: LotText;
  /** Of a label that was made for this day; null = that of the worker's own label, else the next free number. */
  readonly number?: string | null;
}

/** What was said of a wearer stands there; what was left open stays as it is. */
export const wearsOf = ({ taskIds, jobClassificationId, pumpId, lotId }: ReadyWearer): Partial<FitDraft> => ({
  taskIds,
  jobId: jobClassificationId,
  ...(pumpId === null ? {} : { pumpId }),
  ...(lotId === null ? {} : { lotId }),
});

/** What was said of the wearer when the day was made ready; else only the lot in use at the last flow check or cassette stands there. */
export function fitDraft(book: Book, wearer: ReadyWearer | undefined): FitDraft {
  const samples = [...book.samples.values()].sort((a, b) => a.preparedAt.localeCompare(b.preparedAt));
  const checks = [...book.flowChecks.values()].sort((a, b) => a.happened.at.localeCompare(b.happened.at));
  const lotId =
    samples.at(-1)?.lotId ?? checks.at(-1)?.lotId ?? (book.lots.size === 1 ? [...book.lots.keys()][0] : null);
  return {
    workerId: null,
    worker: { name: '', identifier: '', language: 'en' },
    taskIds: [],
    find: '',
    jobId: null,
    jobName: '',
    pumpId: null,
    pump: emptyPump,
    lotId: lotId ?? null,
    lot: emptyLot,
    number: null,
    ...(wearer === undefined ? {} : { workerId: wearer.workerId, ...wearsOf(wearer) }),
  };
}

function readWorker(read: FieldReader, text: WorkerText) {
  const name = read.text('worker-name', gear.person.name, text.name);
  const identifier = read.text('worker-identifier', gear.person.identifier, text.identifier, { optional: true });
  return name === null ? null : { name, identifier, language: text.language };
}

export function readFit(draft: FitDraft, today: string) {
  const read = fieldReader(partsWords);
  read.chosen('worker', words.worker, draft.workerId);
  const worker = draft.workerId === addingNew ? readWorker(read, draft.worker) : null;
  if (draft.taskIds.length === 0) read.add('find', words.taskMissing);
  const jobName =
    draft.jobId === addingNew || draft.jobId === null
      ? read.text('job-name', gear.job.name, draft.jobName, { optional: true })
      : null;
  read.chosen('pump', words.pump, draft.pumpId);
  const pump = draft.pumpId === addingNew ? readPump(read, draft.pump) : null;
  read.chosen('lot', words.lot, draft.lotId);
  const lot = draft.lotId === addingNew ? readLot(read, draft.lot, today) : null;
  return { errors: read.errors, worker, jobName, pump, lot };
}

export type ReadFit = ReturnType<typeof readFit>;

const idOf = (picked: string | null): string => (picked === null || picked === addingNew ? newId() : picked);

/** Whom the roster puts at this shift already: nothing is noted twice. */
const isOnRoster = (workdayId: string, shiftId: string, book: Book): boolean =>
  book.workdays.get(workdayId)?.worked?.some((each) => each.shiftId === shiftId) ?? false;

/** New registers first, then the cassette, whose number is put by the book, and the worker's line on the roster of the day. */
export function fitFacts(
  draft: FitDraft,
  read: ReadFit,
  { shift, book, entry }: { readonly shift: ShiftRecord; readonly book: Book; readonly entry: Entry },
): { readonly facts: readonly NewFact[]; readonly sampleId: string } {
  const facts: NewFact[] = [];
  const isNewJob = read.jobName !== null;
  const jobClassificationId = isNewJob ? newId() : draft.jobId === addingNew ? null : draft.jobId;
  if (isNewJob && jobClassificationId !== null)
    facts.push(newFact('jobClassificationAdded.v1', { jobClassificationId, name: read.jobName ?? '' }, entry));
  const workerId = idOf(draft.workerId);
  if (read.worker)
    facts.push(
      newFact('personAdded.v1', { personId: workerId, ...read.worker, jobClassificationId, employer: null }, entry),
    );
  const pumpId = idOf(draft.pumpId);
  if (read.pump) facts.push(newFact('pumpAdded.v1', { pumpId, ...read.pump }, entry));
  const lotId = idOf(draft.lotId);
  if (read.lot) facts.push(newFact('lotAdded.v1', { lotId, ...read.lot }, entry));
  const sampleId = newId();
  const shiftId = shift.id;
  const work = { taskIds: [...draft.taskIds], jobClassificationId };
  const label = draft.number ?? freeLabels(book, shiftId, { workerId, blank: false })[0];
  const sampleNumber = label ?? nextFreeNumber;
  const body = { sampleId, sampleNumber, shiftId, workerId, pumpId, lotId, ...work, follows: null };
  facts.push(newFact('samplePrepared.v1', body, entry));
  const workdayId = `${workerId}.${shift.workOn}`;
  if (!isOnRoster(workdayId, shiftId, book))
    facts.push(newFact('workNoted.v1', { workdayId, shiftId, ...work, respirator: null }, entry));
  return { facts, sampleId };
}
