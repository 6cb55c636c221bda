/** The laboratory's results for one sample, in order, and what two devices disagree about. */
import type { Conflict, SampleRecord, Strike } from './book.ts';
import { canonicalJson } from './canonical.ts';
import { carefulOf, heavier } from './careful.ts';
import type { Fact } from './fact.ts';
import type { FoldInput } from './foldCase.ts';
import { type Standing, standingStatement } from './statements.ts';

type Result = Fact<'resultReceived.v1'>;

/** What a figure rests on. Two devices that key in one report differently in any of these disagree. */
const fields = [
  'mass',
  'reportingLimitUg',
  'blankCorrected',
  'wallDeposit',
  'saeFraction',
  'methodId',
  'laboratoryVolumeL',
  'laboratoryConcentrationUgPerM3',
  'reportedOn',
] as const;

const differ = (facts: readonly Result[], field: (typeof fields)[number]): boolean =>
  new Set(facts.map(({ body }) => canonicalJson(body[field]))).size > 1;

/** What was settled and corrected of the sample. */
interface Said extends Pick<FoldInput, 'settlements'> {
  readonly strikes: readonly Strike[];
}

/** Of one report: the careful one of what two devices keyed in, or the one that a person settled on. */
function ofReport(facts: readonly Result[], said: Said): Standing<'resultReceived.v1'> {
  const field = fields.find((one) => differ(facts, one)) ?? 'mass';
  const path = `/${field}`;
  const careful = carefulOf('resultReceived.v1', path);
  return standingStatement<'resultReceived.v1'>({
    facts,
    path,
    valueIn: ({ body }) => body[field],
    careful,
    ...said,
  });
}

/** A report replaces another only when both bear a date and its own is later. A date that is missing shows no order. */
export const isShownLater = (a: Pick<Result['body'], 'reportedOn'>, b: Pick<Result['body'], 'reportedOn'>): boolean =>
  a.reportedOn !== null && b.reportedOn !== null && a.reportedOn > b.reportedOn;

const dayOf = ({ body }: Result): string => body.reportedOn ?? body.receivedOn;

function byDay(a: Result, b: Result): number {
  const [x, y] = [dayOf(a), dayOf(b)];
  return x < y ? -1 : x > y ? 1 : a.id < b.id ? -1 : 1;
}

/** The report that judges: of those that no other is shown to replace, the heaviest; between equals the id, not the hour it was typed. */
function judging(reports: readonly Result[]): Result | undefined {
  const open = reports.filter(({ body }) => !reports.some((other) => isShownLater(other.body, body)));
  return [...open].sort((a, b) => heavier(a.body.mass, b.body.mass) || (a.id < b.id ? -1 : 1)).at(-1);
}

/**
 * Newest report last: the one that judges. One report keyed in twice and differently, on two devices, is a conflict; the careful one
 * comes last of its report.
 */
export function resultsOf(
  results: readonly Result[],
  said: Said,
): { readonly conflicts: readonly (Conflict | null)[]; readonly results: SampleRecord['results'] } {
  const byReport = new Map<string, Result[]>();
  for (const result of results) {
    const { reportNumber } = result.body;
    byReport.set(reportNumber, [...(byReport.get(reportNumber) ?? []), result]);
  }
  const conflicts: (Conflict | null)[] = [];
  const reports = [...byReport.values()].map((facts) => {
    const { fact, conflict } = ofReport(facts, said);
    conflicts.push(conflict);
    return { standing: fact as Result, inOrder: [...facts.filter((other) => other !== fact), fact as Result] };
  });
  const last = judging(reports.map(({ standing }) => standing));
  reports.sort((a, b) => Number(a.standing === last) - Number(b.standing === last) || byDay(a.standing, b.standing));
  return {
    conflicts,
    results: reports.flatMap(({ inOrder }) => inOrder.map(({ id, body }) => ({ ...body, factId: id }))),
  };
}
