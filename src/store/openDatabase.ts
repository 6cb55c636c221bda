/** Opens a database within three seconds or says what is in the way; makes an open session the one that everybody sees. */
import type { BookDatabase, Which } from './database.ts';
import { setHeldMark, setLastOpened } from './marks.ts';
import { databaseOf, openSession, type Session, setBookState } from './session.ts';

const settleMs = 3000;

/** Opens within three seconds, or says what is in the way; a late opening is closed again. */
export async function opened(which: Which): Promise<BookDatabase | 'blocked' | 'newerVersion'> {
  const db = databaseOf(which);
  db.on('versionchange', () => {
    db.close();
    if (openSession()?.db === db) setBookState({ kind: 'failed', which, why: 'closedElsewhere' }, null);
    return false;
  });
  let late = false;
  const timeout = new Promise<'blocked'>((settle) => setTimeout(() => settle('blocked'), settleMs));
  const opening = db.openWhole().then(() => {
    if (late) db.close();
    return db;
  });
  const first = await Promise.race([opening, timeout]);
  if (first === 'blocked') {
    late = true;
    opening.catch(() => {});
    return 'blocked';
  }
  if (!db.isNewer()) return db;
  db.close();
  return 'newerVersion';
}

/** The session is the open one from here on, and the device knows that it holds a book. */
export function hold(session: Session, unreadable: readonly string[]): void {
  const { which, bookId, writer, lastSequence } = session;
  setHeldMark(which, { bookId, writer, lastSequence });
  setLastOpened(which);
  setBookState({ kind: 'open', which, bookId, rebuilding: null, unreadable }, session);
}
