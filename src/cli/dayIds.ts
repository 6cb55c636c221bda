/** Names of the records that a day file stands for: a path in the file where the app has a fact or a random id. */
import { epochMsToInstant } from '#core/calendar.ts';
import type { RecordBase } from '#records/book.ts';

export const utc = (local: string): string => epochMsToInstant(Date.parse(local));

export const baseAt = (kind: string, id: string, path: string): RecordBase => ({
  key: `${kind}:${id}`,
  id,
  factIds: [path],
  strikes: [],
  conflicts: [],
  notUnderstood: [],
});

export const shiftIdOf = (site: string, workOn: string): string => `${site}.${workOn}`;
export const workdayIdOf = (worker: string, workOn: string): string => `${worker}.${workOn}`;
