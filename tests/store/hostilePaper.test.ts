/** How little a hostile PDF gets done, and that no byte turned over on the way brings other facts in. */
import { zlibSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { readBookText } from '#records/bookReading.ts';
import { paperLimits, readPaper } from '#store/handOver/fromPaper.ts';
import { newBook } from '#store/opening.ts';
import { processorMs } from '../house/processorTime.ts';
import { boxedDay, issueSheet } from './boxedDay.ts';
import { newDevice, pickUp, testClock } from './device.ts';

const blobOf = (bytes: Uint8Array): Blob => new Blob([bytes as Uint8Array<ArrayBuffer>]);
const latin1 = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

/** A PDF as far as our reader looks at one: objects with attached files. */
const pdfOf = (...objects: readonly string[]): Blob =>
  blobOf(latin1(`%PDF-1.7\n${objects.map((object, at) => `${at + 1} 0 obj\n${object}\nendobj\n`).join('')}%%EOF`));
const streamOf = (content: Uint8Array, dictionary: string): string =>
  `<< /Type /EmbeddedFile ${dictionary} >>\nstream\n${Array.from(content, (byte) => String.fromCharCode(byte)).join('')}\nendstream`;

describe('a hostile PDF', () => {
  const zeros = zlibSync(new Uint8Array(paperLimits.inflatedBytes + 1), { level: 9 });
  const small = new TextEncoder().encode('{"format":"fullshift-book"}');
  const packed = zlibSync(small);
  const cases: readonly (readonly [string, Blob, string])[] = [
    ['nothing', new Blob([]), 'notABackup'],
    ['no PDF', new Blob(['{"format":"fullshift-book"}']), 'notABackup'],
    ['a PDF without attachments', pdfOf('<< /Type /Catalog >>'), 'notABackup'],
    ['a foreign attachment', pdfOf(streamOf(latin1('hello'), '/Length 5')), 'notABackup'],
    [
      'a stream that inflates without end',
      pdfOf(streamOf(zeros, `/Filter /FlateDecode /Length ${zeros.length}`)),
      'tooLarge',
    ],
    [
      'many streams that add up',
      pdfOf(
        ...Array.from({ length: 3 }, () => {
          const half = zlibSync(new Uint8Array(paperLimits.inflatedBytes / 2), { level: 9 });
          return streamOf(half, `/Filter /FlateDecode /Length ${half.length}`);
        }),
      ),
      'tooLarge',
    ],
    ['a length beyond the file', pdfOf(streamOf(packed, '/Filter /FlateDecode /Length 999999')), 'notAsIssued'],
    ['a length that points at itself', pdfOf(streamOf(packed, '/Filter /FlateDecode /Length 1 0 R')), 'notAsIssued'],
    ['a length that points nowhere', pdfOf(streamOf(packed, '/Filter /FlateDecode /Length 77 0 R')), 'notAsIssued'],
    ['no length', pdfOf(streamOf(packed, '/Filter /FlateDecode')), 'notAsIssued'],
    ['another filter', pdfOf(streamOf(packed, `/Filter /LZWDecode /Length ${packed.length}`)), 'notAsIssued'],
    [
      'filters in a row',
      pdfOf(streamOf(packed, `/Filter [/A85 /FlateDecode] /Length ${packed.length}`)),
      'notAsIssued',
    ],
    ['a predictor', pdfOf(streamOf(packed, `/Filter /FlateDecode /DecodeParms << >> /Length 9`)), 'notAsIssued'],
    ['garbage for zlib', pdfOf(streamOf(latin1('garbage!'), '/Filter /FlateDecode /Length 8')), 'notAsIssued'],
    [
      'more attachments than any sheet',
      pdfOf(...Array.from({ length: 500 }, () => streamOf(latin1('x'), '/Length 1'))),
      'notABackup',
    ],
    ['a million marks', blobOf(latin1(`%PDF-1.7 ${'/EmbeddedFile '.repeat(1_000_000)}`)), 'notABackup'],
    ['text that is no UTF-8', pdfOf(streamOf(latin1('\xff\xfe'), '/Length 2')), 'notAsIssued'],
  ];
  test.each(cases)('%s is refused', async (_, file, why) => {
    const spentMs = processorMs();
    expect(await readPaper(file)).toEqual({ kind: 'refused', why });
    expect(spentMs()).toBeLessThan(5000);
  });

  test('a file beyond any sheet is refused unread', async () => {
    const large = { size: paperLimits.fileBytes + 1 } as Blob;
    expect(await readPaper(large)).toEqual({ kind: 'refused', why: 'tooLarge' });
  });

  test('each byte of a real one turned over: never a throw, never other facts', async () => {
    const clock = testClock();
    await pickUp(newDevice());
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    const { pdf, record } = await issueSheet(await boxedDay(clock, 1, 'name'));
    const found: Record<string, number> = {};
    for (let at = 3; at < pdf.length; at += Math.ceil(pdf.length / 400)) {
      const turned = pdf.slice();
      turned[at] = (turned[at] ?? 0) ^ 0x11;
      const read = await readPaper(blobOf(turned));
      // What the reader lets through is then held against the text's own hash.
      const kind =
        read.kind === 'refused' ? read.why : read.text === record ? 'same' : (readBookText(read.text).kind as string);
      found[kind] = (found[kind] ?? 0) + 1;
      expect(kind).not.toBe('read');
    }
    console.info(`turned bytes: ${JSON.stringify(found)}`);
    expect(found.same).toBeGreaterThan(0);
  });
});
