/** What is known of other devices, and how much each lacked: counted here once more as sets. */
import { beforeEach, describe, expect, test } from 'vitest';
import type { BookHeader } from '#records/fileFormat.ts';
import type { JournalRow } from '#store/database.ts';
import { lackedFiles, noteLackedFiles } from '#store/handOver/lackedFiles.ts';
import {
  deviceNameIn,
  forgetPartner,
  notePartner,
  partnerRow,
  partners,
  partnersIn,
  setDeviceName,
} from '#store/handOver/partners.ts';
import { wholeHeads } from '#store/heads.ts';
import { newBook } from '#store/opening.ts';
import { theSession } from '#store/session.ts';
import { blank, chainOf } from './chains.ts';
import { counting } from './countRequests.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { seededRandom } from './seeded.ts';

const writers = ['a00000000001', 'b00000000001', 'c00000000001'] as const;
const [phone, office, third] = writers;

beforeEach(async () => {
  testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  await theSession().db.journal.clear();
});

const hold = (rows: readonly JournalRow[]) => theSession().db.journal.bulkAdd([...rows]);
const headOf = (row: JournalRow | undefined) => ({ factId: row?.id ?? '', link: row?.link ?? '' });

interface Told {
  readonly at?: string;
  readonly holds?: readonly { factId: string; link: string }[];
  readonly lacksFiles?: readonly string[];
  readonly deviceName?: string | null;
}

/** As it would be read from a file of that device. */
const headerOf = (writer: string, { at = '2026-11-25T10:00:00.000Z', holds = [], ...more }: Told = {}): BookHeader => ({
  format: 'fullshift-book',
  formatVersion: 1,
  bookId: theSession().bookId,
  practice: false,
  writtenBy: 'fullshift',
  heads: [],
  from: { writer, deviceName: more.deviceName ?? null, madeAt: at },
  holds: [...holds],
  lacksFiles: [...(more.lacksFiles ?? [])],
});

describe('a partner', () => {
  test('is known by the last file of its that was taken in: name, time, what it lacked', async () => {
    const rows = [...chainOf(phone, blank(9)), ...chainOf(office, blank(4))];
    await hold(rows);
    await notePartner(headerOf(office, { deviceName: 'Office  laptop', holds: [headOf(rows[5]), headOf(rows[12])] }));
    expect(await partners()).toEqual([
      {
        writer: office,
        deviceName: 'Office laptop',
        lastFileAt: '2026-11-25T10:00:00.000Z',
        lacksCount: 3,
        aheadCount: 0,
      },
    ]);
  });

  test('an older file of its, found later, changes nothing; one that covers more counts whatever its clock says', async () => {
    const rows = chainOf(phone, blank(9));
    await hold(rows);
    const told = async (at: string, index: number) =>
      notePartner(headerOf(office, { at, holds: [headOf(rows[index])] }));
    await told('2026-11-25T10:00:00.000Z', 5);
    await told('2026-11-24T10:00:00.000Z', 2);
    expect(await partners()).toMatchObject([{ lacksCount: 3, lastFileAt: '2026-11-25T10:00:00.000Z' }]);
    await told('2026-11-23T10:00:00.000Z', 7);
    expect(await partners()).toMatchObject([{ lacksCount: 1 }]);
  });

  test('a newer file that holds less is believed: more is sent, never less', async () => {
    const rows = chainOf(phone, blank(9));
    await hold(rows);
    await notePartner(headerOf(office, { holds: [headOf(rows[8])] }));
    await notePartner(headerOf(office, { at: '2026-11-25T10:30:00.000Z', holds: [headOf(rows[1])] }));
    expect(await partners()).toMatchObject([{ lacksCount: 7 }]);
  });

  test('files without a maker, of this device itself, or with a maker that is no writer tell nothing', async () => {
    const { from: _, ...old } = headerOf(office);
    await notePartner(old as BookHeader);
    await notePartner(headerOf(theSession().writer));
    await notePartner(headerOf('__proto__'));
    await notePartner(headerOf(`${office} `));
    expect(await partners()).toEqual([]);
  });

  test('heads that are no ids and hashes that are none are left out', async () => {
    const bad = { factId: 'no id', link: 'x' };
    await notePartner(headerOf(office, { holds: [bad], lacksFiles: ['../up', 'f'.repeat(64)] }));
    expect(await partnerRow(theSession().db, office)).toMatchObject({ holds: [], lacksFiles: ['f'.repeat(64)] });
  });

  test('can be forgotten, and fifty are kept at most, those heard of last', async () => {
    for (let index = 10; index < 70; index += 1)
      await notePartner(headerOf(`d000000000${index}`, { at: `2026-11-25T10:00:00.0${index}Z` }));
    const known = await partners();
    expect(known).toHaveLength(50);
    expect(known[0]?.writer).toBe('d00000000069');
    await forgetPartner('d00000000069');
    expect((await partners())[0]?.writer).toBe('d00000000068');
  });

  test('what it lacks and what it is ahead by are the set differences, over random histories', async () => {
    const seen = { lacking: 0, ahead: 0, gaps: 0 };
    for (let seed = 1; seed <= 60; seed += 1) {
      // Another device for each history: what is known to be whole is remembered of a journal that only grows.
      await pickUp(newDevice());
      await newBook({ firmName: 'Old Sash & Steel', practice: false });
      await theSession().db.journal.clear();
      const { between } = seededRandom(seed);
      const universe = writers.flatMap((writer) => chainOf(writer, blank(12)));
      const ours = universe.filter(() => between(1, 10) > (seed % 2 === 0 ? 1 : 0));
      const to = writers.map((writer) => ({ writer, upTo: between(0, 12) }));
      const theirs = universe.filter(({ id }) =>
        to.some(({ writer, upTo }) => id.startsWith(writer) && Number(id.slice(13)) <= upTo),
      );
      await hold(ours);
      const holds = to.flatMap(({ writer, upTo }) => {
        const last = universe.find(({ id }) => id.startsWith(writer) && Number(id.slice(13)) === upTo);
        return last === undefined ? [] : [headOf(last)];
      });
      await notePartner(headerOf('e00000000001', { holds }));
      const [here, there] = [new Set(ours.map(({ id }) => id)), new Set(theirs.map(({ id }) => id))];
      const lacksCount = [...here].filter((id) => !there.has(id)).length;
      const aheadCount = [...there].filter((id) => !here.has(id)).length;
      expect(await partners()).toMatchObject([{ lacksCount, aheadCount }]);
      expect(await partners()).toMatchObject([{ lacksCount, aheadCount }]);
      seen.lacking += Number(lacksCount > 0);
      seen.ahead += Number(aheadCount > 0);
      seen.gaps += Number(ours.length < universe.length);
    }
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(20);
  });

  test('counting reads two rows a writer, of a book of any size, and asks within one zone', async () => {
    const rows = [...chainOf(phone, blank(3000)), ...chainOf(office, blank(2000)), ...chainOf(third, blank(1000))];
    await hold(rows);
    await notePartner(headerOf(office, { holds: [headOf(rows[2000]), headOf(rows[4999])] }));
    const { result, rows: readCount } = await counting(partners);
    expect(result).toMatchObject([{ lacksCount: 999 + 1000, aheadCount: 0 }]);
    expect(readCount).toBeLessThanOrEqual(2 * writers.length + 3);
    const { db } = theSession();
    await expect(Promise.resolve(db.transaction('r', db.tables, () => partnersIn(db)))).resolves.toEqual(result);
  });
});

describe('up to where a writer is held without a gap', () => {
  test('is the last before the first gap, wherever it is; a writer whose first is missing has none', async () => {
    for (const missing of [1, 2, 7, 19, 20]) {
      await pickUp(newDevice());
      await newBook({ firmName: 'Old Sash & Steel', practice: false });
      const { db } = theSession();
      await db.journal.clear();
      const rows = chainOf(phone, blank(20));
      await hold(rows.filter((_, index) => index + 1 !== missing));
      const head = headOf(rows[missing === 20 ? 18 : 19]);
      expect(await wholeHeads(db, [head])).toEqual(missing === 1 ? [] : [headOf(rows[missing - 2])]);
      // Filled later, it goes on to the end.
      await db.journal.add(rows[missing - 1] as JournalRow);
      expect(await wholeHeads(db, [headOf(rows[19])])).toEqual([headOf(rows[19])]);
    }
  });
});

describe('beside the book', () => {
  test('the name of this device is trimmed, short, can be taken away, and is not in the journal', async () => {
    const { db } = theSession();
    expect(await deviceNameIn(db)).toBeNull();
    await setDeviceName(`  Van   phone ${'x'.repeat(100)}`);
    expect(await deviceNameIn(db)).toBe(`Van phone ${'x'.repeat(30)}`);
    expect(await db.journal.count()).toBe(0);
    await setDeviceName('   ');
    expect(await deviceNameIn(db)).toBeNull();
  });

  test('files that are lacking are told until they are here', async () => {
    const { db } = theSession();
    const [one, two] = ['1'.repeat(64), '2'.repeat(64)];
    await noteLackedFiles([one]);
    await noteLackedFiles([one, two]);
    expect(await lackedFiles(db)).toEqual([one, two]);
    await db.files.add({ hash: one, type: 'image/jpeg', bytes: new Uint8Array(1) });
    expect(await lackedFiles(db)).toEqual([two]);
  });
});
