/** The values of a box that were changed, each as a correction of the fact that packed it. */
import type { BoxRecord } from '#records/book.ts';
import type { FactBody } from '#records/fact.ts';
import type { Asked, BoxBody } from './boxText.ts';

export type BoxChange = Asked & Pick<BoxBody, 'sampleIds'>;

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

export const changesOf = ({ packed, packedFactId }: BoxRecord, changed: BoxChange): FactBody<'valueCorrected.v1'>[] =>
  (Object.keys(changed) as (keyof BoxChange)[])
    .filter((name) => !same(packed[name], changed[name]))
    .map((name) => ({
      replaces: packedFactId,
      path: `/${name}`,
      old: packed[name],
      new: changed[name],
      supersedes: null,
    }));
