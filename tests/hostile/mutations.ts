/** Files drawn from a seed: sound ones changed byte by byte, line by line, value by value, and chains made up from nothing. */
import type { Lots } from '../records/interleavings.ts';
import { baseLines, bookText, chain, headerOf, type Line, remark, sha, siteId, type Wish } from './making.ts';

/** What somebody hostile would put in the place of any value. */
export const hostileValues: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  1e308,
  -0.5,
  2 ** 53,
  '',
  ' ',
  '230',
  'x'.repeat(500),
  '\ud800',
  '\u202e',
  '\u0000',
  '__proto__',
  '../x',
  [],
  [[]],
  {},
  { length: 3 },
  ['a'],
  Array.from({ length: 45 }, () => 'site:a'),
  { toString: 1, valueOf: null },
  '2026-02-30T12:00:00.000Z',
  '2026-11-25T12:00:00.000Z',
  '0000-01-01T00:00:00.000Z',
  'constructor',
  'zzzzzzzzzzzz.00000001',
];
const hostileKeys = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'length',
  '',
  'id',
  'kind',
  'body',
  'mustUnderstand',
  'a b',
];

type Tree = { [key: string]: unknown };
/** Every object and list in a value. */
function treesIn(value: unknown, found: Tree[] = []): Tree[] {
  if (typeof value !== 'object' || value === null) return found;
  found.push(value as Tree);
  for (const inner of Object.values(value)) treesIn(inner, found);
  return found;
}

/** One value, key or place in a parsed JSON value changed. */
function changeValue(value: unknown, lots: Lots): void {
  const tree = lots.one(treesIn(value));
  const keys = Object.keys(tree);
  const what = lots.upTo(4);
  const hostile = structuredClone(lots.one(hostileValues));
  const shape = { value: hostile, enumerable: true, configurable: true, writable: true };
  if (what === 0 && keys.length > 0) delete tree[lots.one(keys)];
  else if (what === 1 && !Array.isArray(tree)) Object.defineProperty(tree, lots.one(hostileKeys), shape);
  else if (keys.length > 0) tree[lots.one(keys)] = hostile;
}

function changedJson(text: string, lots: Lots): string {
  const value: unknown = JSON.parse(text);
  for (let times = 1 + lots.upTo(2); times > 0; times -= 1) changeValue(value, lots);
  return JSON.stringify(value);
}

const kinds: readonly Wish[] = [
  remark('Dry scraping'),
  {
    kind: 'personAdded.v1',
    body: {
      personId: 'p00000000001',
      name: 'Ada Quill',
      identifier: null,
      language: 'en',
      jobClassificationId: null,
      employer: null,
    },
  },
  { kind: 'pumpAdded.v1', body: { pumpId: 'q00000000001', serial: 'P-1', model: null } },
  {
    kind: 'siteAdded.v1',
    body: { siteId, name: 'Bridge', stateCode: 'OH', setting: 'outdoors', altitudeM: null, zone: 'America/New_York' },
  },
  { kind: 'nameChanged.v1', body: { name: 'North bridge' } },
  { kind: 'ladderLeant.v2', body: { angle: 75 }, more: { mustUnderstand: true } },
  {
    kind: 'valueCorrected.v1',
    body: {
      replaces: 'bbbbbbbbbbbb.00000003',
      path: '/text',
      old: 'The north windows are first',
      new: 'South',
      supersedes: null,
    },
    more: { why: 'Read anew' },
  },
  {
    kind: 'valueCorrected.v1',
    body: { replaces: 'bbbbbbbbbbbb.00000002', path: '/altitudeM', old: 230, new: 240, supersedes: null },
    more: { why: 'Map' },
  },
];
const alphabet = '0123456789abcdefghjkmnpqrstvwxyz';
const writerFrom = (lots: Lots): string => Array.from({ length: 12 }, () => alphabet[lots.upTo(32)]).join('');

/** A few facts of a writer nobody met. */
export const freshLines = (lots: Lots): Line[] =>
  chain(
    writerFrom(lots),
    Array.from({ length: 1 + lots.upTo(3) }, () => lots.one(kinds)),
  );

/** Facts changed first and linked afterwards: a sound chain of whatever somebody wants to say. */
export function hostileChain(lots: Lots): Line[] {
  const writer = writerFrom(lots);
  const wishes = Array.from({ length: 1 + lots.upTo(3) }, (): Wish => {
    const wish = lots.one(kinds);
    if (lots.upTo(3) === 0) return wish;
    return { raw: (id) => changedJson((chain(id.slice(0, 12), [wish], Number(id.slice(13)))[0] as Line).text, lots) };
  });
  const from = lots.upTo(5) === 0 ? lots.one([0, 2, 7, 99_999_990]) : 1;
  return chain(writer, wishes, from, from === 1 ? '' : sha('before'));
}

/** Header changed, end mark true to it. */
export const hostileHeader = (lines: readonly Line[], lots: Lots): string =>
  bookText(lines, {
    rawHeader: changedJson(
      headerOf(
        lines,
        lots.upTo(2) === 0
          ? {}
          : {
              part: 'lacking',
              since: [],
              holds: [],
              from: { writer: 'cccccccccccc', deviceName: 'Van', madeAt: '2026-11-25T12:00:00.000Z' },
              lacksFiles: [],
            },
      ),
      lots,
    ),
  });

/** A continuation, a repetition or a contradiction of what is here. */
export function besideBase(lots: Lots): Line[] {
  const lines = baseLines();
  const last = lines[lots.upTo(4)] as Line;
  const from = Number(last.id.slice(13)) + 1;
  return [
    ...lines.slice(0, from - 1),
    ...chain('bbbbbbbbbbbb', [lots.one(kinds)], from, lots.upTo(3) === 0 ? sha('no') : last.link),
  ];
}

export function changedLines(text: string, lots: Lots): string {
  const lines = text.split('\n');
  const at = lots.upTo(lines.length);
  const other = lots.upTo(lines.length);
  const what = lots.upTo(7);
  const line = lines[at] || '{}';
  if (what === 0) lines.splice(at, 1);
  else if (what === 1) lines.splice(other, 0, line);
  else if (what === 2) [lines[at], lines[other]] = [lines[other] ?? '', line];
  else if (what === 3)
    lines.splice(
      at,
      0,
      lots.one(['', ' ', '{}', 'null', '[]', '\r', '\u0000', '{"end":"fullshift-book","factsCount":0,"hash":""}']),
    );
  else if (what === 4) lines[at] = `${line}${lots.one([' ', '\r', 'x', '\u2028'])}`;
  else if (what === 5) lines[at] = line.slice(0, lots.upTo(line.length + 1));
  else
    lines[at] = line.startsWith('{') ? changedJson(line, lots) : line.slice(0, 65) + changedJson(line.slice(65), lots);
  return lines.join('\n');
}

/** One or a few places changed, put in, taken out, doubled or cut. */
export function changedBytes(bytes: Uint8Array, lots: Lots): Uint8Array {
  let now = bytes;
  for (let times = 1 + lots.upTo(3); times > 0; times -= 1) {
    const at = lots.upTo(now.length + 1);
    const to = Math.min(now.length, at + 1 + lots.upTo(lots.one([1, 4, 30, 300])));
    const [head, middle, tail] = [now.slice(0, at), now.slice(at, to), now.slice(to)];
    const noise = Uint8Array.from({ length: 1 + lots.upTo(4) }, () =>
      lots.one([0, 1, 10, 13, 34, 80, 123, 127, 128, 255, lots.upTo(256)]),
    );
    const turned = middle.map((byte) => byte ^ (1 << lots.upTo(8)));
    const parts = lots.one([
      [head, turned, tail],
      [head, turned, tail],
      [head, noise, middle, tail],
      [head, noise, tail],
      [head, tail],
      [head, middle, middle, tail],
      [head],
      [middle, head, tail],
    ]);
    now = Buffer.concat(parts);
  }
  return now;
}
