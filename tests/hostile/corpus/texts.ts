/** Book texts that are cut, carry more than they should, or are written in another way. */
import { type BadFile, notTaken, refused, taken } from '../badFile.ts';
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
  sha,
  soundText,
  utf8,
} from '../making.ts';
import { zip } from '../zipMaking.ts';

const sound = soundText();
const lines = (): string[] => sound.split('\n').slice(0, -1);
const withLines = (change: (all: string[]) => string[]): Blob => blobOf(`${change(lines()).join('\n')}\n`);
const all = (added: readonly Line[]): string => bookText([...baseLines(), ...added]);
const second = newLines[1] as Line;
const forked = chain(base, [remark('Written by somebody else')], 4, (baseLines()[2] as Line).link);
const long = chain(
  other,
  Array.from({ length: 5 }, (_, at) => remark(`Window ${at}`)),
);
const utf16 = (text: string): Uint8Array => new Uint8Array(Buffer.from(`\ufeff${text}`, 'utf16le'));

export const badTexts: readonly BadFile[] = [
  { name: 'a sound one, so that the corpus itself is sound', file: () => blobOf(sound), expected: taken(newLines) },
  {
    name: 'a sound one in an archive',
    file: () => zip([{ name: 'book.txt', bytes: utf8(sound) }]),
    expected: taken(newLines),
  },
  { name: 'cut within a line', file: () => blobOf(sound.slice(0, -400)), expected: refused('damaged') },
  { name: 'cut between two lines', file: () => withLines((all) => all.slice(0, 5)), expected: refused('damaged') },
  { name: 'only its header', file: () => withLines((all) => all.slice(0, 1)), expected: refused('damaged') },
  { name: 'without the end mark', file: () => withLines((all) => all.slice(0, -1)), expected: refused('damaged') },
  { name: 'without the last line feed', file: () => blobOf(sound.slice(0, -1)), expected: refused('damaged') },
  {
    name: 'an end mark with another count',
    file: () => blobOf(bookText([...baseLines(), ...newLines], { end: { factsCount: 6 } })),
    expected: refused('damaged'),
  },
  {
    name: 'an end mark with another hash',
    file: () => blobOf(bookText([...baseLines(), ...newLines], { end: { hash: sha('') } })),
    expected: refused('damaged'),
  },
  {
    name: 'an end mark that is a list',
    file: () => withLines((all) => [...all.slice(0, -1), '[]']),
    expected: refused('damaged'),
  },
  { name: 'text behind the end mark', file: () => blobOf(sound, 'and more\n'), expected: refused('damaged') },
  { name: 'a second book behind the first', file: () => blobOf(sound, sound), expected: refused('damaged') },
  {
    name: 'empty lines between the facts',
    file: () => withLines((all) => all.flatMap((line) => [line, ''])),
    expected: refused('damaged'),
  },
  {
    name: 'a mark of byte order ahead',
    file: () => blobOf(Uint8Array.from([0xef, 0xbb, 0xbf]), sound),
    expected: taken(newLines),
  },
  {
    name: 'lines ended as Windows ends them',
    file: () => blobOf(sound.replaceAll('\n', '\r\n')),
    expected: refused('damaged'),
  },
  { name: 'in UTF-16', file: () => blobOf(utf16(sound)), expected: refused('notABackup') },
  {
    name: '50 MB in one line',
    file: () => blobOf('{"format":"fullshift-book","x":"', new Uint8Array(50_000_000).fill(120), '"}'),
    expected: refused('notABackup'),
  },
  {
    name: 'one fact of 50 MB',
    file: () => blobOf(bookText([...baseLines(), ...chain(other, [remark('x'.repeat(50_000_000))])])),
    expected: refused('damaged'),
  },
  {
    name: 'one fact of 300 kB',
    file: () => blobOf(all(chain(other, [remark('x'.repeat(300_000))]))),
    expected: taken([], { unreadableCount: 1 }),
  },
  {
    name: 'one byte changed in a fact',
    file: () => blobOf(sound.replace('Dry scraping', 'Wet scraping')),
    expected: refused('damaged'),
  },
  {
    name: 'one byte changed in a link',
    file: () =>
      blobOf(sound.replace(second.link, `${second.link.slice(0, -1)}${second.link.endsWith('0') ? '1' : '0'}`)),
    expected: refused('damaged'),
  },
  {
    name: 'a link in capitals',
    file: () => blobOf(sound.replace(`${second.link} `, `${second.link.toUpperCase()} `)),
    expected: refused('damaged'),
  },
  { name: 'no link', file: () => blobOf(sound.replace(`${second.link} `, '')), expected: refused('damaged') },
  {
    name: 'a link that does not follow, hashed as if it did',
    file: () => blobOf(all([...newLines.slice(0, 1), ...chain(other, [remark('Elsewhere')], 2, sha('another past'))])),
    expected: refused('damaged'),
  },
  {
    name: 'facts out of order',
    file: () => blobOf(bookText([...newLines, ...baseLines()])),
    expected: refused('damaged'),
  },
  {
    name: 'the same fact twice',
    file: () => blobOf(all([...newLines, ...newLines.slice(-1)])),
    expected: refused('damaged'),
  },
  {
    name: 'one of its facts left out',
    file: () => blobOf(all([...long.slice(0, 2), ...long.slice(3)])),
    expected: taken([...long.slice(0, 2), ...long.slice(3)], { gaps: [{ writer: other, fromCount: 3, toCount: 3 }] }),
  },
  {
    name: 'its first facts left out',
    file: () => blobOf(all(long.slice(2))),
    expected: taken(long.slice(2), { gaps: [{ writer: other, fromCount: 1, toCount: 2 }] }),
  },
  {
    name: 'another fact under an id that is here',
    file: () => blobOf(bookText([...baseLines().slice(0, 3), ...forked])),
    expected: notTaken({ forks: [idOf(base, 4)] }),
  },
  {
    name: 'another fact under an id that is here, alone',
    file: () => blobOf(bookText(forked)),
    expected: notTaken({ forks: [idOf(base, 4)] }),
  },
  {
    name: 'a continuation of another past',
    file: () => blobOf(bookText(chain(base, [remark('After something else')], 5, sha('no')))),
    expected: refused('damaged'),
  },
  {
    name: 'bytes that are no UTF-8',
    file: () =>
      blobOf(
        ...sound.split('Dry').flatMap((part, at) => (at === 0 ? [part] : [Uint8Array.from([0xed, 0xa0, 0x80]), part])),
      ),
    expected: refused('damaged'),
  },
  {
    name: 'a number of format for a book',
    file: () => blobOf('{"format":7,"x":"fullshift-book"}\n'),
    expected: refused('notABackup'),
  },
  {
    name: 'another program’s JSON',
    file: () => blobOf('{"name":"fullshift-book","entries":[]}\n'),
    expected: refused('notABackup'),
  },
];
