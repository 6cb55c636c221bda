/** How each pump stands today, so that the right one is picked, and what the next check of it is for. */
import { compareInstants, wallTimeOf } from '#core/calendar.ts';
import { checksOfSample } from '#findings/checks.ts';
import type { Book, FlowCheckRecord, PumpRecord, SampleRecord } from '#records/book.ts';
import { en as words } from '#words/flow.ts';
import { formatEstimate } from '#words/quantity.ts';
import type { Purpose } from './flowDraft.ts';
import { savedFlow } from './soFar.ts';

export const checksInOrder = (book: Book): FlowCheckRecord[] =>
  [...book.flowChecks.values()].sort((a, b) => compareInstants(a.happened.at, b.happened.at));

const samplesOf = (pumpId: string, book: Book): SampleRecord[] =>
  [...book.samples.values()].filter((sample) => sample.pumpId === pumpId && sample.voided === null);

/** A sample of this pump that came off and has no flow after. */
export const waitingForAfter = (pumpId: string, book: Book): SampleRecord | undefined =>
  samplesOf(pumpId, book).find((sample) => sample.stopped !== null && checksOfSample(sample, book).after === null);

const onWorker = (pumpId: string, book: Book): SampleRecord | undefined =>
  samplesOf(pumpId, book).find((sample) => sample.putOn !== null && sample.stopped === null);

export const purposeFor = (pumpId: string, book: Book): Purpose =>
  waitingForAfter(pumpId, book) ? 'after' : onWorker(pumpId, book) ? 'between' : 'before';

const nameOf = (sample: SampleRecord, book: Book): string => book.people.get(sample.workerId ?? '')?.name ?? '';

/** Those that are to be worn today first; then by the numbers painted on them, as they lie in the case; out of use last. */
export function pumpsInOrder(book: Book, shiftId: string): PumpRecord[] {
  const { wearers = [], sparePumpIds = [] } = book.dayPlans.get(shiftId)?.prepared ?? {};
  const asked = [...wearers.map(({ pumpId }) => pumpId), ...sparePumpIds];
  const rank = ({ id, held }: PumpRecord): number => (asked.includes(id) ? 0 : held?.retired ? 2 : 1);
  return [...book.pumps.values()].sort(
    (a, b) => rank(a) - rank(b) || a.serial.localeCompare(b.serial, 'en', { numeric: true }),
  );
}

/** The flow of a saved check as printed, or that there is none. */
export function flowText(check: FlowCheckRecord, book: Book): string {
  const { flow } = savedFlow(check, book);
  return flow === null ? words.noFlow : formatEstimate(flow.estimate, flow.unit);
}

export function pumpDetail(pumpId: string, book: Book): string {
  const waiting = waitingForAfter(pumpId, book);
  if (waiting) return words.pumpStands.wantsAfter(nameOf(waiting, book));
  const worn = onWorker(pumpId, book);
  if (worn) return words.pumpStands.onWorker(nameOf(worn, book));
  const last = checksInOrder(book).findLast((check) => check.pumpId === pumpId);
  if (last === undefined) return words.pumpStands.notChecked;
  return words.pumpStands.checked(flowText(last, book), wallTimeOf(last.happened.at, last.happened.zone).time);
}
