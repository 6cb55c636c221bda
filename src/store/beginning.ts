/** The first fact of a new book, and its refusal. */
import { keyOf } from '#records/common.ts';
import { type Appended, append } from './append.ts';
import { lastSeenAt } from './clock.ts';
import type { BookDatabase, Which } from './database.ts';
import { deviceZone, happenedNow } from './device.ts';
import { derivedEdition } from './edition.ts';
import { storageFailure } from './failures.ts';
import type { Session } from './session.ts';
import type { Written } from './write.ts';
import { drawWriter } from './writer.ts';

/** Everything of a new book in one transaction: its id, its writer, its first fact. */
export const begin = (db: BookDatabase, which: Which, bookId: string, firmName: string) =>
  db.transaction('rw', [db.journal, db.records, db.drafts, db.files, db.meta], async () => {
    if ((await db.meta.get('bookId')) !== undefined) return null;
    for (const table of [db.journal, db.records, db.files, db.meta]) await table.clear();
    await db.meta.bulkPut([
      { key: 'bookId', value: bookId },
      { key: 'derived', value: derivedEdition },
    ]);
    const session: Session = { which, db, bookId, ...(await drawWriter(db, [])) };
    const opening = {
      kind: 'bookOpened.v1',
      about: [keyOf('book', bookId)],
      happened: happenedNow(deviceZone()),
      by: null,
      why: null,
      body: { bookId, firmName, practice: which === 'practice' },
    } as const;
    const outcome = await append(session, [opening], { lastSeenAt: lastSeenAt(), tried: [] });
    if (outcome.kind !== 'written') throw new Refused(outcome);
    return { session, outcome };
  });

/** Carries a refusal out of the transaction, so that nothing of it stays. */
class Refused extends Error {
  readonly outcome: Exclude<Appended, { kind: 'written' }>;
  constructor(outcome: Exclude<Appended, { kind: 'written' }>) {
    super(outcome.kind);
    this.name = 'Refused';
    this.outcome = outcome;
  }
}

/** What to say of a book that was not begun; throws what is a bug. */
export function notBegun(error: unknown): Written {
  if (error instanceof Refused) {
    return error.outcome.kind === 'refused' ? error.outcome : { kind: 'failed', why: 'evicted' };
  }
  const why = storageFailure(error);
  if (why === null) throw error;
  return { kind: 'failed', why };
}
