/** A report that somebody mails to a stranger: it says how the device stands, and nothing of what the book says. */
import { beforeEach, expect, test } from 'vitest';
import { newId } from '#store/device.ts';
import { setDeviceName } from '#store/handOver/partners.ts';
import { forgetErrors, lastErrors, noteError, withoutValues } from '#store/lastErrors.ts';
import { newFact } from '#store/newFact.ts';
import { newBook } from '#store/opening.ts';
import { problemReport } from '#store/problemReport.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestDevice, testClock } from './device.ts';
import { entry } from './scenario.ts';

let device: TestDevice;

/** Names that a careless report would carry, or that would break out of a quoted or structured one. */
const hostile = [
  'Pia Putty',
  'Otto "Oakum" Tarr',
  "O'Malley; DROP TABLE",
  'transaction',
  'Zoë bytes used: 0',
  '<script>alert(7)</script>',
  'Crew 48-05 Nord',
  '{"name":"Ada"}',
  'write',
  'Ж. Иванова',
];

beforeEach(async () => {
  testClock();
  device = newDevice();
  await pickUp(device);
  forgetErrors();
  await newBook({ firmName: 'Sill & Sash Quorum', practice: false });
  const others = { identifier: null, language: 'en', jobClassificationId: null, employer: null } as const;
  const people = hostile.map((name) => newFact('personAdded.v1', { personId: newId(), name, ...others }, entry()));
  expect(await write(people)).toMatchObject({ kind: 'written' });
  const pump = newFact('pumpAdded.v1', { pumpId: newId(), serial: 'SN-48213', model: 'Gusty Nine' }, entry());
  expect(await write([{ ...pump, why: 'bought from Brindle Brothers' }])).toMatchObject({ kind: 'written' });
  await setDeviceName('Phone of Wanda Keel');
});

const report = () => problemReport({ editions: { rules: '2026-01-01.abc' }, update: 'none waits' });

/** The strings of the book, word by word; words of three letters and more. */
async function wordsOfTheBook(): Promise<readonly string[]> {
  const rows = await theSession().db.journal.toArray();
  const strings: string[] = [];
  const collect = (value: unknown): void => {
    if (typeof value === 'string') strings.push(value);
    else if (typeof value === 'object' && value !== null) for (const inner of Object.values(value)) collect(inner);
  };
  for (const { text } of rows) {
    const { body, why, id } = JSON.parse(text);
    collect([body, why, id]);
  }
  return strings.flatMap((text) => text.match(/[\p{L}\p{N}]{3,}/gu) ?? []);
}

test('no name, number or note of the book occurs in it, even where an error carried one', async () => {
  // Said by the report itself, whatever the book says: its own fixed words.
  const fixed = new Set((await report()).toLowerCase().match(/[\p{L}\p{N}]{3,}/gu));
  const inBook = [...new Set(await wordsOfTheBook())].filter((word) => !fixed.has(word.toLowerCase()));
  expect(inBook.length).toBeGreaterThan(20);
  for (const name of [...hostile, 'SN-48213 of Gusty Nine', 'Brindle Brothers']) {
    forgetErrors();
    noteError(new SyntaxError(`Unexpected token 'P', "${name}" is not valid JSON`));
    noteError(new TypeError(`cannot read ${name} of undefined`));
    noteError(name);
    const named = new Error('with a place');
    named.stack = `Error: ${name}\n    at ${name} (http://host/assets/${name}.js:1:2)`;
    noteError(named);
    const text = await report();
    expect(text).toMatch(/^last errors: 4$/m);
    const said = new Set(text.toLowerCase().match(/[\p{L}\p{N}]+/gu));
    expect(inBook.filter((word) => said.has(word.toLowerCase()))).toEqual([]);
    if (name.includes(' ')) expect(text).not.toContain(name);
    for (const own of ['Quorum', 'Wanda', 'Keel', theSession().bookId, theSession().writer])
      expect(text).not.toContain(own);
  }
});

test('says versions, counts, marks and where errors came from', async () => {
  const failed = new RangeError('offset is out of bounds');
  failed.stack = 'RangeError: offset\n    at async packing (http://host/assets/keep-9c.js:3:117)';
  noteError(failed);
  const text = await report();
  expect(text).toMatch(/^app: \d+\.\d+\.\d+$/m);
  expect(text).toMatch(/^rules: 2026-01-01\.abc$/m);
  expect(text).toMatch(new RegExp(`^entries: ${await theSession().db.journal.count()}$`, 'm'));
  expect(text).toMatch(/^mark of book: last sequence \d+, lists complete$/m);
  expect(text).toMatch(/^mark of practice: none/m);
  expect(text).toMatch(/RangeError: offset is out of bounds\n {4}packing keep-9c\.js:3:117$/m);
});

test('errors are kept over a reload, twenty at most, and the same one once', () => {
  for (let n = 0; n < 3; n += 1) noteError(new TypeError('again'));
  expect(lastErrors()).toHaveLength(1);
  for (let n = 0; n < 30; n += 1) noteError(new Error(`number ${'x'.repeat(n)}`));
  expect(lastErrors()).toHaveLength(20);
  expect(JSON.parse(device.storage.get('fullshift.errors') ?? '[]')).toHaveLength(20);
});

test('a message keeps its words and loses what it quotes and counts', () => {
  expect(withoutValues('Key "Pia Putty" of 12 is gone')).toBe('Key […]');
  expect(withoutValues('Unexpected token \'x\', ..."name":"Ada L')).toBe('Unexpected token […]');
  expect(withoutValues("can't find 3 rows")).toBe("can't find # rows");
  expect(withoutValues('x'.repeat(5000))).toHaveLength(160);
});
