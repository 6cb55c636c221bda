/** A task group by its name: tasks, setting, job classification. `nameOf` knows what ids are called; an id without a name stands as it is. */
import { en as groups } from './groups.ts';
import { inSentence } from './quantity.ts';

export interface GroupNamed {
  readonly taskIds: readonly string[];
  readonly setting: 'indoors' | 'outdoors';
  readonly jobClassificationId: string | null;
}

export type NameOf = (id: string) => string | undefined;

/** Names of tasks as they stand in a sentence: only the first begins with a capital. */
export const tasksInWords = (taskIds: readonly string[], nameOf: NameOf): readonly string[] =>
  taskIds.map((id) => nameOf(id) ?? id).map((name, at) => (at === 0 ? name : inSentence(name)));

export const groupInWords = ({ taskIds, setting, jobClassificationId }: GroupNamed, nameOf: NameOf): string =>
  groups.name(
    tasksInWords(taskIds, nameOf),
    groups.settings[setting],
    jobClassificationId === null ? null : (nameOf(jobClassificationId) ?? null),
  );
