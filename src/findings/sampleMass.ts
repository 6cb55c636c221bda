/** The mass that a sample's concentration stands on: the laboratory's figure, its field blanks, and what is open about it. */
import { type BlankMass, massLessBlanks } from '#core/blankCorrectedMass.ts';
import { exactly, lessThan } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import type { Book, SampleRecord } from '#records/book.ts';
import { isShownLater } from '#records/results.ts';
import { blocking, type Reason, reason } from './reason.ts';
import { fieldReasons } from './sampleReasons.ts';

export type Result = SampleRecord['results'][number];

export interface SampleMass {
  readonly result: Result;
  readonly mass: Term;
  /** The laboratory does not show that the deposit on the cassette's inner wall is in the figure. */
  readonly wallOpen: boolean;
  readonly reasons: readonly Reason[];
}

/** A "less than" is bounded by the larger of its own number and the reporting limit that the report states. */
const massTerm = ({ mass, reportingLimitUg, factId }: Result): Term =>
  recorded(
    'massReported',
    'µg',
    mass.kind === 'measured' ? exactly(mass.massUg) : lessThan(Math.max(mass.reportingLimitUg, reportingLimitUg ?? 0)),
    [factId],
  );

/** Field blanks of the same shift or the same box, of the sample's lot. */
export function blanksOf(sample: SampleRecord, book: Book): SampleRecord[] {
  const boxed = new Set<string>();
  for (const { packed } of book.boxes.values())
    if (packed.sampleIds.includes(sample.id)) for (const id of packed.sampleIds) boxed.add(id);
  const found: SampleRecord[] = [];
  for (const other of book.samples.values())
    if (
      other.sampleKind === 'blank' &&
      other.lotId === sample.lotId &&
      (other.shiftId === sample.shiftId || boxed.has(other.id))
    )
      found.push(other);
  return found.sort((a, b) => (a.id < b.id ? -1 : 1));
}

interface Blanks {
  /** null: one of them is void, in doubt, without a result or not at hand, so that nothing may be subtracted. */
  readonly masses: readonly BlankMass[] | null;
  readonly reasons: readonly Reason[];
}

/** A cassette of the box that is not in this slice may be a blank that would forbid it. */
const boxComplete = (sample: SampleRecord, book: Book): boolean => {
  for (const { packed } of book.boxes.values())
    if (packed.sampleIds.includes(sample.id) && !packed.sampleIds.every((id) => book.samples.has(id))) return false;
  return true;
};

/** Only a blank that nothing speaks against lowers a figure. */
function isSound(blank: SampleRecord, book: Book): boolean {
  const [last] = blank.results.slice(-1);
  if (!last || blank.results.some((other) => !sameMass(other, last))) return false;
  return blocking(fieldReasons(blank, book)).length === 0;
}

function readBlanks(sample: SampleRecord, book: Book, mayLower: boolean): Blanks {
  const blanks = blanksOf(sample, book);
  if (blanks.length === 0) return { masses: [], reasons: [reason('blanksMissing', sample.factIds.slice(0, 1))] };
  const reasons: Reason[] = [];
  const masses: BlankMass[] = [];
  for (const blank of blanks) {
    const result = blank.results.at(-1);
    if (!result) continue;
    const params = { blankNumber: blank.sampleNumber };
    if (result.mass.kind === 'measured' && result.mass.massUg > 0)
      reasons.push(reason('blankDetected', [result.factId], { ...params, massUg: result.mass.massUg }));
    if (mayLower && isSound(blank, book))
      masses.push({ mass: massTerm(result), reportingLimitUg: result.reportingLimitUg });
  }
  return { masses: masses.length === blanks.length && boxComplete(sample, book) ? masses : null, reasons };
}

function massReasons(result: Result): Reason[] {
  const because = [result.factId];
  const { mass, reportingLimitUg } = result;
  const found: Reason[] = [];
  const massUg = mass.kind === 'measured' ? mass.massUg : mass.reportingLimitUg;
  if (mass.kind === 'lessThan') found.push(reason('belowReportingLimit', because, { reportingLimitUg: massUg }));
  else if (reportingLimitUg === null) found.push(reason('reportingLimitBlank', because));
  if (reportingLimitUg !== null && massUg < reportingLimitUg)
    found.push(reason('massBelowItsLimit', because, { massUg, reportingLimitUg }));
  if (result.wallDeposit === 'notStated') found.push(reason('wallDepositNotStated', because));
  if (result.wallDeposit === 'no') found.push(reason('wallDepositNotIncluded', because));
  if (result.accreditation === null) found.push(reason('accreditationBlank', because));
  return found;
}

const sameMass = (a: Result, b: Result): boolean =>
  a.mass.kind === 'measured'
    ? b.mass.kind === 'measured' && a.mass.massUg === b.mass.massUg
    : b.mass.kind === 'lessThan' && a.mass.reportingLimitUg === b.mass.reportingLimitUg;

const sameFigure = (a: Result, b: Result): boolean =>
  sameMass(a, b) &&
  a.reportingLimitUg === b.reportingLimitUg &&
  a.blankCorrected === b.blankCorrected &&
  a.wallDeposit === b.wallDeposit;

/** Reports that say something else. Those not shown to be older might be the ones that replace it. */
function otherReports(sample: SampleRecord, judging: Result): Reason[] {
  if (sample.results.length < 2) return [];
  const because = sample.results.map(({ factId }) => factId);
  const found: Reason[] = [];
  if (sample.results.some((other) => !sameMass(other, judging))) found.push(reason('resultsDiffer', because));
  const others = sample.results.filter(({ reportNumber }) => reportNumber !== judging.reportNumber);
  if (others.some((other) => !sameFigure(other, judging) && !isShownLater(judging, other)))
    found.push(reason('reportOrderNotKnown', because));
  return found;
}

/** null without a result. The report that is shown to be the newest judges; two versions of one report are a conflict of the record. */
export function sampleMassOf(sample: SampleRecord, book: Book): SampleMass | null {
  const result = sample.results.at(-1);
  if (!result) return null;
  const because = [result.factId];
  const reported = massTerm(result);
  const limit =
    result.reportingLimitUg === null
      ? null
      : recorded('reportingLimit', 'µg', exactly(result.reportingLimitUg), because);
  const blanks = readBlanks(sample, book, result.blankCorrected === 'no');
  const corrected = massLessBlanks(reported, limit, blanks.masses ?? [], result.blankCorrected);
  const reasons = [...massReasons(result), ...blanks.reasons];
  if (corrected.kind === 'subtracted') {
    const blankUg = blankMean(blanks.masses ?? []);
    reasons.push(reason('blanksSubtracted', because, { blankUg }));
  } else if (corrected.why !== 'alreadyCorrected' && blanks.reasons.some(({ key }) => key === 'blankDetected'))
    reasons.push(reason('blanksNotSubtracted', because));
  reasons.push(...otherReports(sample, result));
  return { result, mass: corrected.mass, wallOpen: result.wallDeposit !== 'yes', reasons };
}

const blankMean = (masses: readonly BlankMass[]): number =>
  masses.reduce((sum, { mass }) => sum + (mass.estimate.kind === 'exact' ? mass.estimate.value : 0), 0) / masses.length;
