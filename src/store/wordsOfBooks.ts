/**
 * Which of the words that somebody is about to give away also stand in a book of this device: entries, what is being typed, and names of
 * devices beside it. Both books are searched, open or not, since an error is kept longer than its book stays open.
 */
import { bothBooks, withDatabase } from './beforeWiping.ts';
import type { BookDatabase } from './database.ts';
import { flushDrafts } from './drafts.ts';
import { heldMark } from './marks.ts';

/** Words of at least this many letters are looked for; shorter ones would tear every sentence apart. */
const leastLetters = 3;
const step = 2000;

export const wordsOf = (text: string): readonly string[] =>
  (text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).filter((word) => word.length >= leastLetters);

/** Every string in a value, word by word. Names of fields are not among them; a folder says its name by a getter. */
function wordsIn(value: unknown, found: Set<string>): void {
  if (typeof value === 'string') for (const word of wordsOf(value)) found.add(word);
  if (typeof value !== 'object' || value === null) return;
  for (const inner of Object.values(value)) wordsIn(inner, found);
  const { name } = value as { readonly name?: unknown };
  if (typeof name === 'string') for (const word of wordsOf(name)) found.add(word);
}

/** Of an entry, its body, its reason and who said it; names of kinds and fields are not of the book. */
function wordsOfEntry(text: string): ReadonlySet<string> {
  const found = new Set<string>();
  const { body, why, happened } = JSON.parse(text) as {
    readonly body?: unknown;
    readonly why?: unknown;
    readonly happened?: { readonly from?: unknown };
  };
  wordsIn([body, why, happened?.from], found);
  return found;
}

async function searchIn(db: BookDatabase, said: ReadonlySet<string>, shared: Set<string>): Promise<void> {
  const keep = (found: ReadonlySet<string>): void => {
    for (const word of found) if (said.has(word)) shared.add(word);
  };
  const beside = new Set<string>();
  wordsIn([await db.drafts.toArray(), (await db.meta.toArray()).map(({ value }) => value)], beside);
  keep(beside);
  for (let after = ''; ; ) {
    const rows = await db.journal.where('id').above(after).limit(step).toArray();
    for (const { text } of rows) keep(wordsOfEntry(text));
    const last = rows.at(-1);
    if (last === undefined || rows.length < step) return;
    after = last.id;
  }
}

/** Those of `said` that stand in a book. null: a book was held here and cannot be searched, so nobody knows. */
export async function wordsInBooks(said: ReadonlySet<string>): Promise<ReadonlySet<string> | null> {
  const shared = new Set<string>();
  if (said.size === 0) return shared;
  try {
    await flushDrafts();
    for (const which of bothBooks) {
      const searched = await withDatabase(which, async (db) => {
        await searchIn(db, said, shared);
        return (await db.meta.get('bookId')) !== undefined;
      });
      // Emptied from outside: its words are gone, and what errors say of them is not.
      if (searched !== true && heldMark(which) !== null) return null;
    }
    return shared;
  } catch {
    return null;
  }
}
