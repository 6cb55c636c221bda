/** Headers that are of another book, a newer format, or more than a header may be. */
import { type BadFile, refused, taken } from '../badFile.ts';
import {
  baseLines,
  blobOf,
  bookText,
  chain,
  type Header,
  headerOf,
  idOf,
  type Line,
  newLines,
  other,
  remark,
  sha,
} from '../making.ts';

const all = [...baseLines(), ...newLines];
const withHeader = (header: Header) => (): Blob => blobOf(bookText(all, { header }));
const withRaw = (rawHeader: string) => (): Blob => blobOf(bookText(all, { rawHeader }));
const head = { factId: idOf(other, 1), link: sha('x') };
const heads = (count: number) => Array.from({ length: count }, () => head);
const from = { writer: other, deviceName: 'Van', madeAt: '2026-11-25T12:00:00.000Z' };
const later = chain(other, [remark('Sixth'), remark('Seventh')], 6, sha('the fifth'));
const lacking = bookText(later, {
  header: { part: 'lacking', since: [{ factId: idOf(other, 5), link: sha('the fifth') }] },
});
const hostileName = '\u202egnp.exe\u202c \u200f\u0000\u001b[31m<img src=x onerror=alert(1)>';

export const badHeaders: readonly BadFile[] = [
  { name: 'a header that is no JSON', file: withRaw('{"format":"fullshift-book",'), expected: refused('notABackup') },
  { name: 'a header that is a list', file: withRaw('["fullshift-book"]'), expected: refused('notABackup') },
  {
    name: 'a header nested ten thousand deep',
    file: withRaw(`{"format":"fullshift-book","x":${'['.repeat(10_000)}${']'.repeat(10_000)}}`),
    expected: refused('damaged'),
  },
  {
    name: 'a header nested ten thousand deep that is whole otherwise',
    file: withRaw(`${headerOf(all).slice(0, -1)},"x":${'['.repeat(10_000)}${']'.repeat(10_000)}}`),
    expected: taken(newLines),
  },
  { name: 'no book in the header', file: withHeader({ bookId: undefined }), expected: refused('damaged') },
  { name: 'a number for a book', file: withHeader({ bookId: 7 }), expected: refused('damaged') },
  { name: 'another book', file: withHeader({ bookId: 'b00000000002' }), expected: refused('otherBook') },
  {
    name: 'the same book’s id in capitals',
    file: withHeader({ bookId: 'B00000000001' }),
    expected: refused('otherBook'),
  },
  {
    name: 'a practice book into a real one',
    file: withHeader({ practice: true }),
    expected: refused('practiceIntoReal'),
  },
  {
    name: 'a real book into a practice one',
    into: 'practice',
    file: withHeader({}),
    expected: refused('realIntoPractice'),
  },
  { name: 'neither practice nor real', file: withHeader({ practice: 'no' }), expected: refused('damaged') },
  { name: 'a newer format', file: withHeader({ formatVersion: 2 }), expected: refused('newerFormat') },
  { name: 'a format of 1e308', file: withHeader({ formatVersion: 1e308 }), expected: refused('newerFormat') },
  { name: 'format 0', file: withHeader({ formatVersion: 0 }), expected: refused('damaged') },
  { name: 'format 1.5', file: withHeader({ formatVersion: 1.5 }), expected: refused('newerFormat') },
  { name: 'format "1"', file: withHeader({ formatVersion: '1' }), expected: refused('damaged') },
  {
    name: 'an object in place of the format',
    file: withHeader({ formatVersion: { valueOf: null, toString: 1 } }),
    expected: refused('damaged'),
  },
  { name: 'no heads', file: withHeader({ heads: undefined }), expected: refused('damaged') },
  { name: '1,001 heads', file: withHeader({ heads: heads(1001) }), expected: refused('damaged') },
  {
    name: 'a hundred thousand rows of what it holds',
    file: withHeader({ holds: heads(100_000) }),
    expected: refused('notABackup'),
  },
  {
    name: '5,001 files that it lacks',
    file: withHeader({ lacksFiles: Array.from({ length: 5001 }, () => sha('x')) }),
    expected: refused('damaged'),
  },
  {
    name: 'a device’s name of 10 MB',
    file: withHeader({ from: { ...from, deviceName: 'x'.repeat(10_000_000) } }),
    expected: refused('notABackup'),
  },
  {
    name: 'a device’s name of 81 letters',
    file: withHeader({ from: { ...from, deviceName: 'x'.repeat(81) } }),
    expected: refused('damaged'),
  },
  {
    name: 'made on no day',
    file: withHeader({ from: { ...from, madeAt: 'yesterday' } }),
    expected: refused('damaged'),
  },
  {
    name: 'a device’s name that reads backwards',
    file: withHeader({ from: { ...from, deviceName: hostileName } }),
    expected: taken(newLines, { from: { ...from, deviceName: hostileName } }),
  },
  {
    name: 'made by a writer of another shape',
    file: withHeader({ from: { ...from, writer: '__proto__' } }),
    expected: taken(newLines),
  },
  {
    name: 'holds what nobody wrote',
    file: withHeader({
      from,
      holds: [
        { factId: 'constructor', link: '' },
        { factId: idOf('zzzzzzzzzzzz', 99_999_999), link: sha('x') },
      ],
    }),
    expected: taken(newLines),
  },
  { name: 'heads that are not those of its facts', file: withHeader({ heads: [head] }), expected: taken(newLines) },
  {
    name: 'keys that poison in the header',
    file: withRaw(
      bookText(all)
        .split('\n')[0]
        ?.replace('{', '{"__proto__":{"poisoned":1},"constructor":{"prototype":{"poisoned":1}},') ?? '',
    ),
    expected: taken(newLines),
  },
  {
    name: 'a kind of part from the future',
    file: withHeader({ part: 'a third' }),
    expected: taken(newLines, { part: 'everything' }),
  },
  {
    name: 'only what another lacked, with nothing before it here',
    file: () => blobOf(lacking),
    expected: taken(later, { part: 'lacking', gaps: [{ writer: other, fromCount: 1, toCount: 5 }] }),
  },
  {
    name: 'only what another lacked, into nothing',
    into: 'nothing',
    file: () => blobOf(lacking),
    expected: refused('partOnly'),
  },
  {
    name: 'two headers',
    file: () => blobOf(bookText([{ id: '', link: '', text: '' } as Line, ...all])),
    expected: refused('damaged'),
  },
];
