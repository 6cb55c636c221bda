/** How pumps and workers stand today, said beside each when one is picked. */
import { wallTimeOf } from '#core/calendar.ts';
import { flowRangeOf } from '#findings/aim.ts';
import { findFlowCheck } from '#findings/flow.ts';
import type { Book, SampleRecord } from '#records/book.ts';
import { en as words } from '#words/fitting.ts';
import { formatEstimate } from '#words/quantity.ts';

const nameOf = (sample: SampleRecord, book: Book): string => book.people.get(sample.workerId ?? '')?.name ?? '';

/** Samples that are neither void nor stopped. */
const open = (book: Book): SampleRecord[] =>
  [...book.samples.values()].filter(({ voided, stopped, sampleKind }) => !voided && !stopped && sampleKind === 'air');

const lastBefore = (pumpId: string, book: Book) =>
  [...book.flowChecks.values()]
    .filter((check) => check.pumpId === pumpId && check.purpose !== 'after')
    .sort((a, b) => a.happened.at.localeCompare(b.happened.at))
    .at(-1);

export function pumpDetail(pumpId: string, book: Book): string {
  const worn = open(book).find((sample) => sample.pumpId === pumpId);
  if (worn) return (worn.putOn ? words.pumpBusy : words.pumpWaiting)(nameOf(worn, book));
  const check = lastBefore(pumpId, book);
  const flow = check === undefined ? null : findFlowCheck(check, book, flowRangeOf(book)).flow;
  if (check === undefined || flow === null) return words.pumpNoFlow;
  const { time } = wallTimeOf(check.happened.at, check.happened.zone);
  return words.pumpFlow(formatEstimate(flow.estimate, flow.unit), time);
}

const serialOf = (pumpId: string, book: Book): string => book.pumps.get(pumpId)?.serial ?? '';

/** Checked and free first, then unchecked, then those on a worker, then those out of use. */
export function pumpsInOrder(book: Book): readonly string[] {
  const isRetired = (pumpId: string): boolean => book.pumps.get(pumpId)?.held?.retired === true;
  const rankInUse = (pumpId: string): number =>
    open(book).some((sample) => sample.pumpId === pumpId) ? 2 : lastBefore(pumpId, book) ? 0 : 1;
  const rank = (pumpId: string): number => (isRetired(pumpId) ? 3 : rankInUse(pumpId));
  return [...book.pumps.keys()].sort(
    (a, b) => rank(a) - rank(b) || serialOf(a, book).localeCompare(serialOf(b, book), 'en', { numeric: true }),
  );
}

export function workerDetail(workerId: string, book: Book): string | undefined {
  const sample = open(book).find((each) => each.workerId === workerId);
  const serial = book.pumps.get(sample?.pumpId ?? '')?.serial ?? '';
  return sample === undefined ? undefined : words.workerHas(serial, sample.putOn !== null);
}

const personName = (personId: string, book: Book): string => book.people.get(personId)?.name ?? '';

/** Without a sample today first. */
export const workersInOrder = (book: Book): readonly string[] =>
  [...book.people.keys()].sort(
    (a, b) =>
      Number(workerDetail(a, book) !== undefined) - Number(workerDetail(b, book) !== undefined) ||
      personName(a, book).localeCompare(personName(b, book)),
  );
