/** What a sample's pages hang on: is it on the worker, off, away, standing still, done. */
import type { SampleRecord } from '#records/book.ts';

export type SampleStanding = 'prepared' | 'worn' | 'away' | 'off' | 'fault' | 'notSure' | 'stopped' | 'void' | 'blank';

export function standingOf(sample: SampleRecord): SampleStanding {
  if (sample.voided) return 'void';
  if (sample.sampleKind === 'blank') return 'blank';
  if (sample.stopped) return 'stopped';
  if (!sample.putOn) return 'prepared';
  const current = sample.intervals.at(-1);
  if (current === undefined || current.state === 'worn') return current?.awayFromLead ? 'away' : 'worn';
  if (current.state === 'doubtful') return 'notSure';
  const found = [...sample.faults, ...sample.looks].some(({ factId }) => factId === current.becauseFactId);
  return found ? 'fault' : 'off';
}
