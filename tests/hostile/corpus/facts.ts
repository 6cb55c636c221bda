/** Facts that are sound as a chain and hostile in what they say. What cannot be carried is left out; the rest is taken. */
import { type BadFile, refused, taken } from '../badFile.ts';
import {
  base,
  baseLines,
  blobOf,
  bookText,
  chain,
  idOf,
  type Line,
  newLines,
  other,
  remark,
  siteId,
  type Wish,
} from '../making.ts';

const third = 'dddddddddddd';
const after = (lines: readonly Line[]) => (): Blob => blobOf(bookText([...baseLines(), ...newLines, ...lines]));
const one = (wish: Wish): Line[] => chain(third, [wish]);
/** Left out, and said so. */
const leftOut = (name: string, wish: Wish): BadFile => ({
  name,
  file: after(one(wish)),
  expected: taken(newLines, { unreadableCount: 1 }),
});
/** Carried as something to be understood by a newer version: its records are doubtful. */
const carried = (name: string, wish: Wish): BadFile => ({
  name,
  file: after(one(wish)),
  expected: taken([...newLines, ...one(wish)], { unreadableCount: 0, newerCount: 1 }),
});
const takenAsIs = (name: string, wish: Wish): BadFile => ({
  name,
  file: after(one(wish)),
  expected: taken([...newLines, ...one(wish)], { unreadableCount: 0, newerCount: 0 }),
});
/** The same text as `remark` makes, with something put in place of its body. */
const withBody = (body: string): Wish => ({
  raw: (id) =>
    JSON.stringify(JSON.parse((chain(third, [remark('BODY')])[0] as Line).text))
      .replace('{"text":"BODY"}', body)
      .replace(idOf(third, 1), id),
});
const nested = (depth: number): string => `${'{"a":'.repeat(depth)}1${'}'.repeat(depth)}`;
const site = { siteId, name: 'Bridge', stateCode: 'OH', setting: 'outdoors', altitudeM: 230, zone: 'America/New_York' };
const siteAdded = (changed: object): Wish => ({ kind: 'siteAdded.v1', body: { ...site, ...changed } });
const between = chain(third, [remark('One'), withBody(nested(10_000)), remark('Three')]);

export const badFacts: readonly BadFile[] = [
  leftOut('a key __proto__', withBody('{"text":"x","__proto__":{"poisoned":1}}')),
  leftOut(
    'a key __proto__ seven deep',
    withBody(`{"text":"x","a":${'[{"b":'.repeat(3)}{"__proto__":{"poisoned":1}}${'}]'.repeat(3)}}`),
  ),
  leftOut('a key constructor', withBody('{"text":"x","constructor":{"prototype":{"poisoned":1}}}')),
  leftOut('a key prototype in a list', withBody('{"text":"x","list":[1,{"prototype":2}]}')),
  leftOut('a key __proto__ written with escapes', withBody('{"text":"x","\\u005f\\u005fproto__":{"poisoned":1}}')),
  leftOut('nested ten thousand deep', withBody(nested(10_000))),
  leftOut('lists nested ten thousand deep', withBody(`{"text":"x","a":${'['.repeat(10_000)}${']'.repeat(10_000)}}`)),
  leftOut('nested 30 deep', withBody(nested(30))),
  {
    name: 'one left out between two',
    file: after(between),
    expected: taken([...newLines, between[0] as Line, between[2] as Line], {
      unreadableCount: 1,
      gaps: [{ writer: third, fromCount: 2, toCount: 2 }],
    }),
  },
  leftOut('about nothing', { ...remark('x'), about: [] }),
  leftOut('about 41 records', { ...remark('x'), about: Array.from({ length: 41 }, (_, at) => `site:${at}`) }),
  leftOut('about something that is no key', { ...remark('x'), about: ['../site'] }),
  leftOut('about a list', { ...remark('x'), more: { about: { length: 1, 0: 'site:1' } } }),
  leftOut('a kind of no shape', { ...remark('x'), kind: '__proto__' }),
  leftOut('happened on the 31st of February', {
    ...remark('x'),
    more: { happened: { at: '2026-02-31T12:00:00.000Z', zone: 'UTC', offsetMin: 0, entry: 'tapped', from: null } },
  }),
  leftOut('happened a thousand hours ahead of UTC', {
    ...remark('x'),
    more: { happened: { at: '2026-11-25T12:00:00.000Z', zone: 'UTC', offsetMin: 60_000, entry: 'tapped', from: null } },
  }),
  leftOut('recorded by no clock', { ...remark('x'), more: { recorded: 'now' } }),
  leftOut('a body that is text', { ...remark('x'), body: 'text' }),
  leftOut('only an id', { raw: (id) => `{"id":"${id}"}` }),
  takenAsIs('happened in the year 9999', {
    ...remark('x'),
    more: { happened: { at: '9999-12-31T23:59:59.999Z', zone: 'UTC', offsetMin: 0, entry: 'tapped', from: null } },
  }),
  takenAsIs('happened in a zone that does not exist', {
    ...remark('x'),
    more: {
      happened: { at: '2026-11-25T12:00:00.000Z', zone: 'Middle/Earth', offsetMin: 0, entry: 'tapped', from: null },
    },
  }),
  carried('a remark without text', { ...remark('x'), body: {} }),
  carried('numbers as text', siteAdded({ altitudeM: '230' })),
  carried('a number beyond all numbers', withKind('siteAdded.v1', `${JSON.stringify(site).replace('230', '1e999')}`)),
  carried('an altitude of 1e308', siteAdded({ altitudeM: 1e308 })),
  // Found by drawn files: compared with its bounds, it threw.
  carried('an object in place of a number', siteAdded({ altitudeM: { valueOf: null, toString: 1 } })),
  takenAsIs('a correction to an object in place of a number', {
    kind: 'valueCorrected.v1',
    body: {
      ...{ replaces: idOf(base, 2), path: '/altitudeM', old: 230, supersedes: null },
      new: { valueOf: null, toString: 1 },
    },
    more: { why: 'x' },
  }),
  carried('a zone that is a list', siteAdded({ zone: ['America/New_York'] })),
  carried('a kind of the future that must be understood', {
    ...remark('x'),
    kind: 'ladderLeant.v9',
    more: { mustUnderstand: true },
  }),
  carried('a kind of the future', { ...remark('x'), kind: 'ladderLeant.v9' }),
  carried('a kind called toString', { ...remark('x'), kind: 'toString.v1' }),
  takenAsIs('keys of the future', { ...remark('x'), more: { weather: { rain: true } } }),
  takenAsIs('a site that is here already', siteAdded({})),
  takenAsIs('a site whose fact is about another record', { ...siteAdded({}), about: ['site:s99999999999'] }),
  takenAsIs('half of a pair of letters', withBody('{"text":"\\ud800 and \\udc00\\ud800"}')),
  takenAsIs('marks that turn the reading around', remark('\u202e\u2066safe\u2069\u202c \u200b\u200f\ufeff')),
  takenAsIs('markup and formulas', remark('<script>alert(1)</script>=HYPERLINK("http://x")\u0000\u0007\u001b[2J')),
  takenAsIs('two thousand marks on one letter', remark(`e${'\u0301'.repeat(1999)}`)),
  takenAsIs('line ends of other alphabets', remark('\u2028\u2029\u0085')),
  takenAsIs('a key that stands twice', withBody('{"text":"first","text":"second"}')),
  takenAsIs(
    'ten thousand keys',
    withBody(`{"text":"x",${Array.from({ length: 10_000 }, (_, at) => `"k${at}":${at}`).join(',')}}`),
  ),
  takenAsIs('a correction of what nobody wrote', {
    kind: 'valueCorrected.v1',
    body: { replaces: idOf('zzzzzzzzzzzz', 5), path: '/__proto__/poisoned', old: 1, new: 2, supersedes: null },
    more: { why: 'x' },
  }),
  takenAsIs('a correction that poisons', {
    kind: 'valueCorrected.v1',
    body: { replaces: idOf(other, 1), path: '/constructor/prototype/poisoned', old: null, new: 2, supersedes: null },
    more: { why: 'x' },
  }),
  takenAsIs('a correction that follows itself', {
    kind: 'valueCorrected.v1',
    body: { replaces: idOf(third, 1), path: '/text', old: 'x', new: 'y', supersedes: idOf(third, 1) },
    more: { why: 'x' },
  }),
  takenAsIs('a second opening of the book', {
    kind: 'bookOpened.v1',
    about: ['book:b00000000001'],
    body: { bookId: 'b00000000001', firmName: 'Somebody else', practice: true },
  }),
  {
    name: 'an id of another shape',
    file: after([
      { ...(one(remark('x'))[0] as Line), text: one(remark('x'))[0]?.text.replace(idOf(third, 1), 'DDDD.1') ?? '' },
    ]),
    expected: refused('damaged'),
  },
  { name: 'an id that is a number', file: after(one({ raw: () => '{"id":7}' })), expected: refused('damaged') },
  {
    name: 'sequence 0',
    file: after(chain(third, [remark('x')], 0)),
    expected: taken([...newLines, ...chain(third, [remark('x')], 0)]),
  },
  {
    name: 'sequence 99,999,999',
    file: after(chain(third, [remark('x')], 99_999_999)),
    expected: taken([...newLines, ...chain(third, [remark('x')], 99_999_999)], {
      gaps: [{ writer: third, fromCount: 1, toCount: 99_999_998 }],
    }),
  },
  { name: 'a fact that is null', file: after(one({ raw: () => 'null' })), expected: refused('damaged') },
  { name: 'a fact that is no JSON', file: after(one({ raw: (id) => `{"id":"${id}"` })), expected: refused('damaged') },
  {
    name: 'nine hundred writers',
    file: after(
      Array.from({ length: 900 }, (_, at) => chain(`e${String(at).padStart(11, '0')}`, [remark('x')])).flat(),
    ),
    expected: taken([
      ...newLines,
      ...Array.from({ length: 900 }, (_, at) => chain(`e${String(at).padStart(11, '0')}`, [remark('x')])).flat(),
    ]),
  },
];

/** A known kind whose body is text as it stands. */
function withKind(kind: string, body: string): Wish {
  return {
    raw: (id) =>
      (chain(third, [{ kind, body: { BODY: 1 } }])[0] as Line).text
        .replace('{"BODY":1}', body)
        .replace(idOf(third, 1), id),
  };
}
