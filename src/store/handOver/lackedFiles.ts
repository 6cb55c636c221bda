/**
 * Papers and pictures that facts here name and this device does not hold. Asked for in the header of every file made here, so that a
 * partner who holds them sends them along. A list, because looking for them means reading the whole journal.
 */
import type { BookDatabase } from '../database.ts';
import type { StorageFailure } from '../failures.ts';
import { keepBeside } from '../keepBeside.ts';
import { theSession } from '../session.ts';

export async function lackedFiles(db: BookDatabase): Promise<readonly string[]> {
  const noted = ((await db.meta.get('lacksFiles'))?.value as readonly string[] | undefined) ?? [];
  if (noted.length === 0) return [];
  const here = new Set(
    await db.files
      .where('hash')
      .anyOf([...noted])
      .primaryKeys(),
  );
  return noted.filter((hash) => !here.has(hash));
}

/** What a reading of the whole journal found. */
export async function setLackedFiles(db: BookDatabase, hashes: readonly string[]): Promise<void> {
  const noted = ((await db.meta.get('lacksFiles'))?.value as readonly string[] | undefined) ?? [];
  const same = noted.length === hashes.length && hashes.every((hash) => noted.includes(hash));
  if (!same) await db.meta.put({ key: 'lacksFiles', value: [...hashes] });
}

/**
 * Adds what facts taken in name, and neither the file nor this device holds. Where it cannot be noted the entries are here all the same:
 * the next whole backup reads the journal over and finds what is lacking.
 */
export async function noteLackedFiles(hashes: readonly string[]): Promise<StorageFailure | null> {
  if (hashes.length === 0) return null;
  const { db } = theSession();
  return keepBeside(db, () =>
    db.transaction('rw', db.meta, async () => {
      const noted = ((await db.meta.get('lacksFiles'))?.value as readonly string[] | undefined) ?? [];
      await db.meta.put({ key: 'lacksFiles', value: [...new Set([...noted, ...hashes])] });
    }),
  );
}
