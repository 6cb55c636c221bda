/** Who did which tasks where, each day, and the task groups that follow. */
import type { Book } from '#records/book.ts';
import type { GroupDay, TaskGroup } from './taskGroup.ts';

export function groupDaysOf(_book: Book): readonly GroupDay[] {
  throw new Error('not written yet');
}

/** By key. */
export function taskGroupsOf(_days: readonly GroupDay[]): ReadonlyMap<string, TaskGroup> {
  throw new Error('not written yet');
}
