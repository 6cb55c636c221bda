/** Doubts that any record can carry: corrections that contradict each other, and facts of a newer version that must be understood. */
import type { RecordBase } from '#records/book.ts';
import { type Reason, reason } from './reason.ts';

const none: readonly Reason[] = [];

export function recordDoubts(record: Pick<RecordBase, 'conflicts' | 'notUnderstood'>): readonly Reason[] {
  if (record.conflicts.length === 0 && record.notUnderstood.length === 0) return none;
  const found: Reason[] = [];
  if (record.conflicts.length > 0)
    found.push(
      reason(
        'correctionsConflict',
        record.conflicts.map(({ factId }) => factId),
      ),
    );
  if (record.notUnderstood.length > 0) found.push(reason('notUnderstood', record.notUnderstood));
  return found;
}
