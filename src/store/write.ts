/**
 * Writes facts: one strict transaction, and the answer only after it is complete. A lost connection is reopened and tried once more; a
 * full disk gives up the derived rows first, since they can be rebuilt. The draft goes only with the facts that make it good.
 */

import { sequenceOf } from '#records/chain.ts';
import type { Caution, Refusal } from '#records/decide/refusal.ts';
import type { NewFact } from '#records/fact.ts';
import type { Appended, AppendOptions } from './append.ts';
import { clockWentBack, lastSeenAt, lookAtClock } from './clock.ts';
import type { FileRow, JournalRow } from './database.ts';
import { draftKeyOf, flushDraft, forgetDraft, holdDraft } from './drafts.ts';
import { storageFailure } from './failures.ts';
import { noteError } from './lastErrors.ts';
import { setDerivedComplete, setHeldMark } from './marks.ts';
import { askToPersistAfterSample } from './persistence.ts';
import { reopen } from './reopening.ts';
import { bookState, openSession, type Session, setBookState } from './session.ts';

/** Hand this as `sampleNumber` of a new sample: the book puts the next free number, inside the transaction. */
export const nextFreeNumber = '';

export interface WriteOptions {
  /** The draft (the key given to useDraft) that this write makes good: deleted in the same transaction. */
  readonly draftKey?: string;
  /** Bytes that go into the same transaction as the fact that names their hash. */
  readonly files?: readonly FileRow[];
  /** On a full disk this write fails at once: what it brings is not worth the derived rows, which every later tap needs. */
  readonly givesUpNothing?: boolean;
}

export type FailedWhy = 'quota' | 'lost' | 'newer' | 'evicted' | 'unknown';

export type Written =
  | {
      readonly kind: 'written';
      readonly factIds: readonly string[];
      readonly sampleNumbers: readonly string[];
      readonly cautions: readonly Caution[];
    }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'failed'; readonly why: FailedWhy };

const failed = (why: FailedWhy): Written => ({ kind: 'failed', why });

const whyNotOpen = (): FailedWhy => {
  const { kind } = bookState();
  return kind === 'evicted' ? 'evicted' : kind === 'newerVersion' ? 'newer' : 'lost';
};

/**
 * Schemas, decisions and folds: half of the app's script, and no page needs it to be read. Start-up calls this once the first page
 * stands, so that a tap does not wait for it.
 */
export const writingHalf = () => import('./append.ts');

/** One transaction. Resolves after it is complete, strictly: on the disk. */
async function once(session: Session, wanted: readonly NewFact[], options: AppendOptions): Promise<Written> {
  const { db, which } = session;
  if (db.isNewer()) {
    setBookState({ kind: 'newerVersion', which }, null);
    return failed('newer');
  }
  // Loaded before the transaction begins: it would end while something else is awaited.
  const { append } = await writingHalf();
  const tables = [db.journal, db.records, db.drafts, db.meta, ...(options.files === undefined ? [] : [db.files])];
  // An async function, not one that returns a promise: Dexie keeps the transaction over native awaits only in the former.
  const outcome: Appended = await db.transaction('rw', tables, async () => append(session, wanted, options));
  if (outcome.kind !== 'evicted') return outcome;
  setBookState({ kind: 'evicted', which }, null);
  db.close();
  return failed('evicted');
}

/** Derived rows are deleted to make room; they are rebuilt from the journal. */
export async function giveUpDerived(session: Session): Promise<void> {
  const { db, which } = session;
  setDerivedComplete(which, false);
  await db.transaction('rw', db.records, db.meta, async () => {
    await db.records.clear();
    await db.meta.delete('derived');
  });
}

async function recover(why: 'quota' | 'lost', session: Session): Promise<void> {
  if (why === 'lost') return reopen(session.db);
  await giveUpDerived(session);
}

async function tryTwice(
  session: Session,
  wanted: readonly NewFact[],
  options: AppendOptions,
  givesUpNothing = false,
): Promise<Written> {
  try {
    return await once(session, wanted, options);
  } catch (error) {
    noteError(error);
    const why = storageFailure(error);
    if (why === null) throw error;
    if (why === 'unknown') {
      console.error(error);
      return failed(why);
    }
    if (why === 'quota' && givesUpNothing) return failed(why);
    try {
      await recover(why, session);
      return await once(session, wanted, options);
    } catch (second) {
      return failed(storageFailure(second) ?? why);
    } finally {
      if (why === 'quota') (await import('./rebuild.ts')).rebuildSoon(session);
    }
  }
}

function remember(session: Session, factIds: readonly string[]): void {
  const last = factIds.at(-1);
  if (last === undefined) return;
  session.lastSequence = Math.max(session.lastSequence, sequenceOf(last));
  const { bookId, writer, lastSequence } = session;
  setHeldMark(session.which, { bookId, writer, lastSequence });
}

/** Writes a clock that went back on the samples that run. Best effort: what it could not write, the next write tries again. */
export async function noteClock(session: Session): Promise<void> {
  if (lastSeenAt() === null || !clockWentBack()) return;
  try {
    const { clockNoticed, clockNotices } = await import('./clockWatch.ts');
    const notices = await clockNotices(session.db, session.which);
    if (notices.length === 0) return;
    const outcome = await tryTwice(session, notices, { tried: [], lastSeenAt: lastSeenAt() });
    if (outcome.kind !== 'written') return;
    remember(session, outcome.factIds);
    clockNoticed();
  } catch (error) {
    if (storageFailure(error) === null) throw error;
  }
}

/** Never throws for what a device can do to us; a throw is a bug. The draft is kept unless the answer is `written`. */
export async function write(wanted: readonly NewFact[], options: WriteOptions = {}): Promise<Written> {
  const session = openSession();
  if (session === null) return failed(whyNotOpen());
  const { draftKey, files } = options;
  if (draftKey !== undefined) holdDraft(draftKey);
  await noteClock(session);
  const tried: JournalRow[] = [];
  let outcome: Written = failed('unknown');
  try {
    const appending = {
      tried,
      lastSeenAt: lastSeenAt(),
      ...(files === undefined ? {} : { files }),
      ...(draftKey === undefined ? {} : { draftKey: draftKeyOf(draftKey) }),
    };
    outcome = await tryTwice(session, wanted, appending, options.givesUpNothing);
  } finally {
    if (draftKey !== undefined) await (outcome.kind === 'written' ? forgetDraft(draftKey) : flushDraft(draftKey));
  }
  if (outcome.kind === 'written') {
    remember(session, outcome.factIds);
    lookAtClock();
    if (outcome.sampleNumbers.length > 0) askToPersistAfterSample(session);
  }
  return outcome;
}
