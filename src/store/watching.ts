/** What is done when the page is left or shown again: nothing typed is lost, an emptied database and a clock set back are noticed. */
import { lookAtClock } from './clock.ts';
import { flushOnLeaving } from './drafts.ts';
import { storageFailure } from './failures.ts';
import { readTwice } from './reopening.ts';
import { openSession, setBookState } from './session.ts';
import { noteClock } from './write.ts';

/** Is the database still the one that this tab opened? */
async function checkHeld(): Promise<void> {
  const session = openSession();
  if (session === null) return;
  const { db, which, writer } = session;
  const row = await readTwice(db, async () => db.meta.get('writer'));
  if (openSession() !== session) return;
  if (row === undefined) {
    setBookState({ kind: 'evicted', which }, null);
    db.close();
  } else if (row.value === writer) await noteClock(session);
}

async function shown(): Promise<void> {
  try {
    await checkHeld();
  } catch (error) {
    if (storageFailure(error) === null) throw error;
  }
}

let undo: (() => void) | null = null;

/** Once per page; in a place without a document there is nothing to watch. */
export function watchPage(): void {
  if (undo !== null || typeof document === 'undefined') return;
  const changed = (): void => {
    if (document.visibilityState === 'hidden') lookAtClock();
    else void shown();
  };
  const focused = (): void => void shown();
  const unflush = flushOnLeaving();
  document.addEventListener('visibilitychange', changed);
  window.addEventListener('focus', focused);
  undo = () => {
    unflush();
    document.removeEventListener('visibilitychange', changed);
    window.removeEventListener('focus', focused);
  };
}

/** For tests, which open many pages in one. */
export function unwatchPage(): void {
  undo?.();
  undo = null;
}
