/** Archives that are cut, lie, or try to be more than one file. */
import { type BadFile, refused, taken } from '../badFile.ts';
import { blobOf, newLines, sha, soundText, utf8 } from '../making.ts';
import { type EntryWish, zip } from '../zipMaking.ts';

const book = (says: EntryWish['says'] = {}): EntryWish => ({ name: 'book.txt', bytes: utf8(soundText()), says });
const beside = (name: string | Uint8Array): EntryWish => ({ name, bytes: utf8('something else') });
const bytesOf = async (blob: Blob): Promise<Uint8Array> => new Uint8Array(await blob.arrayBuffer());
const picture = Uint8Array.from({ length: 4000 }, (_, at) => (at * 7) % 251);
const pictureName = `files/${sha(picture)}.jpg`;
const zeros = (bytesCount: number): Uint8Array => new Uint8Array(bytesCount);
const bombs = (count: number, bytesCount: number, says: EntryWish['says'] = {}): EntryWish[] =>
  Array.from({ length: count }, (_, at) => ({
    name: `files/${sha(String(at))}.bin`,
    bytes: zeros(bytesCount),
    says,
  }));

export const badArchives: readonly BadFile[] = [
  { name: 'nothing at all', file: () => blobOf(), expected: refused('notABackup') },
  { name: 'one byte', file: () => blobOf('P'), expected: refused('notABackup') },
  { name: 'a picture', file: () => blobOf(picture), expected: refused('notABackup') },
  { name: 'the first four bytes of an archive', file: () => blobOf('PK\u0003\u0004'), expected: refused('damaged') },
  { name: 'an archive with nothing in it', file: () => zip([]), expected: refused('notABackup') },
  { name: 'an archive without a book', file: () => zip([beside('letter.txt')]), expected: refused('notABackup') },
  {
    name: 'an archive in an archive',
    file: async () => zip([{ name: 'book.zip', bytes: await bytesOf(zip([book()])) }]),
    expected: refused('notABackup'),
  },
  {
    name: 'an archive cut in the middle',
    file: async () => {
      const whole = zip([book(), beside('README.txt')]);
      return whole.slice(0, Math.floor(whole.size / 2));
    },
    expected: refused('damaged'),
  },
  { name: 'without the mark at its end', file: () => zip([book()], { none: true }), expected: refused('damaged') },
  { name: 'text before the archive', file: () => blobOf('MZ', zip([book()])), expected: refused('notABackup') },
  {
    name: 'remarks behind the archive',
    file: () => blobOf(zip([book()]), 'behind it'),
    expected: taken(newLines),
  },
  {
    name: 'a second end mark in the remark',
    file: () => zip([book()], { remark: Uint8Array.from([0x50, 0x4b, 5, 6, ...zeros(18)]) }),
    expected: refused('damaged'),
  },
  {
    name: 'more packed bytes than there are',
    file: () => zip([book({ packedBytes: 4_000_000 })]),
    expected: refused('damaged'),
  },
  {
    name: 'fewer packed bytes than there are',
    file: () => zip([book({ packedBytes: 100 })]),
    expected: refused('damaged'),
  },
  { name: 'a size too small', file: () => zip([book({ bytesCount: 10 })]), expected: refused('damaged') },
  { name: 'a size too large', file: () => zip([book({ bytesCount: 100_000 })]), expected: refused('damaged') },
  { name: 'a size of 4 GB', file: () => zip([book({ bytesCount: 0xffff_fffe })]), expected: refused('tooLarge') },
  {
    name: 'bytes stored whose two sizes differ',
    file: () => zip([{ ...book({ bytesCount: 10 }), stored: true }]),
    expected: refused('damaged'),
  },
  {
    name: 'a book of zeros that says its size',
    file: () => zip([{ name: 'book.txt', bytes: zeros(160_000_000) }]),
    expected: refused('tooLarge'),
  },
  {
    name: 'a book of zeros that says it is small',
    file: () => zip([{ name: 'book.txt', bytes: zeros(160_000_000), says: { bytesCount: 900 } }]),
    expected: refused('damaged'),
  },
  {
    name: 'a book of line ends',
    file: () => zip([{ name: 'book.txt', bytes: new Uint8Array(100_000_000).fill(10) }]),
    expected: refused('notABackup'),
  },
  {
    name: 'three hundred papers of 29 MB that say they are small',
    file: () => {
      const packed = bombs(1, 29_000_000);
      const bytes = zeros(29_000_000);
      return zip([book(), ...bombs(300, 1, { bytesCount: 10 }).map((bomb) => ({ ...packed[0], ...bomb, bytes }))]);
    },
    expected: refused('tooLarge'),
  },
  {
    name: 'twenty papers of 29 MB that say so',
    file: () => zip([book(), ...bombs(20, 29_000_000)]),
    expected: refused('tooLarge'),
  },
  {
    name: 'sixteen papers of 29 MB that say so',
    file: () => zip([book(), ...bombs(16, 29_000_000)]),
    expected: taken(newLines, { filesCount: 0, filesDamagedCount: 16 }),
  },
  {
    name: 'ten thousand entries',
    file: () => zip([book(), ...Array.from({ length: 10_000 }, (_, at) => ({ name: `${at}`, stored: true }))]),
    expected: refused('tooManyEntries'),
  },
  {
    name: 'fewer entries than the mark says',
    file: () => zip([book(), beside('README.txt')], { entriesCount: 3 }),
    expected: refused('damaged'),
  },
  {
    name: 'more entries than the mark says',
    file: () => zip([book(), beside('README.txt')], { entriesCount: 1 }),
    expected: refused('damaged'),
  },
  { name: 'two books', file: () => zip([book(), book()]), expected: refused('damaged') },
  {
    name: 'two names for the same bytes',
    file: () => zip([book(), { ...book({ at: 0 }), name: 'other.txt', packed: zeros(0) }]),
    expected: refused('damaged'),
  },
  {
    name: 'an entry that begins within another',
    file: () => zip([book(), { ...beside('README.txt'), says: { at: 40 } }]),
    expected: refused('damaged'),
  },
  {
    name: 'an entry that begins behind the file',
    file: () => zip([book({ at: 0x7fff_ffff })]),
    expected: refused('damaged'),
  },
  {
    name: 'an entry without its own header',
    file: () => zip([book(), { ...book({ signature: 1 }), name: pictureName }]),
    expected: taken(newLines, { filesDamagedCount: 1 }),
  },
  {
    name: 'a book without its own header',
    file: () => zip([beside('README.txt'), book({ signature: 1 })]),
    expected: refused('damaged'),
  },
  { name: 'a locked entry', file: () => zip([book({ flags: 0x0801 })]), expected: refused('damaged') },
  { name: 'packed by a method of others', file: () => zip([book({ method: 99 })]), expected: refused('damaged') },
  {
    name: 'packed bytes that are noise',
    file: () => zip([{ ...book(), packed: picture }]),
    expected: refused('damaged'),
  },
  {
    name: 'more than 65,534 entries, by the mark of large archives',
    file: () => zip([book()], { entriesCount: 0xffff }),
    expected: refused('tooManyEntries'),
  },
  {
    name: 'a directory beyond 4 GB, by the mark of large archives',
    file: () => zip([book()], { directoryAt: 0xffff_ffff }),
    expected: refused('damaged'),
  },
  {
    name: 'sizes that stand in the fields of large archives',
    file: () => zip([book({ packedBytes: 0xffff_ffff, bytesCount: 0xffff_ffff, extra: zeros(28) })]),
    expected: refused('damaged'),
  },
  {
    name: 'something between directory and mark',
    file: () => zip([book()], { ahead: zeros(76) }),
    expected: refused('damaged'),
  },
  // Every line is hashed, and the whole once more: the archive's own sum is weaker than that, and nothing rests on it.
  { name: 'a checksum that is wrong', file: () => zip([book({ crc: 1 })]), expected: taken(newLines) },
  {
    name: 'another name ahead of its bytes',
    file: () => zip([book({ localName: 'x/y.sh' })]),
    expected: taken(newLines),
  },
  ...['../book.txt', '/book.txt', 'book.txt\0', 'C:\\book.txt', 'BOOK.TXT', 'book.txt/', './book.txt'].map(
    (name): BadFile => ({
      name: `a book called ${JSON.stringify(name)} alone`,
      file: () => zip([{ ...book(), name }]),
      expected: refused('notABackup'),
    }),
  ),
  {
    name: 'names that would leave the folder, beside the book',
    file: () =>
      zip([
        book(),
        ...['../../etc/passwd', '/etc/passwd', 'a\0b', '__proto__', 'files/../../x', 'x'.repeat(60_000)].map(beside),
        beside(Uint8Array.from([0xff, 0xfe, 0x00])),
      ]),
    expected: taken(newLines, { filesCount: 0, filesDamagedCount: 0 }),
  },
  {
    name: 'a picture that is not what its name says',
    file: () => zip([book(), { name: pictureName, bytes: utf8('another one') }]),
    expected: taken(newLines, { filesCount: 0, filesDamagedCount: 1 }),
  },
  {
    name: 'a picture that nobody names',
    file: () => zip([book(), { name: pictureName, bytes: picture, stored: true }]),
    expected: taken(newLines, { filesCount: 1, filesDamagedCount: 0 }, [sha(picture)]),
  },
  {
    name: 'a picture under a name of another shape',
    file: () =>
      zip([
        book(),
        { name: `files/${sha(picture).toUpperCase()}.jpg`, bytes: picture },
        { name: `files/${sha(picture)}.exe`, bytes: picture },
      ]),
    expected: taken(newLines, { filesCount: 0, filesDamagedCount: 0 }),
  },
];
