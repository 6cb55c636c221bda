/** Writing from a screen: one tap, one transaction, and a state that says *saved* only once the transaction is complete. */
import { useCallback, useRef, useState } from 'react';
import type { NewFact } from '#records/fact.ts';
import { now } from '../device.ts';
import { type WriteOptions, type Written, write } from '../write.ts';

export interface Writing {
  readonly state: 'idle' | 'saving' | 'saved' | 'notSaved';
  /** The answer to the last attempt; null before one, and while one runs. */
  readonly outcome: Written | null;
  /** Instant of the last write that was complete. */
  readonly savedAt: string | null;
  /** A second tap while the first is being written does nothing, and answers null. */
  readonly run: (facts: readonly NewFact[], options?: WriteOptions) => Promise<Written | null>;
  /** Forgets what was refused: the form was changed. */
  readonly reset: () => void;
}

export function useWrite(): Writing {
  const [held, setHeld] = useState<Pick<Writing, 'state' | 'outcome' | 'savedAt'>>({
    state: 'idle',
    outcome: null,
    savedAt: null,
  });
  const running = useRef(false);
  const run = useCallback(async (facts: readonly NewFact[], options?: WriteOptions) => {
    if (running.current) return null;
    running.current = true;
    setHeld((before) => ({ ...before, state: 'saving', outcome: null }));
    try {
      const outcome = await write(facts, options);
      const saved = outcome.kind === 'written';
      setHeld((before) => ({
        state: saved ? 'saved' : 'notSaved',
        outcome,
        savedAt: saved ? now() : before.savedAt,
      }));
      return outcome;
    } finally {
      running.current = false;
    }
  }, []);
  const reset = useCallback(() => setHeld((before) => ({ ...before, state: 'idle', outcome: null })), []);
  return { ...held, run, reset };
}
