/** What would be in dispute after taking in, record by record, only where something here can be contradicted. */
import { type BothSides, disputesOf } from '#records/bothSides.ts';
import { pacer } from '../breath.ts';
import type { BookDatabase } from '../database.ts';
import { isReadable } from '../folding.ts';
import type { Comparison } from './comparing.ts';

const sliceKeys = 50;

export async function disputesWith(
  db: BookDatabase,
  { disputableKeys, rowsByKey }: Pick<Comparison, 'disputableKeys' | 'rowsByKey'>,
): Promise<BothSides> {
  const bothChanged: BothSides['bothChanged'][number][] = [];
  const voidAgainstResult: string[] = [];
  const keys = [...disputableKeys];
  const pace = pacer();
  for (let from = 0; from < keys.length; from += sliceKeys) {
    const slice = keys.slice(from, from + sliceKeys);
    const answers = await db.transaction('r', db.journal, async () =>
      Promise.all(slice.map((key) => db.journal.where('about').equals(key).toArray())),
    );
    for (const [index, key] of slice.entries()) {
      const here = (answers[index] ?? []).filter(isReadable);
      if (here.length === 0) continue;
      const found = disputesOf(key, here, rowsByKey.get(key) ?? []);
      bothChanged.push(...found.bothChanged);
      voidAgainstResult.push(...found.voidAgainstResult);
      await pace();
    }
  }
  return { bothChanged, voidAgainstResult };
}
