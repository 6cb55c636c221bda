/** How many papers and pictures the book names that this device does not hold. Walks the book: asked only where it is shown. */
import { useEffect, useState, useSyncExternalStore } from 'react';
import { pacer } from '../breath.ts';
import type { BookDatabase } from '../database.ts';
import { onBookState, openSession } from '../session.ts';

const step = 500;
const named = /"kind":"(?:photoTaken|custodySheetIssued|noticeIssued|determinationWritten|exposureRecordIssued)\.v1"/;
const hashes = /"(?:hash|pdfHash)":"([0-9a-f]{64})"/g;

export async function missingFilesIn(db: BookDatabase): Promise<number> {
  const wanted = new Set<string>();
  const pace = pacer();
  for (let after = ''; ; ) {
    const rows = await db.journal.where('id').above(after).limit(step).toArray();
    for (const { text } of rows)
      if (named.test(text)) for (const [, hash = ''] of text.matchAll(hashes)) wanted.add(hash);
    const last = rows.at(-1);
    if (last === undefined || rows.length < step) break;
    after = last.id;
    await pace();
  }
  const here = await db.files
    .where('hash')
    .anyOf([...wanted])
    .count();
  return wanted.size - here;
}

/** `undefined` while it is counted. */
export function useMissingFiles(): number | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  const [count, setCount] = useState<number | undefined>(undefined);
  useEffect(() => {
    let here = true;
    if (session === null) return;
    missingFilesIn(session.db)
      .then((found) => here && setCount(found))
      .catch(() => undefined);
    return () => {
      here = false;
    };
  }, [session]);
  return count;
}
