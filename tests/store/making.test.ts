/** What is in a hand-over file, read by others than ourselves: fflate's reader of whole archives, plain lines of JSON, Node's SHA-256. */
import { createHash } from 'node:crypto';
import { strToU8, unzipSync } from 'fflate';
import { beforeEach, describe, expect, test } from 'vitest';
import type { FileRow, JournalRow } from '#store/database.ts';
import type { HandOver, Progress } from '#store/handOver/handOver.ts';
import { notePartner, setDeviceName } from '#store/handOver/partners.ts';
import { unseal } from '#store/handOver/sealing.ts';
import { newBook } from '#store/opening.ts';
import { noteHandedOut } from '#store/sending.ts';
import { theSession } from '#store/session.ts';
import { blank, chainOf, type EntryWish, readText } from './chains.ts';
import { counting } from './countRequests.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { makeBackup, makeNews } from './handOvers.ts';
import { bytesOf, readByOthers } from './otherZip.ts';
import { seededRandom } from './seeded.ts';

const office = 'b00000000001';
const writers = ['a00000000001', office, 'c00000000001', 'd00000000001'] as const;

beforeEach(() => {
  testClock();
});

/** A device that holds just these rows and files. */
async function deviceWith(rows: readonly JournalRow[], files: readonly FileRow[] = [], writer?: string) {
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  const session = theSession();
  if (writer !== undefined) Object.assign(session, { writer });
  await session.db.journal.clear();
  await session.db.journal.bulkAdd([...rows]);
  await session.db.files.bulkAdd([...files]);
  return session;
}

async function inside({ blob }: HandOver) {
  const entries = unzipSync(await bytesOf(blob));
  const text = new TextDecoder().decode(entries['book.txt']);
  return { entries, text, files: Object.keys(entries).filter((name) => name.startsWith('files/')), ...readText(text) };
}

const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
const fileOf = (words: string, type = 'image/jpeg'): FileRow => {
  const bytes = strToU8(words);
  return { hash: sha256(bytes), type, bytes };
};
const picture = (hash: string): EntryWish => ({ kind: 'photoTaken.v1', body: { hash } });
const ids = (rows: readonly JournalRow[]): string[] => rows.map(({ id }) => id);

/** Written out again beside ours: the part of a set that has nothing missing before it. */
const upToFirstGap = (held: ReadonlySet<string>): Set<string> =>
  new Set(
    [...held].filter((id) => {
      const [writer, sequence] = id.split('.') as [string, string];
      return Array.from({ length: Number(sequence) }, (_, before) => before + 1).every((number) =>
        held.has(`${writer}.${String(number).padStart(8, '0')}`),
      );
    }),
  );

describe('everything', () => {
  const rows = [...chainOf(writers[0], blank(700)), ...chainOf(office, [picture(fileOf('meter').hash), {}, {}])];

  test('is every entry in order, every file, and an end mark that tells the truth; others read the archive', async () => {
    const session = await deviceWith(rows, [fileOf('meter'), fileOf('%PDF', 'application/pdf')]);
    await setDeviceName('  The office   laptop ');
    const made = await makeBackup({ papers: [{ name: 'md', text: '# words' }] });
    const read = await inside(made);
    expect(read.facts).toEqual(rows.map(({ link, text }) => ({ link, text })));
    expect(read.endIsTrue).toBe(true);
    expect(read.files.sort()).toEqual([`files/${fileOf('meter').hash}.jpg`, `files/${fileOf('%PDF').hash}.pdf`].sort());
    const heads = [rows[699], rows[702]].map((row) => ({ factId: row?.id, link: row?.link }));
    expect(read.header).toMatchObject({
      part: 'everything',
      from: { writer: session.writer, deviceName: 'The office laptop', madeAt: '2026-11-25T11:00:00.000Z' },
      heads,
      holds: heads,
      lacksFiles: [],
    });
    expect(read.header.since).toBeUndefined();
    expect(made).toMatchObject({
      part: 'everything',
      factsCount: 703,
      filesCount: 2,
      bookFactsCount: 703,
      sealed: false,
    });
    const others = await readByOthers(made.blob);
    if (others.byUnzip !== null) expect(others.byUnzip).toBe(true);
    if (others.byPython !== null) expect(others.byPython['book.txt']).toBe(sha256(strToU8(read.text)));
    expect(made.name).toMatch(/^fullshift-book-everything-2026-11-25-\d{4}\.zip$/);
  });

  test('files that entries name and that are not here are asked for in the header, then and in the next file', async () => {
    const lost = fileOf('a picture on another phone');
    await deviceWith([...rows, ...chainOf('c00000000001', [picture(lost.hash)])], [fileOf('meter')]);
    expect((await inside(await makeBackup())).header.lacksFiles).toEqual([lost.hash]);
    await notePartner({
      from: { writer: office, deviceName: null, madeAt: '2026-11-25T10:00:00.000Z' },
      holds: [],
    } as never);
    expect((await inside(await makeNews(office))).header.lacksFiles).toEqual([lost.hash]);
    await theSession().db.files.add(lost);
    expect((await inside(await makeNews(office))).header.lacksFiles).toEqual([]);
  });

  test('an entry that is no longer sound is set aside, and nothing from it on is said to be held', async () => {
    const turned = rows.map((row, index) =>
      index === 4 ? { ...row, text: row.text.replace('tapped', 'topped') } : row,
    );
    await deviceWith(turned);
    const made = await makeBackup();
    const { header, entries, ids: read, endIsTrue } = await inside(made);
    expect(new TextDecoder().decode(entries['unreadable.txt'])).toBe(
      `${turned[4]?.link} ${turned[4]?.id} ${turned[4]?.text}\n`,
    );
    expect(read).toEqual(ids(rows.filter((_, index) => index !== 4)));
    expect(endIsTrue).toBe(true);
    expect(header.holds[0]).toEqual({ factId: rows[3]?.id, link: rows[3]?.link });
  });

  test('what is written while it is being made is not in it, and what it says it holds is what it holds', async () => {
    const all = chainOf(writers[0], blank(900));
    await deviceWith(all.slice(0, 800));
    const { db } = theSession();
    let added: Promise<unknown> | null = null;
    const made = await makeBackup({ onProgress: () => (added ??= db.journal.bulkAdd(all.slice(800))) });
    await added;
    const { ids: read, header } = await inside(made);
    expect(read).toEqual(ids(all.slice(0, 800)));
    expect(header.holds).toEqual([{ factId: all[799]?.id, link: all[799]?.link }]);
    expect(await db.journal.count()).toBe(900);
  });

  test('tells how far it has come, never backwards, and stops when asked to', async () => {
    await deviceWith(rows, [fileOf('meter'), fileOf('label')]);
    const heard: Progress[] = [];
    await makeBackup({ onProgress: (progress) => void heard.push(progress) });
    for (const step of ['reading', 'packing'] as const) {
      const of = heard.filter((progress) => progress.step === step);
      expect(of.length).toBeGreaterThan(2);
      expect(of.at(-1)?.done).toBe(of.at(-1)?.total);
      expect(of.map(({ done }) => done)).toEqual(of.map(({ done }) => done).sort((a, b) => a - b));
    }
    for (const after of [1, 3, heard.length]) {
      const stop = new AbortController();
      let count = 0;
      const onProgress = (): void => {
        count += 1;
        if (count === after) stop.abort();
      };
      const asked = makeBackup({ onProgress, signal: stop.signal });
      if (after === heard.length) await expect(asked).resolves.toMatchObject({ part: 'everything' });
      else await expect(asked).rejects.toMatchObject({ name: 'AbortError' });
    }
  });

  test('more pictures than any device takes in go into a second file, none is lost between the two', async () => {
    const files = Array.from({ length: 5003 }, (_, index) => fileOf(`picture ${index}`));
    await deviceWith(rows.slice(0, 3), files);
    const first = await makeBackup();
    expect(first).toMatchObject({ filesCount: 5000, filesLeftOut: { count: 3 } });
    const second = await makeBackup({ filesFrom: first.filesLeftOut?.from as string });
    expect(second.name).toMatch(/-more\.zip$/);
    expect(second).toMatchObject({ filesCount: 3, factsCount: 3 });
    expect(second).not.toHaveProperty('filesLeftOut');
    const both = [...(await inside(first)).files, ...(await inside(second)).files];
    expect(both.sort()).toEqual(files.map(({ hash }) => `files/${hash}.jpg`).sort());
  }, 60_000);

  test('sealed, it says so by its name, shows nothing, and holds the same archive', async () => {
    await deviceWith(rows.slice(0, 5));
    const passphrase = 'nine wet windows leaning on a rail';
    const steps: string[] = [];
    const made = await makeBackup({ passphrase, onProgress: ({ step }) => void steps.push(step) });
    expect(made.name).toMatch(/^fullshift-book-everything-2026-11-25-\d{4}\.zip\.age$/);
    expect(made).toMatchObject({ sealed: true, factsCount: 5 });
    expect(new Set(steps)).toEqual(new Set(['reading', 'packing', 'sealing']));
    const text = new TextDecoder('latin1').decode(await bytesOf(made.blob));
    expect(text.startsWith('age-encryption.org/v1\n')).toBe(true);
    expect(text).not.toContain('book.txt');
    const opened = await unseal(made.blob, passphrase);
    expect(opened.kind).toBe('opened');
    if (opened.kind !== 'opened') return;
    expect((await inside({ ...made, blob: opened.blob })).ids).toEqual(ids(rows.slice(0, 5)));
  }, 60_000);

  test('only the whole book counts as a backup', async () => {
    const { db } = await deviceWith(rows);
    const made = await makeBackup();
    await noteHandedOut({ ...made, part: 'lacking', partner: office });
    expect(await db.meta.get('lastBackup')).toBeUndefined();
    expect((await db.meta.get('lastNews'))?.value).toEqual({ at: '2026-11-25T11:00:00.000Z', partner: office });
    await noteHandedOut(made);
    expect((await db.meta.get('lastBackup'))?.value).toEqual({ at: '2026-11-25T11:00:00.000Z', factsCount: 703 });
  });
});

/** Two devices with random parts of one book, every second partner with gaps: what ours sends for the header that theirs wrote. */
async function exchangeOf(seed: number) {
  const { between } = seededRandom(seed);
  const universe = writers.flatMap((writer) => chainOf(writer, blank(between(0, 14))));
  const part = (oddsOfGap: number): JournalRow[] => {
    const upTo = new Map<string, number>(writers.map((writer) => [writer, between(0, 14)]));
    return universe.filter(
      ({ id }) => Number(id.slice(13)) <= (upTo.get(id.slice(0, 12)) ?? 0) && between(1, 100) > oddsOfGap,
    );
  };
  const [ours, theirs] = [part(seed % 3 === 0 ? 5 : 0), part(seed % 2 === 0 ? 8 : 0)];
  await deviceWith(theirs, [], office);
  const { header } = await inside(await makeBackup());
  await deviceWith(ours, [], writers[0]);
  await notePartner(header);
  const read = await inside(await makeNews(office));
  expect(read.endIsTrue).toBe(true);
  expect(read.header.part).toBe('lacking');
  return { sent: read.ids, ours: ids(ours), theirs: new Set(ids(theirs)) };
}

describe('what a partner lacked', () => {
  test('over random histories it is exactly the set difference, and what lies past the partner’s first gap', async () => {
    const seen = { gaps: 0, ahead: 0, nothing: 0 };
    for (let seed = 1; seed <= 120; seed += 1) {
      const { sent, ours, theirs } = await exchangeOf(seed);
      const whole = upToFirstGap(theirs);
      expect(sent).toEqual(ours.filter((id) => !whole.has(id)));
      expect(new Set([...sent, ...theirs])).toEqual(new Set([...ours, ...theirs]));
      if (whole.size === theirs.size) expect(sent).toEqual(ours.filter((id) => !theirs.has(id)));
      seen.gaps += Number(whole.size < theirs.size);
      seen.ahead += Number([...theirs].some((id) => !ours.includes(id)));
      seen.nothing += Number(sent.length === 0);
    }
    console.info(`random histories: ${JSON.stringify(seen)}`);
    expect(seen.gaps).toBeGreaterThan(10);
    expect(seen.ahead).toBeGreaterThan(50);
    expect(seen.nothing).toBeGreaterThan(0);
  }, 60_000);

  test('a head of its that stands on other bytes here counts for nothing: all of that writer goes along', async () => {
    const rows = [...chainOf(writers[0], blank(5)), ...chainOf(office, blank(5))];
    await deviceWith(rows, [], writers[0]);
    const holds = [
      { factId: rows[3]?.id, link: rows[3]?.link },
      { factId: rows[7]?.id, link: 'f'.repeat(64) },
    ];
    await notePartner({
      from: { writer: office, deviceName: null, madeAt: '2026-11-25T10:00:00.000Z' },
      holds,
    } as never);
    const { ids: read, header } = await inside(await makeNews(office));
    expect(read).toEqual(ids([rows[4], ...rows.slice(5)] as JournalRow[]));
    expect(header.since).toEqual([holds[0]]);
  });

  test('files go along that its news name, or that it asked for; no others', async () => {
    const [named, asked, old] = [fileOf('named'), fileOf('asked for'), fileOf('old')];
    const rows = chainOf(writers[0], [picture(old.hash), {}, picture(named.hash), picture(fileOf('not here').hash)]);
    await deviceWith(rows, [named, asked, old], writers[0]);
    const holds = [{ factId: rows[1]?.id, link: rows[1]?.link }];
    const from = { writer: office, deviceName: null, madeAt: '2026-11-25T10:00:00.000Z' };
    await notePartner({ from, holds, lacksFiles: [asked.hash, fileOf('nowhere').hash] } as never);
    const made = await makeNews(office);
    expect((await inside(made)).files.sort()).toEqual([named, asked].map(({ hash }) => `files/${hash}.jpg`).sort());
    expect(made).toMatchObject({ part: 'lacking', partner: office, filesCount: 2, factsCount: 2, bookFactsCount: 4 });
    expect(made.name).toMatch(/^fullshift-book-news-2026-11-25-\d{4}\.zip$/);
  });

  test('a partner of whom no file was taken in gets everything', async () => {
    const rows = chainOf(writers[0], blank(3));
    await deviceWith(rows);
    const made = await makeNews('e00000000001');
    expect(made).toMatchObject({ part: 'everything', partner: null, factsCount: 3 });
    expect((await inside(made)).header.since).toBeUndefined();
  });

  test('of a book of 20,000 entries, only what is new is read', async () => {
    const rows = chainOf(writers[0], blank(20_000));
    await deviceWith(rows, [], writers[0]);
    const holds = [{ factId: rows[19_989]?.id, link: rows[19_989]?.link }];
    await notePartner({
      from: { writer: office, deviceName: null, madeAt: '2026-11-25T10:00:00.000Z' },
      holds,
    } as never);
    const { result, rows: readCount, requests } = await counting(() => makeNews(office));
    expect(result.factsCount).toBe(10);
    console.info(`rows read for ten new entries of 20,000: ${readCount}, in ${requests.length} requests`);
    expect(readCount).toBeLessThanOrEqual(30);
    expect(requests.length).toBeLessThanOrEqual(40);
  }, 60_000);
});
