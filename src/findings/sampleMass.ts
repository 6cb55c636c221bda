/** The mass that a sample's concentration stands on: the laboratory's figure, its field blanks, and what is open about it. */
import { type BlankMass, massLessBlanks } from '#core/blankCorrectedMass.ts';
import { exactly, lessThan } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import type { Book, SampleRecord } from '#records/book.ts';
import { type Reason, reason } from './reason.ts';

export type Result = SampleRecord['results'][number];

export interface SampleMass {
  readonly result: Result;
  readonly mass: Term;
  /** The laboratory does not show that the deposit on the cassette's inner wall is in the figure. */
  readonly wallOpen: boolean;
  readonly reasons: readonly Reason[];
}

const massTerm = (result: Result): Term =>
  recorded(
    'massReported',
    'µg',
    result.mass.kind === 'measured' ? exactly(result.mass.massUg) : lessThan(result.mass.reportingLimitUg),
    [result.factId],
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
  /** null: one of them is void or without a result, so that nothing may be subtracted. */
  readonly masses: readonly BlankMass[] | null;
  readonly reasons: readonly Reason[];
}

function readBlanks(sample: SampleRecord, book: Book): Blanks {
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
    if (!blank.voided) masses.push({ mass: massTerm(result), reportingLimitUg: result.reportingLimitUg });
  }
  return { masses: masses.length === blanks.length ? masses : null, reasons };
}

function massReasons(result: Result): Reason[] {
  const because = [result.factId];
  const { mass, reportingLimitUg } = result;
  const found: Reason[] = [];
  if (mass.kind === 'lessThan')
    found.push(reason('belowReportingLimit', because, { reportingLimitUg: mass.reportingLimitUg }));
  else if (reportingLimitUg === null) found.push(reason('reportingLimitBlank', because));
  else if (mass.massUg < reportingLimitUg)
    found.push(reason('massBelowItsLimit', because, { massUg: mass.massUg, reportingLimitUg }));
  if (result.wallDeposit === 'notStated') found.push(reason('wallDepositNotStated', because));
  if (result.wallDeposit === 'no') found.push(reason('wallDepositNotIncluded', because));
  if (result.accreditation === null) found.push(reason('accreditationBlank', because));
  return found;
}

const sameMass = (a: Result, b: Result): boolean =>
  a.mass.kind === 'measured' && b.mass.kind === 'measured'
    ? a.mass.massUg === b.mass.massUg
    : a.mass.kind === b.mass.kind && massTerm(a).estimate.kind === massTerm(b).estimate.kind;

/** null without a result. The newest report judges; two versions of one report are a conflict of the record. */
export function sampleMassOf(sample: SampleRecord, book: Book): SampleMass | null {
  const result = sample.results.at(-1);
  if (!result) return null;
  const because = [result.factId];
  const reported = massTerm(result);
  const limit =
    result.reportingLimitUg === null
      ? null
      : recorded('reportingLimit', 'µg', exactly(result.reportingLimitUg), because);
  const blanks = readBlanks(sample, book);
  const corrected = massLessBlanks(reported, limit, blanks.masses ?? [], result.blankCorrected);
  const reasons = [...massReasons(result), ...blanks.reasons];
  if (corrected.kind === 'subtracted') {
    const blankUg = blankMean(blanks.masses ?? []);
    reasons.push(reason('blanksSubtracted', because, { blankUg }));
  } else if (corrected.why !== 'alreadyCorrected' && blanks.reasons.some(({ key }) => key === 'blankDetected'))
    reasons.push(reason('blanksNotSubtracted', because));
  if (sample.results.some((other) => !sameMass(other, result)))
    reasons.push(
      reason(
        'resultsDiffer',
        sample.results.map(({ factId }) => factId),
      ),
    );
  return { result, mass: corrected.mass, wallOpen: result.wallDeposit !== 'yes', reasons };
}

const blankMean = (masses: readonly BlankMass[]): number =>
  masses.reduce((sum, { mass }) => sum + (mass.estimate.kind === 'exact' ? mass.estimate.value : 0), 0) / masses.length;
