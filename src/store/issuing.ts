/**
 * A paper that leaves the firm: its bytes are made first, then one write brings bytes and fact together, or neither. The caller hands in
 * the maker and the editions of the rules, since the store knows neither.
 */
import type { NewFact } from '#records/fact.ts';
import { now } from './device.ts';
import { hashOf } from './files.ts';
import { type ChainHead, chainHeads } from './heads.ts';
import { appVersion } from './version.ts';
import { type Written, write } from './write.ts';

export interface OccasionHere {
  readonly firmName: string;
  readonly practice: boolean;
  readonly issuedInstant: string;
  readonly zone: string;
  readonly heads: readonly ChainHead[];
  readonly editions: { readonly app: string; readonly rules: string; readonly formulas: string };
}

export interface WhereIssued {
  readonly firmName: string;
  readonly practice: boolean;
  readonly zone: string;
  readonly editions: { readonly rules: string; readonly formulas: string };
}

/** Moment, heads and editions, as they stand now. */
export async function occasionHere({ firmName, practice, zone, editions }: WhereIssued): Promise<OccasionHere> {
  const heads = await chainHeads();
  return { firmName, practice, zone, issuedInstant: now(), heads, editions: { app: appVersion, ...editions } };
}

/** What every fact of an issued paper holds beside its own values. */
export type IssuedWith = {
  readonly pdfHash: string;
  readonly editions: OccasionHere['editions'];
  readonly heads: { readonly factId: string; readonly link: string }[];
};

export interface Issue<V> {
  readonly where: WhereIssued;
  readonly make: (occasion: OccasionHere) => Promise<{ readonly bytes: Uint8Array; readonly values: V }>;
  readonly factOf: (values: V, issued: IssuedWith) => NewFact;
  readonly draftKey?: string;
}

export type IssueOutcome = Written | { readonly kind: 'notMade' };

export async function issuePaper<V>({ where, make, factOf, draftKey }: Issue<V>): Promise<IssueOutcome> {
  const occasion = await occasionHere(where);
  let made: { readonly bytes: Uint8Array; readonly values: V };
  try {
    made = await make(occasion);
  } catch (error) {
    console.error(error);
    return { kind: 'notMade' };
  }
  const file = { hash: hashOf(made.bytes), type: 'application/pdf', bytes: made.bytes };
  const { editions, heads } = occasion;
  // Values are kept as plain JSON: what is undefined in them is not there.
  const values = JSON.parse(JSON.stringify(made.values)) as V;
  const fact = factOf(values, { pdfHash: file.hash, editions, heads: heads.map((head) => ({ ...head })) });
  return write([fact], { files: [file], ...(draftKey === undefined ? {} : { draftKey }) });
}
