/** One worker's work day. Its id is the worker and the day; whatever is stated first makes the record. */
import type { WorkdayRecord } from './book.ts';
import { longerWork } from './careful.ts';
import type { FactBody } from './fact.ts';
import { type FoldInput, ofKind, withConflicts } from './foldCase.ts';
import { rosterOf } from './roster.ts';
import { standingStatement } from './statements.ts';
import { inTime, issuedBy } from './telling.ts';

type OtherWork = FactBody<'otherWorkAsked.v1'>;
const asked = ({ callOut, secondSite, secondEmployer }: OtherWork): readonly string[] => [
  callOut,
  secondSite,
  secondEmployer,
];
const yesCount = (answers: unknown): number =>
  (answers as readonly string[]).filter((answer) => answer === 'yes').length;

export function foldWorkday(input: FoldInput): WorkdayRecord | null {
  const { base, facts, settlements } = input;
  if (facts.length === 0) return null;
  const hours = standingStatement({
    facts: ofKind(facts, 'workHoursStated.v1'),
    path: '/pieces',
    valueIn: ({ body }) => body.pieces,
    careful: longerWork,
    settlements,
    strikes: base.strikes,
  });
  const other = standingStatement({
    facts: ofKind(facts, 'otherWorkAsked.v1'),
    path: '/otherWork',
    valueIn: ({ body }) => asked(body),
    careful: (a, b) => yesCount(a) - yesCount(b),
    settlements,
    strikes: base.strikes,
  });
  const described = standingStatement({
    facts: ofKind(facts, 'dayDescribed.v1'),
    path: '/regular',
    valueIn: ({ body }) => body.regular,
    careful: (a, b) => Number(a === 'no') - Number(b === 'no'),
    settlements,
    strikes: base.strikes,
  });
  const day = described.fact;
  const roster = rosterOf(input);
  return {
    ...withConflicts(base, [hours.conflict, other.conflict, described.conflict, ...roster.conflicts]),
    workerId: base.id.slice(0, 12),
    workOn: base.id.slice(13),
    pieces: hours.fact?.body.pieces ?? null,
    otherWork: other.fact?.body ?? null,
    piecesFactId: hours.fact?.id ?? null,
    otherWorkFactId: other.fact?.id ?? null,
    explained: ofKind(facts, 'minutesExplained.v1').map(({ id, body }) => ({ ...body, factId: id })),
    worked: roster.worked,
    represents: ofKind(facts, 'representsStated.v1').map(({ id, body }) => ({ workerIds: body.workerIds, factId: id })),
    recordsIssued: inTime(facts, 'exposureRecordIssued.v1').map((fact) => ({ ...fact.body, ...issuedBy(fact) })),
    regular: day && { regular: day.body.regular, reason: day.body.reason, factId: day.id },
  };
}
