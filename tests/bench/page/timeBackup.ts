/** A backup of the whole book, timed; and pictures to put into it. */
import { hashOf } from '#store/files.ts';
import { openBooks } from '#store/opening.ts';
import { theSession } from '#store/session.ts';
import { makeBackup } from '#tests/store/handOvers.ts';

/** So many files of `bytesCount` random bytes, which do not compress, as pictures do not. */
export async function addPictures(count: number, bytesCount: number): Promise<void> {
  await openBooks();
  const { db } = theSession();
  for (let index = 0; index < count; index += 1) {
    const bytes = new Uint8Array(bytesCount);
    for (let at = 0; at < bytesCount; at += 65_536) crypto.getRandomValues(bytes.subarray(at, at + 65_536));
    await db.files.add({ hash: hashOf(bytes), type: 'image/jpeg', bytes });
  }
}

export interface BackupTime {
  readonly tookMs: number;
  readonly bytesCount: number;
  readonly factsCount: number;
  readonly filesCount: number;
  /** The longest task that the browser noticed: it tells those over 50 ms; 0 when there was none. */
  readonly longestTaskMs: number;
}

/** The book must have been opened and read once before: what is measured is the backup. */
export async function timeBackup(): Promise<BackupTime> {
  let longestTaskMs = 0;
  const observer = new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) longestTaskMs = Math.max(longestTaskMs, duration);
  });
  observer.observe({ type: 'longtask' });
  const startedMs = performance.now();
  const { blob, factsCount, filesCount } = await makeBackup();
  const tookMs = performance.now() - startedMs;
  await new Promise((done) => setTimeout(done, 100));
  observer.disconnect();
  return { tookMs, bytesCount: blob.size, factsCount, filesCount, longestTaskMs };
}
