/** The laboratory's results for one sample, in order, and what two devices disagree about. */
import type { Conflict, SampleRecord } from './book.ts';
import { heavier } from './careful.ts';
import type { Fact } from './fact.ts';
import type { FoldInput } from './foldCase.ts';
import { standingStatement } from './statements.ts';

type Result = Fact<'resultReceived.v1'>;
const reportedAs = ({ body }: Result): string => body.reportNumber;

/**
 * Newest report last. One report keyed in twice with two masses, on two devices, is a conflict: the heavier stands, so it comes last
 * of its report.
 */
export function resultsOf(
  results: readonly Result[],
  settlements: FoldInput['settlements'],
): { readonly conflicts: readonly (Conflict | null)[]; readonly results: SampleRecord['results'] } {
  const byReport = new Map<string, Result[]>();
  for (const result of results) byReport.set(reportedAs(result), [...(byReport.get(reportedAs(result)) ?? []), result]);
  const conflicts: (Conflict | null)[] = [];
  const reports = [...byReport.values()].map((facts) => {
    const careful = heavier;
    const statement = { facts, path: '/mass', valueIn: (fact: Result) => fact.body.mass, careful, settlements };
    const { fact, conflict } = standingStatement<'resultReceived.v1'>(statement);
    conflicts.push(conflict);
    return { standing: fact as Result, inOrder: [...facts.filter((other) => other !== fact), fact as Result] };
  });
  const dayOf = ({ standing }: { standing: Result }): string => standing.body.reportedOn ?? standing.body.receivedOn;
  reports.sort((a, b) => (dayOf(a) < dayOf(b) ? -1 : dayOf(a) > dayOf(b) ? 1 : 0));
  return {
    conflicts,
    results: reports.flatMap(({ inOrder }) => inOrder.map(({ id, body }) => ({ ...body, factId: id }))),
  };
}
