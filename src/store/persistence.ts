/** Asks the browser, once, to keep this origin: after the first saved sample, when there is something to keep. The answer is kept. */
import { persist, persisted } from './device.ts';
import { openSession, type Session } from './session.ts';

const keepAnswer = async (session: Session, answer: boolean | null): Promise<void> => {
  if (openSession() === session) await session.db.meta.put({ key: 'persisted', value: answer });
};

/** Asks unless the browser has said yes already; a refusal is asked again with the next sample of a later start. */
export function askToPersistAfterSample(session: Session): void {
  if (asked.has(session)) return;
  asked.add(session);
  void persist()
    .then((answer) => keepAnswer(session, answer))
    .catch(() => {});
}
const asked = new WeakSet<Session>();

/** At each start: the browser may have changed its mind, or the app was installed since. */
export const notePersisted = async (session: Session): Promise<void> => {
  try {
    const answer = await persisted();
    // Said before, it is not written again: a write would have every page ask its questions anew.
    if ((await session.db.meta.get('persisted'))?.value !== answer) await keepAnswer(session, answer);
  } catch {
    // A browser that does not answer has promised nothing.
  }
};

/** Inside a tap: asks again, whatever was answered before, and keeps the answer. */
export async function askToPersistNow(): Promise<boolean | null> {
  const session = openSession();
  const answer = await persist();
  if (session !== null) await keepAnswer(session, answer);
  return answer;
}
