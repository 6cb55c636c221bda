/** Which facts go into a hand-over file: of each writer, what lies beyond what the partner held. */
import { writerOf } from '#records/chain.ts';
import type { BookDatabase } from '../database.ts';
import { type ChainHead, headsIn } from '../heads.ts';
import { believedHeads, type PartnerRow } from './partners.ts';
import type { Stretch } from './spooling.ts';

export interface Scope {
  readonly stretches: readonly Stretch[];
  /** What the file begins after; empty: everything. */
  readonly since: readonly ChainHead[];
  /** Heads of all writers here when it was begun: nothing beyond them is written. */
  readonly upTo: readonly ChainHead[];
}

/** The journal only grows, so heads taken first are one moment of the book, whatever is written while they are being read. */
export async function scopeFor(db: BookDatabase, partner: PartnerRow | null): Promise<Scope> {
  const upTo = await headsIn(db);
  const believed = partner === null ? [] : await believedHeads(db, partner.holds);
  const inOrder = [...believed].sort((a, b) => (a.head.factId < b.head.factId ? -1 : 1));
  const byWriter = new Map(inOrder.map((each) => [writerOf(each.head.factId), each]));
  const stretches = upTo.flatMap((head): Stretch[] => {
    const after = byWriter.get(writerOf(head.factId));
    if (after !== undefined && after.head.factId >= head.factId) return [];
    return [{ after: after?.head ?? null, afterIsHere: after?.here ?? false, upTo: head }];
  });
  return { stretches, since: [...byWriter.values()].map(({ head }) => head), upTo };
}
