/**
 * Other devices of the same book: what each held when it made the last file of its that was taken in here. Nothing else counts: what was
 * merely sent may never have arrived. Kept beside the book, never in the journal; so is the name that this device goes by.
 */
import { sequenceOf, writerOf } from '#records/chain.ts';
import { factId } from '#records/common.ts';
import type { BookHeader } from '#records/fileFormat.ts';
import type { BookDatabase } from '../database.ts';
import type { StorageFailure } from '../failures.ts';
import { type ChainHead, idsOf, knownWhole, noteWhole } from '../heads.ts';
import { keepBeside } from '../keepBeside.ts';
import { theSession } from '../session.ts';
import type { Partner } from './handOver.ts';

export interface PartnerRow {
  readonly writer: string;
  readonly deviceName: string | null;
  /** Up to where, without a gap, it held each writer. */
  readonly holds: readonly ChainHead[];
  /** Papers and pictures that its facts named and it did not hold. */
  readonly lacksFiles: readonly string[];
  readonly lastFileAt: string;
}

/** Decided here: more devices than any firm has; what lies beyond is the one not heard of for longest. */
const mostPartners = 50;
const longestName = 40;
const writerShape = /^[0-9a-hjkmnp-tv-z]{12}$/;

async function rows(db: BookDatabase): Promise<readonly PartnerRow[]> {
  return ((await db.meta.get('partners'))?.value as readonly PartnerRow[] | undefined) ?? [];
}

/** null when no file of that device was ever taken in here. */
export async function partnerRow(db: BookDatabase, writer: string): Promise<PartnerRow | null> {
  return (await rows(db)).find((row) => row.writer === writer) ?? null;
}

const covers = (newer: PartnerRow, older: PartnerRow): boolean =>
  older.holds.every((head) =>
    newer.holds.some(
      ({ factId }) => writerOf(factId) === writerOf(head.factId) && sequenceOf(factId) >= sequenceOf(head.factId),
    ),
  );

/** A file that was lying about is older than one taken in before: what the device held then says nothing. Its clock alone is not believed. */
const isLater = (newer: PartnerRow, older: PartnerRow): boolean =>
  newer.lastFileAt > older.lastFileAt || (covers(newer, older) && !covers(older, newer));

const rowOf = ({ from, holds, lacksFiles }: BookHeader): PartnerRow | null =>
  from === undefined || !writerShape.test(from.writer)
    ? null
    : {
        writer: from.writer,
        deviceName: from.deviceName === null ? null : named(from.deviceName),
        holds: (holds ?? [])
          .filter((head) => factId.safeParse(head.factId).success)
          .map(({ factId, link }) => ({ factId, link })),
        lacksFiles: (lacksFiles ?? []).filter((hash) => /^[0-9a-f]{64}$/.test(hash)),
        lastFileAt: from.madeAt,
      };

/**
 * A file of another device was taken in whole. Files without a maker, older ones, and this device's own tell nothing and change nothing.
 * Where it cannot be noted the entries are here all the same: that device is sent too much until its next file.
 */
export async function notePartner(header: BookHeader): Promise<StorageFailure | null> {
  const { db, writer } = theSession();
  const row = rowOf(header);
  if (row === null || row.writer === writer) return null;
  return keepBeside(db, () => notedIn(db, row));
}

const notedIn = (db: BookDatabase, row: PartnerRow) =>
  db.transaction('rw', db.meta, async () => {
    const known = ((await db.meta.get('partners'))?.value as readonly PartnerRow[] | undefined) ?? [];
    const before = known.find((held) => held.writer === row.writer);
    if (before !== undefined && !isLater(row, before)) return;
    const others = known.filter((held) => held !== before);
    const latest = [row, ...others].sort((a, b) => (a.lastFileAt < b.lastFileAt ? 1 : -1)).slice(0, mostPartners);
    await db.meta.put({ key: 'partners', value: latest });
  });

/** A device that is no longer used: it is not offered any more, until a file of it is taken in again. null: kept. */
export function forgetPartner(writer: string): Promise<StorageFailure | null> {
  const { db } = theSession();
  return keepBeside(db, () =>
    db.transaction('rw', db.meta, async () => {
      const known = ((await db.meta.get('partners'))?.value as readonly PartnerRow[] | undefined) ?? [];
      await db.meta.put({ key: 'partners', value: known.filter((row) => row.writer !== writer) });
    }),
  );
}

/** Of what a partner says it held, what may be left out for it: a head that stands on other bytes here counts for nothing. */
const believed = (holds: readonly ChainHead[], ownLinks: ReadonlyMap<string, string>): readonly ChainHead[] =>
  holds.filter(({ factId, link }) => (ownLinks.get(factId) ?? link) === link);

/** The same, asked of the journal; `here`: this device holds that entry too. */
export async function believedHeads(
  db: BookDatabase,
  holds: readonly ChainHead[],
): Promise<readonly { readonly head: ChainHead; readonly here: boolean }[]> {
  const own = await db.journal.bulkGet(holds.map(({ factId }) => factId));
  const ownLinks = new Map(own.flatMap((row) => (row === undefined ? [] : [[row.id, row.link] as const])));
  return believed(holds, ownLinks).map((head) => ({ head, here: ownLinks.has(head.factId) }));
}

/**
 * The partners, last heard of first. Heads are found and entries beyond them counted by the index; no entry is read over. Its questions
 * stand here one after the other: an await one deeper leaves the zone in which a live query notices what was asked.
 */
export async function partnersIn(db: BookDatabase): Promise<readonly Partner[]> {
  const known = ((await db.meta.get('partners'))?.value as readonly PartnerRow[] | undefined) ?? [];
  if (known.length === 0) return [];
  const heads: { writer: string; toCount: number }[] = [];
  for (let after = ''; ; ) {
    const next = await db.journal.where('id').above(after).first();
    if (next === undefined) break;
    const writer = writerOf(next.id);
    const last = await db.journal.where('id').between(`${writer}.`, `${writer}.\uffff`).last();
    if (last !== undefined) heads.push({ writer, toCount: sequenceOf(last.id) });
    after = `${writer}.\uffff`;
  }
  const claims = known.flatMap(({ holds }) => holds);
  const own = await db.journal.bulkGet(claims.map(({ factId }) => factId));
  const ownLinks = new Map(own.flatMap((row) => (row === undefined ? [] : [[row.id, row.link] as const])));
  const asked = known.flatMap((row) => rangesOf(row, ownLinks, heads, db));
  const counts = await Promise.all(asked.map(({ of, from, to }) => idsOf(db, of, from, to).count()));
  return known.map((row) => partnerOf(row, asked, counts, db));
}

interface Asked {
  readonly partner: string;
  readonly what: 'lacks' | 'ahead';
  readonly of: string;
  readonly from: number;
  readonly to: number;
}

/** The ids to count: beyond what it held, and of what it held those that are not known to be here. */
function rangesOf(
  { writer: partner, holds }: PartnerRow,
  ownLinks: ReadonlyMap<string, string>,
  heads: readonly { readonly writer: string; readonly toCount: number }[],
  db: BookDatabase,
): readonly Asked[] {
  const heldTo = new Map(believed(holds, ownLinks).map(({ factId }) => [writerOf(factId), sequenceOf(factId)]));
  const lacks = heads.map(({ writer: of, toCount }): Asked => {
    return { partner, what: 'lacks', of, from: (heldTo.get(of) ?? 0) + 1, to: toCount };
  });
  const ahead = [...heldTo].map(
    ([of, to]): Asked => ({ partner, what: 'ahead', of, from: knownWhole(db, of) + 1, to }),
  );
  return [...lacks, ...ahead].filter(({ from, to }) => from <= to);
}

function partnerOf(row: PartnerRow, asked: readonly Asked[], counts: readonly number[], db: BookDatabase): Partner {
  let lacksCount = 0;
  let aheadCount = 0;
  for (const [index, { partner, what, of, from, to }] of asked.entries()) {
    if (partner !== row.writer) continue;
    const here = counts[index] ?? 0;
    if (what === 'lacks') lacksCount += here;
    else if (here === to - from + 1) noteWhole(db, of, to);
    else aheadCount += to - from + 1 - here;
  }
  const { writer, deviceName, lastFileAt } = row;
  return { writer, deviceName, lastFileAt, lacksCount, aheadCount };
}

export const partners = (): Promise<readonly Partner[]> => partnersIn(theSession().db);

const named = (typed: string): string | null => typed.trim().replace(/\s+/g, ' ').slice(0, longestName) || null;

/** What this device calls itself in the files that it makes; null when it has no name. */
export async function deviceNameIn(db: BookDatabase): Promise<string | null> {
  return ((await db.meta.get('deviceName'))?.value as string | null | undefined) ?? null;
}

/** An empty name takes it away. null: kept. */
export function setDeviceName(typed: string): Promise<StorageFailure | null> {
  return keepBeside(theSession().db, ({ meta }) => meta.put({ key: 'deviceName', value: named(typed) }));
}
