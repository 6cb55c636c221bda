/**
 * Sealed files. Outside this project: the command line of age, written by others, opens ours, and we open what it sealed; the shape of
 * the header is held against the specification, https://github.com/C2SP/C2SP/blob/main/age.md (READ).
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { armor, Encrypter, generateX25519Identity, identityToRecipient } from 'age-encryption';
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import type { Progress } from '#store/handOver/handOver.ts';
import { isSealed, seal, unseal } from '#store/handOver/sealing.ts';
import { processorMs } from '../house/processorTime.ts';
import { ageProgram } from './ageProgram.ts';

const passphrase = 'walnut easel gravel canine unicorn lantern oboe';
const own = 'Der Pumpenkeller ist 3x grün gestrichen';
const age = ageProgram();
const folder = mkdtempSync(join(tmpdir(), 'fullshift-sealing-'));
const at = (name: string): string => join(folder, name);

/** Three blocks of the format and a rest, all bytes different from their neighbours. */
const content = Uint8Array.from({ length: 3 * 65_536 + 777 }, (_, index) => (index * 7 + (index >> 8)) & 255);
let sealed = new Uint8Array();
/** The same content and passphrase, sealed by the library itself with little work: for what does not turn on the work. */
let light = new Uint8Array();
const bytesOf = async (blob: Blob): Promise<Uint8Array<ArrayBuffer>> => new Uint8Array(await blob.arrayBuffer());
const textOf = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');
const fileOf = (text: string): Blob => new Blob([Buffer.from(text, 'latin1')]);
const refused = (why: string) => ({ kind: 'refused', why });
const headBytes = (bytes: Uint8Array): number => textOf(bytes).indexOf('\n', textOf(bytes).indexOf('\n---') + 1) + 1;

beforeAll(async () => {
  sealed = await bytesOf(await seal(new Blob([content]), passphrase));
  const encrypter = new Encrypter();
  encrypter.setPassphrase(passphrase);
  encrypter.setScryptWorkFactor(10);
  light = Uint8Array.from(await encrypter.encrypt(content));
  expect(headBytes(light)).toBe(headBytes(sealed));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));
afterEach(() => vi.unstubAllGlobals());

describe('a sealed file', () => {
  test('has the header that the specification gives, with work factor 17 and a salt of its own each time', async () => {
    const header =
      /^age-encryption\.org\/v1\n-> scrypt ([A-Za-z0-9+/]{22}) 17\n[A-Za-z0-9+/]{43}\n--- [A-Za-z0-9+/]{43}\n/;
    const again = await bytesOf(await seal(new Blob([content]), passphrase));
    const salts = [sealed, again].map((bytes) => header.exec(textOf(bytes))?.[1]);
    expect(salts[0]).toBeDefined();
    expect(salts[0]).not.toBe(salts[1]);
    // Format: a nonce of 16 bytes, then blocks of 64 KiB with 16 more bytes each.
    expect(sealed.length).toBe(headBytes(sealed) + 16 + content.length + 4 * 16);
  });

  test.skipIf(age === null)('is opened by the command line of age', async () => {
    writeFileSync(at('ours.age'), sealed);
    await age?.run(`-d -o ${at('ours.out')} ${at('ours.age')}`, passphrase);
    expect(Buffer.compare(readFileSync(at('ours.out')), content)).toBe(0);
  });

  test.skipIf(age === null)('sealed with one’s own passphrase it is opened by the command line as typed', async () => {
    writeFileSync(at('own.age'), await bytesOf(await seal(new Blob([content]), ` ${own} `)));
    await age?.run(`-d -o ${at('own.out')} ${at('own.age')}`, own);
    expect(Buffer.compare(readFileSync(at('own.out')), content)).toBe(0);
  });

  test.skipIf(age === null)('made by the command line is opened here, armoured or not', async () => {
    writeFileSync(at('plain'), content);
    for (const [name, flags] of [['theirs.age', ''] as const, ['theirs.txt', '-a '] as const]) {
      await age?.run(`-p ${flags}-o ${at(name)} ${at('plain')}`, 'short-words-with-dashes');
      const file = new Blob([readFileSync(at(name))]);
      expect(textOf(await bytesOf(file)).includes(' 18\n')).toBe(flags === '');
      expect(await isSealed(file)).toBe(true);
      const opened = await unseal(file, 'short-words-with-dashes');
      expect(opened.kind === 'opened' && Buffer.compare(await bytesOf(opened.blob), content)).toBe(0);
    }
  });

  test('an empty file and one that ends with a block come back as they were', async () => {
    for (const bytes of [new Uint8Array(), content.slice(0, 65_536)]) {
      const opened = await unseal(await seal(new Blob([bytes]), passphrase), passphrase);
      expect(opened.kind === 'opened' && Buffer.compare(await bytesOf(opened.blob), bytes)).toBe(0);
    }
  });

  test('is opened whatever case, blanks and hyphens the words are typed with', async () => {
    for (const typed of ['  Walnut EASEL gravel-canine  unicorn\tlantern — oboe ', passphrase.replaceAll(' ', '-')])
      expect(await unseal(new Blob([light]), typed)).toMatchObject({ kind: 'opened' });
  });

  test('tells how far it is, and stops when asked to', async () => {
    const told: Progress[] = [];
    await unseal(new Blob([light]), passphrase, { onProgress: (progress) => told.push(progress) });
    expect(told.at(0)).toMatchObject({ step: 'opening', done: 0 });
    expect(told.at(-1)?.done).toBeGreaterThan(content.length - 1);
    const stop = new AbortController();
    const onProgress = (): void => stop.abort();
    expect(await unseal(new Blob([light]), passphrase, { onProgress, signal: stop.signal })).toEqual(
      refused('stopped'),
    );
    await expect(seal(new Blob([content]), passphrase, { signal: stop.signal })).rejects.toThrow(/abort/i);
  });
});

describe('what cannot be opened says why', () => {
  const changed = (where: number): Blob => {
    const bytes = Uint8Array.from(light);
    bytes[where] = (bytes[where] ?? 0) ^ 1;
    return new Blob([bytes]);
  };

  test('another passphrase', async () => {
    expect(await unseal(new Blob([light]), `${passphrase} oboe`)).toEqual(refused('wrongPassphrase'));
    expect(await unseal(new Blob([light]), '')).toEqual(refused('wrongPassphrase'));
  });

  test('one bit turned over, in each block, in the nonce and in the header’s own seal', async () => {
    const head = headBytes(light);
    for (const where of [head + 3, head + 16, head + 16 + 65_552, light.length - 1])
      expect(await unseal(changed(where), passphrase), `byte ${where}`).toEqual(refused('damaged'));
    expect(await unseal(changed(head - 20), passphrase)).toEqual(refused('damaged'));
    // Salt and wrapped key: nobody can tell these from a wrong passphrase.
    expect(await unseal(changed(head - 70), passphrase)).toEqual(refused('wrongPassphrase'));
  });

  test('cut anywhere, also exactly between two blocks, and with more behind it', async () => {
    const head = headBytes(light);
    for (const to of [30, 60, head - 1, head, head + 16, head + 16 + 65_552, light.length - 1])
      expect(await unseal(new Blob([light.slice(0, to)]), passphrase), `cut at ${to}`).toEqual(refused('damaged'));
    expect(await unseal(new Blob([light, new Uint8Array(20)]), passphrase)).toEqual(refused('damaged'));
  });

  test('headers that ask for too much, or for something else, are refused before any work is done', async () => {
    const text = textOf(sealed);
    const stanza = text.slice(text.indexOf('-> '), text.indexOf('---'));
    const spentMs = processorMs();
    const cases: readonly (readonly [string, string])[] = [
      [text.replace(' 17\n', ' 30\n'), 'sealNotOurs'],
      [text.replace(' 17\n', ' 19\n'), 'sealNotOurs'],
      [text.replace(' 17\n', ' 999\n'), 'sealNotOurs'],
      [text.replace(' 17\n', ' 017\n'), 'damaged'],
      [text.replace(' 17\n', ' 0\n'), 'damaged'],
      [text.replace(' 17\n', ' -1\n'), 'damaged'],
      [text.replace(' 17\n', ' 1e1\n'), 'damaged'],
      [text.replace(' 17\n', ' 17 \n'), 'damaged'],
      [text.replace(stanza, stanza + stanza), 'sealNotOurs'],
      [text.replace(stanza, `-> X25519 ${'A'.repeat(43)}\n${'A'.repeat(43)}\n${stanza}`), 'sealNotOurs'],
      [text.replace(stanza, `${stanza}-> X25519 ${'A'.repeat(43)}\n${'A'.repeat(43)}\n`), 'sealNotOurs'],
      [text.replace('/v1\n', '/v2\n'), 'sealNotOurs'],
      [text.replace('-> scrypt', '-> scrypt '), 'damaged'],
      [text.replaceAll('\n', '\r\n'), 'damaged'],
    ];
    for (const [bad, why] of cases) {
      expect(bad).not.toBe(text);
      expect(await unseal(fileOf(bad), passphrase), JSON.stringify(bad.slice(0, 120))).toEqual(refused(why));
    }
    // One derivation alone takes longer than this.
    expect(spentMs()).toBeLessThan(300);
  });

  test('a file sealed to a key instead of a passphrase', async () => {
    const encrypter = new Encrypter();
    encrypter.addRecipient(await identityToRecipient(await generateX25519Identity()));
    const file = new Blob([(await encrypter.encrypt(content)) as Uint8Array<ArrayBuffer>]);
    expect(await isSealed(file)).toBe(true);
    expect(await unseal(file, passphrase)).toEqual(refused('sealNotOurs'));
  });

  test('beyond what a book may weigh', async () => {
    const million = new Blob([new Uint8Array(1_000_000)]);
    const large = new Blob([sealed, ...new Array<Blob>(401).fill(million)]);
    expect(await unseal(large, passphrase)).toEqual(refused('tooLarge'));
  });

  test('armour: any line end opens, any fault is damage', async () => {
    const text = armor.encode(light);
    for (const good of [text, text.replaceAll('\n', '\r\n'), `\n  \n${text}\n\n`])
      expect(await unseal(fileOf(good), passphrase)).toMatchObject({ kind: 'opened' });
    const lines = text.split('\n');
    const broken = [
      text.replace('-----END AGE ENCRYPTED FILE-----\n', ''),
      [...lines.slice(0, 5), ...lines.slice(6)].join('\n'),
      [...lines.slice(0, 5), '%'.repeat(64), ...lines.slice(6)].join('\n'),
      [...lines.slice(0, 5), 'AAAA', ...lines.slice(5)].join('\n'),
      `-----BEGIN AGE ENCRYPTED FILE-----\n${'z'.repeat(500)}\n-----END AGE ENCRYPTED FILE-----\n`,
      '-----BEGIN AGE ENCRYPTED FILE-----\n',
    ];
    for (const bad of broken) {
      expect(await isSealed(fileOf(bad))).toBe(true);
      expect(await unseal(fileOf(bad), passphrase), bad.slice(0, 80)).toEqual(refused('damaged'));
    }
  });

  test('a zip, a text and nothing are not sealed', async () => {
    for (const text of ['', 'PK\u0003\u0004', '{"format":"fullshift-book"}', 'age', 'age-encryption'])
      expect(await isSealed(new Blob([text]))).toBe(false);
  });
});

describe('a device short of memory', () => {
  const Whole = Uint8Array;
  /** Refuses what a phone refuses: one piece beyond 100 MiB. */
  const shortOfMemory = (): void => {
    const Lean = new Proxy(Whole, {
      construct(target, args: [number]) {
        if (Number(args[0]) > 100 * 2 ** 20) throw new RangeError('Array buffer allocation failed');
        return new target(...args);
      },
    });
    vi.stubGlobal('Uint8Array', Lean);
  };

  test('seals with half the memory behind drawn words, never behind one’s own passphrase', async () => {
    shortOfMemory();
    const lean = await bytesOf(await seal(new Blob([content]), passphrase));
    expect(textOf(lean)).toMatch(/^age-encryption\.org\/v1\n-> scrypt [A-Za-z0-9+/]{22} 16\n/);
    await expect(seal(new Blob([content]), own)).rejects.toThrow(RangeError);
    expect(await unseal(new Blob([sealed]), passphrase)).toEqual(refused('sealNotOurs'));
    vi.unstubAllGlobals();
    expect(await unseal(new Blob([lean]), passphrase)).toMatchObject({ kind: 'opened' });
  });

  test('a passphrase too weak never seals', async () => {
    for (const weak of ['', 'walnut easel gravel', 'a'.repeat(40)])
      await expect(seal(new Blob([content]), weak)).rejects.toThrow(RangeError);
  });
});
