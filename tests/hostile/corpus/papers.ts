/** PDF files that are no sheet of ours, or carry something hostile. */
import { deflateSync } from 'node:zlib';
import { type BadFile, refused } from '../badFile.ts';
import { baseLines, blobOf, bookText, newLines, soundText, utf8 } from '../making.ts';

const latin1 = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');
const attached = (content: Uint8Array, says = `/Filter /FlateDecode /Length ${deflateSync(content).length}`): string =>
  `<< /Type /EmbeddedFile ${says} >>\nstream\n${latin1(deflateSync(content, { level: 9 }))}\nendstream`;
const pdf =
  (...objects: readonly string[]) =>
  (): Blob =>
    blobOf(
      Buffer.from(
        `%PDF-1.7\n${objects.map((object, at) => `${at + 1} 0 obj\n${object}\nendobj\n`).join('')}%%EOF`,
        'latin1',
      ),
    );
const lengthOf = (content: Uint8Array): string =>
  `/Filter /FlateDecode /Length ${deflateSync(content, { level: 9 }).length}`;
const bomb = new Uint8Array(60_000_000);
const paper = (header: Readonly<Record<string, unknown>> = {}): Uint8Array =>
  utf8(bookText([...baseLines(), ...newLines], { header: { part: 'paper', ...header } }));

export const badPapers: readonly BadFile[] = [
  { name: 'a PDF without anything attached', file: pdf('<< /Type /Catalog >>'), expected: refused('notABackup') },
  { name: 'a PDF with a foreign file attached', file: pdf(attached(utf8('MZ'))), expected: refused('notABackup') },
  {
    name: 'a PDF whose attachment inflates without end',
    file: pdf(attached(bomb, lengthOf(bomb))),
    expected: refused('tooLarge'),
  },
  {
    name: 'a PDF whose attachment is cut',
    file: pdf(attached(paper(), '/Filter /FlateDecode /Length 40')),
    expected: refused('notAsIssued'),
  },
  {
    name: 'a PDF with the record of another book',
    file: pdf(attached(paper({ bookId: 'b00000000002' }), lengthOf(paper({ bookId: 'b00000000002' })))),
    expected: refused('otherBook'),
  },
  {
    name: 'a PDF with a record that was changed',
    file: pdf(
      (() => {
        const changed = utf8(soundText().replace('Dry scraping', 'Wet scraping'));
        return attached(changed, lengthOf(changed));
      })(),
    ),
    expected: refused('damaged'),
  },
  {
    name: 'a PDF of 40 MB',
    file: () => blobOf('%PDF-1.7\n', new Uint8Array(40_000_000)),
    expected: refused('tooLarge'),
  },
  {
    name: 'a PDF with a script',
    file: pdf('<< /Type /Action /S /JavaScript /JS (app.alert(1)) >>'),
    expected: refused('notABackup'),
  },
];
