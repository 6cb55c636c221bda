/** The box for the laboratory: what was packed, every revision of its custody sheet, hand-over and arrival. */
import type { BoxRecord } from './book.ts';
import { type FoldInput, firstOf, ofKind } from './foldCase.ts';

type Issue = BoxRecord['issues'][number];

/** `custodySheetIssued.v1` holds the sheet as it was made: the same box, revision and moment are the same sheet. */
const momentOf = ({ sheet }: Issue): unknown => (sheet as { issuedInstant?: unknown }).issuedInstant;
const isSame = (one: Issue, other: Issue): boolean =>
  one.revision === other.revision &&
  (one.pdfHash === other.pdfHash || (momentOf(one) !== undefined && momentOf(one) === momentOf(other)));

/**
 * A sheet that was written down again from its PDF, because the phone that issued it was lost, is one with the act itself when that
 * comes later: the act stands. Of two that were both written down from a PDF the first stands.
 */
function onceEach(issues: readonly (Issue & { readonly fromPaper: boolean })[]): Issue[] {
  const stand: Issue[] = [];
  for (const { fromPaper, ...issue } of [...issues].sort((a, b) => Number(a.fromPaper) - Number(b.fromPaper)))
    if (!fromPaper || !stand.some((other) => isSame(other, issue))) stand.push(issue);
  return stand;
}

/** Null until the fact that packed it has arrived. Two sheets of one revision, from two devices, are both listed. */
export function foldBox({ base, facts }: FoldInput): BoxRecord | null {
  const packed = firstOf(facts, 'boxPacked.v1');
  if (!packed) return null;
  const handedOver = firstOf(facts, 'boxHandedOver.v1');
  const issues = ofKind(facts, 'custodySheetIssued.v1').map(({ id, body, happened, why }) => ({
    ...body,
    factId: id,
    at: happened.at,
    why,
    // Nobody types an issue in: only what was read out of a PDF is marked so.
    fromPaper: happened.entry === 'typed',
  }));
  return {
    ...base,
    packed: packed.body,
    packedFactId: packed.id,
    packedAt: packed.happened.at,
    issues: onceEach(issues).sort((a, b) => Number(a.revision) - Number(b.revision)),
    handedOver: handedOver && { ...handedOver.body, at: handedOver.happened.at },
    arrivedAt: firstOf(facts, 'boxArrived.v1')?.happened.at ?? null,
    keptDifferences: ofKind(facts, 'sheetDifferenceKept.v1').map(({ id, body, why }) => ({
      revision: body.revision,
      recordHash: body.recordHash,
      why,
      factId: id,
    })),
  };
}
