import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { readBookText } from '#records/bookReading.ts';
import { writeBookText } from '#records/fileFormat.ts';
import { ids, journal, look, office, prepared, putOn, stopped } from './facts.ts';

const about = { bookId: ids.book, practice: false, writtenBy: '0.1.0' };
const entries = [
  ...journal([look('13:00'), look('14:00')], office),
  ...journal([prepared(), putOn('12:00'), stopped('20:00')]),
];
const text = writeBookText(about, entries);
const lines = text.split('\n');
const readAgain = (changed: readonly string[]) => readBookText(changed.join('\n'));

describe('the text of a book', () => {
  test('reads back as it was written, by writer and sequence', () => {
    const read = readBookText(text);
    expect(read).toMatchObject({ kind: 'read', header: { bookId: ids.book, practice: false, writtenBy: '0.1.0' } });
    const sorted = [...entries].sort((a, b) => (a.id < b.id ? -1 : 1));
    expect(read.kind === 'read' && read.entries).toEqual(sorted);
    expect(writeBookText(about, [...entries].reverse())).toBe(text);
  });

  test('names the head of each writer', () => {
    const heads = [entries[4], entries[1]].map((entry) => ({ factId: entry?.id, link: entry?.link }));
    expect(JSON.parse(lines[0] ?? '')).toMatchObject({ format: 'fullshift-book', formatVersion: 1, heads });
  });

  test('ends with counts and the hash of all lines before, by node:crypto', () => {
    const before = `${lines.slice(0, -2).join('\n')}\n`;
    const hash = createHash('sha256').update(before, 'utf8').digest('hex');
    expect(JSON.parse(lines.at(-2) ?? '')).toEqual({ end: 'fullshift-book', factsCount: 5, hash });
  });

  test('an empty book can be written and read', () => {
    expect(readBookText(writeBookText(about, []))).toMatchObject({ kind: 'read', entries: [] });
  });

  test('a journal with a gap can be written and read', () => {
    const some = entries.filter(({ id }) => !id.endsWith('.00000002'));
    expect(readBookText(writeBookText(about, some))).toMatchObject({ kind: 'read' });
  });
});

describe('what is wrong with a file', () => {
  test('cut anywhere, it is told, and what is intact is kept', () => {
    const headerLength = (lines[0] ?? '').length;
    let tried = 0;
    for (let length = headerLength + 1; length < text.length; length += 7) {
      const read = readBookText(text.slice(0, length));
      expect(read, String(length)).toMatchObject({ kind: 'refused', fault: { why: 'cut' } });
      tried += 1;
    }
    expect(tried).toBeGreaterThan(100);
    expect(readBookText(text.slice(0, -1))).toMatchObject({ kind: 'refused', fault: { why: 'cut' } });
    const read = readBookText(lines.slice(0, 3).join('\n'));
    expect(read.kind === 'refused' && read.intact.length).toBe(2);
  });

  test('lines left out at the end are told by the count', () => {
    expect(readAgain([...lines.slice(0, -3), ...lines.slice(-2)])).toMatchObject({ fault: { why: 'cut' } });
  });

  test.each([2, 3, 4, 5, 6])('one digit changed in line %i is told by its number', (line) => {
    const changed = lines.map((l, at) => (at === line - 1 ? l.replace('2026-11-25', '2026-11-26') : l));
    expect(changed[line - 1]).not.toBe(lines[line - 1]);
    expect(readAgain(changed)).toMatchObject({ kind: 'refused', fault: { why: 'damaged', line } });
  });

  test('a changed header is told', () => {
    const changed = (lines[0] ?? '').replace(ids.book, 'b00000000002');
    expect(readAgain([changed, ...lines.slice(1)])).toMatchObject({ fault: { why: 'damaged', line: 1 } });
  });

  test('a line doubled, or two lines exchanged, is told', () => {
    const [head, first, second, ...rest] = lines;
    expect(readAgain([head, first, first, second, ...rest].flatMap((l) => l ?? []))).toMatchObject({
      fault: { why: 'damaged', line: 3 },
    });
    expect(readAgain([head, second, first, ...rest].flatMap((l) => l ?? []))).toMatchObject({
      fault: { why: 'damaged' },
    });
  });

  test.each([
    '',
    'PK\u0003\u0004',
    '{}',
    'null',
    '[1]',
    '"fullshift-book"',
    '<html>',
    '{"format":"other","formatVersion":1}',
  ])('foreign: %j', (foreign) => {
    expect(readBookText(foreign)).toMatchObject({ kind: 'refused', fault: { why: 'foreign' }, intact: [] });
  });

  test('a newer format is told with its number, and nothing is guessed', () => {
    const newer = (lines[0] ?? '').replace('"formatVersion":1', '"formatVersion":2');
    expect(readAgain([newer, ...lines.slice(1)])).toMatchObject({ fault: { why: 'newerFormat', formatVersion: 2 } });
  });
});
