/** Which files of the folder were dealt with: by name, size and time, so that one that grew afterwards is looked at again. */
import type { BookDatabase } from '../database.ts';

export interface SeenFile {
  readonly name: string;
  readonly size: number;
  /** Milliseconds since 1970, as the folder tells. */
  readonly lastModified: number;
}

/** Decided here: a year of three files a day. Beyond it the oldest are forgotten, and offered again if they still lie there. */
const mostSeen = 1000;

export const markOf = ({ name, size, lastModified }: SeenFile): string => `${name} ${size} ${lastModified}`;

export async function seenMarks(db: BookDatabase): Promise<ReadonlySet<string>> {
  return new Set(((await db.meta.get('seenFiles'))?.value as readonly string[] | undefined) ?? []);
}

/** Taken in, or put aside by a person: not offered again. */
export async function noteSeen(db: BookDatabase, files: readonly SeenFile[]): Promise<void> {
  await db.transaction('rw', db.meta, async () => {
    const seen = ((await db.meta.get('seenFiles'))?.value as readonly string[] | undefined) ?? [];
    const marks = new Set([...seen, ...files.map(markOf)]);
    await db.meta.put({ key: 'seenFiles', value: [...marks].slice(-mostSeen) });
  });
}
