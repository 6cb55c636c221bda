/** What a decision stands on: rows read inside its transaction. Every await in here is a table call. */
import { subjectOf } from '#records/about.ts';
import type { AnyRecord } from '#records/book.ts';
import type { Fresh, Needs } from '#records/decide.ts';
import type { NewFact } from '#records/fact.ts';
import type { DerivedRow, JournalRow } from './database.ts';
import { foldRows } from './folding.ts';
import { boxesOf, dayPlansOf, type Lookup, samplesOf } from './lookup.ts';
import { numberLink } from './rows.ts';
import type { Session } from './session.ts';

export type FactsByKey = ReadonlyMap<string, readonly JournalRow[]>;

/** The records that these facts touch. */
export const keysOf = (wanted: readonly NewFact[]): ReadonlySet<string> =>
  new Set(wanted.flatMap((fact) => [...fact.about, subjectOf(fact) ?? []].flat()));

/** From so many records on it is worth asking whether the journal holds fewer facts than that. */
const manyKeys = 64;

/** All facts of each record, one request a record; of more records than there are facts, all facts at once. */
export async function factsAbout(
  session: Session,
  keys: Iterable<string>,
): Promise<Map<string, readonly JournalRow[]>> {
  const { journal } = session.db;
  const wanted = new Set(keys);
  if (wanted.size >= manyKeys && (await journal.count()) < wanted.size)
    return groupedByKey(await journal.toArray(), wanted);
  const found = new Map<string, readonly JournalRow[]>();
  for (const key of wanted) found.set(key, await journal.where('about').equals(key).toArray());
  return found;
}

function groupedByKey(rows: readonly JournalRow[], wanted: ReadonlySet<string>): Map<string, readonly JournalRow[]> {
  const found = new Map<string, JournalRow[]>([...wanted].map((key) => [key, []]));
  for (const row of rows) for (const key of new Set(row.about)) found.get(key)?.push(row);
  return found;
}

async function recordsFor(need: Needs, about: FactsByKey, lookup: Lookup): Promise<ReadonlyMap<string, AnyRecord>> {
  const records = new Map<string, AnyRecord>();
  for (const key of new Set([...need.keys, ...about.keys()])) {
    const facts = about.get(key);
    const record = facts === undefined ? await lookup.record(key) : foldRows(key, facts);
    if (record !== null) records.set(key, record);
  }
  return records;
}

async function textsFor(session: Session, need: Needs, about: FactsByKey): Promise<ReadonlyMap<string, string>> {
  const texts = new Map<string, string>();
  for (const rows of about.values()) for (const row of rows) texts.set(row.id, row.text);
  for (const id of need.facts) {
    const row = texts.has(id) ? undefined : await session.db.journal.get(id);
    if (row !== undefined) texts.set(id, row.text);
  }
  return texts;
}

async function linkedAny(lookup: Lookup, links: readonly string[]): Promise<readonly DerivedRow[]> {
  const rows: DerivedRow[] = [];
  for (const link of links) rows.push(...(await lookup.linked(link)));
  return rows;
}

/** Rows beside the book, and only where something may be relaxed: no tap of a running day asks for them. */
async function besideFor(session: Session, need: Needs): Promise<Pick<Fresh, 'takingIn' | 'missing'>> {
  const { meta } = session.db;
  const takingIn = need.takingIn ? { takingIn: (await meta.get('takeIn')) !== undefined } : {};
  if (!need.missing) return takingIn;
  return { ...takingIn, missing: ((await meta.get('missing'))?.value as Fresh['missing']) ?? [] };
}

/** `about`: the facts of the records touched, already read; these records are folded from them, never taken from a derived row. */
export async function freshFor(session: Session, need: Needs, about: FactsByKey, lookup: Lookup): Promise<Fresh> {
  const bearing = await linkedAny(lookup, need.sampleNumbers.map(numberLink));
  return {
    ...(await besideFor(session, need)),
    records: await recordsFor(need, about, lookup),
    facts: await textsFor(session, need, about),
    running: samplesOf(await linkedAny(lookup, need.runningSamples ? ['running'] : [])),
    withNumbers: samplesOf(bearing),
    reserving: dayPlansOf(bearing),
    measurements: (
      await linkedAny(
        lookup,
        need.noticesOf.map((id) => `measurement:${id}`),
      )
    ).map(({ record }) => record),
    boxes: boxesOf(
      await linkedAny(
        lookup,
        need.boxesOfSamples.map((id) => `sample:${id}`),
      ),
    ),
  };
}
