/**
 * The appending transaction. Everything awaited in here is a table call; hashing is synchronous. Reads: the writer's last row, the
 * facts of the records named, and what the decision needs. Writes: facts by `add`, the refolded records, files; deletes the draft.
 */

import { canonicalJson, readFact } from '#records/canonical.ts';
import { factIdOf, link, noLink, sequenceOf } from '#records/chain.ts';
import type { Caution, Refusal } from '#records/decide/refusal.ts';
import { decide, needs } from '#records/decide.ts';
import type { NewFact } from '#records/fact.ts';
import { nextRecorded, observe } from '#records/recordedClock.ts';
import { nextSampleNumber } from '#records/sampleNumber.ts';
import type { FileRow, JournalRow } from './database.ts';
import { now } from './device.ts';
import { derivedRow } from './folding.ts';
import { factsAbout, freshFor, keysOf } from './fresh.ts';
import { byIndex, fromJournal, type Lookup } from './lookup.ts';
import { derivedIsComplete } from './marks.ts';
import type { Session } from './session.ts';

export type Appended =
  | {
      readonly kind: 'written';
      readonly factIds: readonly string[];
      readonly sampleNumbers: readonly string[];
      readonly cautions: readonly Caution[];
    }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'evicted' };

export interface AppendOptions {
  readonly draftKey?: string;
  readonly files?: readonly FileRow[];
  readonly lastSeenAt: string | null;
  /** What an earlier try put into a transaction that was lost: told from here whether it had arrived after all. */
  readonly tried: JournalRow[];
}

/** Recorded time of a row; null in a row that can no longer be read. */
function recordedOf(row: JournalRow): string | null {
  const read = readFact(row.text);
  if (read.kind === 'refused') return null;
  return read.kind === 'known' ? read.fact.recorded : read.envelope.recorded;
}

/** The writer's last row; 'evicted' when rows that this tab has seen are gone. */
async function lastOwn(session: Session): Promise<JournalRow | null | 'evicted'> {
  const { db, writer } = session;
  const row = await db.journal.where('id').between(`${writer}.`, `${writer}/`).last();
  if (row === undefined && session.lastSequence === 0) {
    return (await db.meta.get('bookId'))?.value === session.bookId ? null : 'evicted';
  }
  return row === undefined || sequenceOf(row.id) < session.lastSequence ? 'evicted' : row;
}

const numberedKinds: readonly string[] = ['samplePrepared.v1', 'blankOpened.v1'];

type LabelsMade = NewFact<'labelsMade.v1'>;

/** Puts the next free number where the screen left it to the book (an empty string); labels get theirs from the book alone. */
async function numbered(session: Session, wanted: readonly NewFact[], lookup: Lookup): Promise<readonly NewFact[]> {
  const isOpen = (fact: NewFact): boolean =>
    numberedKinds.includes(fact.kind) && (fact.body as { sampleNumber?: string }).sampleNumber === '';
  if (!wanted.some((fact) => isOpen(fact) || fact.kind === 'labelsMade.v1')) return wanted;
  const used = [...(await lookup.numbersUnder(session.prefix))];
  const next = (): string => {
    const sampleNumber = nextSampleNumber(session.prefix, used);
    // one is enough: those that follow come after it
    used.splice(0, Number.POSITIVE_INFINITY, sampleNumber);
    return sampleNumber;
  };
  return wanted.map((fact) => {
    if (fact.kind === 'labelsMade.v1') {
      const { body } = fact as LabelsMade;
      return {
        ...fact,
        body: { ...body, labels: body.labels.map((one) => ({ ...one, sampleNumber: next() })) },
      } as NewFact;
    }
    return isOpen(fact) ? ({ ...fact, body: { ...fact.body, sampleNumber: next() } } as NewFact) : fact;
  });
}

const seen = (last: string | null, remote: string | null, wall: string): string | null =>
  remote === null ? last : observe(last, remote, wall);

/** Gives each fact its id, recorded time and link, after the writer's last row. */
function journalRows(
  session: Session,
  facts: readonly NewFact[],
  last: JournalRow | null,
  about: ReadonlyMap<string, readonly JournalRow[]>,
): JournalRow[] {
  const wall = now();
  let sequence = last === null ? 0 : sequenceOf(last.id);
  let recorded = last === null ? null : recordedOf(last);
  let previous = last?.link ?? noLink;
  for (const rows of about.values()) for (const row of rows) recorded = seen(recorded, recordedOf(row), wall);
  return facts.map((fact) => {
    sequence += 1;
    recorded = nextRecorded(recorded, wall);
    const id = factIdOf(session.writer, sequence);
    const text = canonicalJson({ id, ...fact, recorded });
    previous = link(previous, text);
    return { id, about: fact.about, text, link: previous };
  });
}

async function refold(session: Session, about: Map<string, readonly JournalRow[]>, added: readonly JournalRow[]) {
  const addedTo = new Map<string, JournalRow[]>();
  for (const row of added)
    for (const key of new Set(row.about)) {
      const own = addedTo.get(key);
      if (own) own.push(row);
      else addedTo.set(key, [row]);
    }
  const keys = [...addedTo.keys()];
  const unread = keys.filter((key) => !about.has(key));
  const addedIds = new Set(added.map(({ id }) => id));
  for (const [key, rows] of await factsAbout(session, unread)) {
    about.set(
      key,
      rows.filter(({ id }) => !addedIds.has(id)),
    );
  }
  const rows = keys.flatMap((key) => derivedRow(key, [...(about.get(key) ?? []), ...(addedTo.get(key) ?? [])]) ?? []);
  if (rows.length > 0) await session.db.records.bulkPut(rows);
}

/** Runs inside a transaction over journal, records, drafts, meta, and files when there are any. */
export async function append(session: Session, wanted: readonly NewFact[], options: AppendOptions): Promise<Appended> {
  const { db } = session;
  const last = await lastOwn(session);
  if (last === 'evicted') return { kind: 'evicted' };
  const first = options.tried[0];
  if (first !== undefined && (await db.journal.get(first.id))?.text === first.text) return written(options.tried, []);
  const lookup = derivedIsComplete(session.which) ? byIndex(db) : await fromJournal(db);
  const asked = await numbered(session, wanted, lookup);
  const about = await factsAbout(session, keysOf(asked));
  const fresh = await freshFor(session, needs(asked), about, lookup);
  const decision = decide(asked, fresh, { now: now(), lastSeenAt: options.lastSeenAt });
  if (decision.kind === 'refused') return decision;
  const rows = journalRows(session, decision.facts, last, about);
  options.tried.splice(0, Number.POSITIVE_INFINITY, ...rows);
  await db.journal.bulkAdd(rows);
  await refold(session, about, rows);
  if (options.files !== undefined && options.files.length > 0) await db.files.bulkPut([...options.files]);
  if (options.draftKey !== undefined) await db.drafts.delete(options.draftKey);
  return written(rows, decision.cautions);
}

/** Most facts number nothing, and need not be parsed for it. */
const numberedText = /"(samplePrepared|blankOpened|labelsMade)\.v1"/;

function written(rows: readonly JournalRow[], cautions: readonly Caution[]): Appended {
  const sampleNumbers = rows.flatMap((row) => {
    if (!numberedText.test(row.text)) return [];
    const fact = JSON.parse(row.text) as { kind: string; body: { sampleNumber: string } };
    if (fact.kind === 'labelsMade.v1')
      return (fact as unknown as LabelsMade).body.labels.map((one) => one.sampleNumber);
    return numberedKinds.includes(fact.kind) ? [fact.body.sampleNumber] : [];
  });
  return { kind: 'written', factIds: rows.map(({ id }) => id), sampleNumbers, cautions };
}
