/** The browser is killed as an empty battery would: what was promised before is on the disk, whole. Issue 2, must-see 7. */
import { createHash, randomInt } from 'node:crypto';
import { expect, test } from '@playwright/test';
import type { BookOnDisk } from './bookOnDisk.ts';
import { judge, killManyTimes, soonMs } from './killing.ts';
import { startPreview } from './preview.ts';

/** More of them in the long runs. */
const kills = Number(process.env.KILLS ?? 20);
const seed = Number(process.env.SEED ?? randomInt(2 ** 31));

test(`after ${kills} kills of the browser nothing that was saved is lost, and nothing is torn`, async () => {
  test.setTimeout(60_000 + kills * 20_000);
  console.info(`seed ${seed} (SEED=${seed} draws the same moments again)`);
  const preview = await startPreview(4631);
  try {
    const killed = await killManyTimes(preview.address, kills, seed);
    console.info(
      `${killed.kills} kills in ${killed.seconds} s, ${killed.soonKills} of them within ${soonMs} ms after a tap; ` +
        `${killed.acknowledged} acknowledged transactions, none lost; typed text found again ${killed.typedFound} times; ` +
        `taps before a kill: ${JSON.stringify(killed.arrivals)}`,
    );
    expect(killed.soonKills).toBeGreaterThanOrEqual(kills / 2);
    expect(killed.acknowledged).toBeGreaterThanOrEqual(kills * 5);
    expect(killed.typedFound).toBeGreaterThanOrEqual(1);
  } finally {
    await preview.stop();
  }
});

const sha256 = (text: string): string => createHash('sha256').update(text, 'utf8').digest('hex');

/** Two facts about one sample, chained as the journal chains them. */
function smallBook(): BookOnDisk {
  const about = ['sample:s'];
  const texts = [1, 2].map((number) => JSON.stringify({ id: `w.0000000${number}`, about, kind: 'pumpLookedAt.v1' }));
  const first = sha256(sha256(texts[0] ?? ''));
  const links = [first, sha256(first + sha256(texts[1] ?? ''))];
  const journal = texts.map((text, index) => ({ id: `w.0000000${index + 1}`, about, text, link: links[index] ?? '' }));
  const records = [{ key: 'sample:s', record: { id: 's', factIds: journal.map(({ id }) => id) } }];
  return { journal, records, drafts: [{ key: 'sample:s/away#tab', value: 'typed' }] };
}

test('whoever judges a book after a kill sees what is lost, torn, or left over', () => {
  const book = smallBook();
  const [first, second] = book.journal;
  if (!first || !second) throw new Error('two facts are needed');
  const promised = (
    facts: readonly (readonly [string, string])[],
    shownCount: number,
    draft: null | { value: string },
  ) => ({
    facts: new Map(facts),
    shown: new Map([['pumpLookedAt.v1 sample:s', shownCount]]),
    drafts: new Map([['sample:s/away#tab', draft]]),
  });
  const kept = promised([[second.id, second.text]], 2, { value: 'typed' });
  expect(judge(book, kept, 'none')).toEqual([]);
  expect(judge(book, promised([['w.00000003', '{}']], 2, { value: 'typed' }), 'none')).toEqual(['lost: w.00000003 {}']);
  expect(judge(book, promised([], 3, { value: 'typed' }), 'none')).toHaveLength(1);
  expect(judge(book, promised([], 2, null), 'none')).toEqual(['still a draft: sample:s/away#tab']);
  expect(judge(book, promised([], 2, null), 'sample:s/away#')).toEqual([]);
  expect(judge({ ...book, journal: [first] }, promised([], 1, null), 'sample:s/away#')).toHaveLength(1);
  expect(judge({ ...book, drafts: [] }, kept, 'none')).toEqual(['the draft is lost: sample:s/away#tab']);
  expect(judge({ ...book, records: [] }, promised([], 2, null), 'sample:s/away#')).toEqual(['no record of sample:s']);
  const changed = { ...book, journal: [{ ...first, link: sha256('other') }, second] };
  expect(judge(changed, promised([], 2, null), 'sample:s/away#')).toHaveLength(2);
  const hole = { ...book, journal: [{ ...second, link: sha256(sha256(second.text)) }] };
  expect(judge(hole, promised([], 1, null), 'sample:s/away#')).toContain('w.00000002 follows 0');
});
