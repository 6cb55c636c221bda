/** The box for the laboratory: what was packed, every revision of its custody sheet, hand-over and arrival. */
import type { BoxRecord } from './book.ts';
import { type FoldInput, firstOf, ofKind } from './foldCase.ts';

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
  }));
  return {
    ...base,
    packed: packed.body,
    packedFactId: packed.id,
    packedAt: packed.happened.at,
    issues: issues.sort((a, b) => Number(a.revision) - Number(b.revision)),
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
