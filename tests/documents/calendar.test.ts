/**
 * The calendar file of duties: RFC 5545 by its own words (75 octets a line, CR LF, backslashes), and read by ical.js, an independent
 * parser, whose values are compared with the duties.
 */
import * as fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { addDays } from '#core/calendar.ts';
import { calendarFile } from '#documents/calendar.ts';
import { escaped, folded } from '#documents/calendarLines.ts';
import { findDuties } from '#findings/duties/findDuties.ts';
import type { ShownAs } from '#findings/duties/list/calendar.ts';
import type { Book } from '#records/book.ts';
import { jobBook, tess, vic } from '#tests/findings/duties/jobBook.ts';
import { base, person, site } from '#tests/findings/sliceRegisters.ts';

const madeAt = '2026-11-25T10:12:13.456Z';
const today = '2026-11-25';
const named = (siteName: string, firm = 'Sill and Sash', practice = false): Book => {
  const request = {
    ...base('request', 'y00000000001'),
    ...{
      requestId: 'y00000000001',
      askedOn: today,
      by: 'Vera Vent',
      personId: tess,
      as: 'worker' as const,
      remark: null,
    },
  };
  const made = jobBook({
    days: [
      { workOn: '2026-11-03', averageUgPerM3: 80, receivedOn: '2026-11-20' },
      { workerId: vic, workOn: '2026-11-10', averageUgPerM3: 40, receivedOn: '2026-11-20' },
    ],
    sites: [site({ name: siteName })],
    people: [person(tess, 'Tess Trestle'), { ...person(vic, 'Víctor Ñandú'), identifier: 'W-7; east, "2"' }],
    more: { requests: new Map([[request.id, request]]) },
  });
  return { ...made, book: made.book && { ...made.book, firmName: firm, practice } };
};

const fileOf = (book: Book, shownAs: ShownAs = 'none') => {
  const { duties } = findDuties(book, today);
  return { duties, text: calendarFile({ duties, book, madeAt, shownAs }) };
};
const octets = (line: string): number => new TextEncoder().encode(line).length;

interface Read {
  readonly uid: string;
  readonly from: string;
  readonly to: string;
  readonly isDate: boolean;
  readonly stamp: string;
  readonly summary: string;
  readonly description: string;
}

function readBy(text: string): { readonly version: string; readonly events: readonly Read[] } {
  const calendar = new ICAL.Component(ICAL.parse(text));
  const events = calendar.getAllSubcomponents('vevent').map((part) => {
    const event = new ICAL.Event(part);
    return {
      uid: event.uid,
      from: event.startDate.toString(),
      to: event.endDate.toString(),
      isDate: event.startDate.isDate && event.endDate.isDate,
      stamp: String(part.getFirstPropertyValue('dtstamp')),
      summary: event.summary,
      description: event.description,
    };
  });
  return { version: String(calendar.getFirstPropertyValue('version')), events };
}

describe('read by an independent parser', () => {
  const book = named('Old public library, east; wing \\ 2');
  const { duties, text } = fileOf(book);
  const { version, events } = readBy(text);

  test('every duty with a day that is not done, and no other', () => {
    const expected = duties.filter(({ done, dueOn }) => !done && dueOn !== null);
    expect(expected.length).toBeGreaterThan(8);
    expect(events.map(({ uid }) => uid).sort()).toEqual(expected.map(({ id }) => id).sort());
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
    for (const { uid, from } of events) expect(from).toBe(expected.find(({ id }) => id === uid)?.dueOn);
  });

  test('whole days, each ending on the next; the stamp is the one that was passed in', () => {
    expect(version).toBe('2.0');
    for (const { from, to, isDate, stamp } of events) {
      expect(isDate).toBe(true);
      expect(to).toBe(addDays(from, 1));
      expect(stamp).toBe('2026-11-25T10:12:13Z');
    }
  });

  test('text comes back as it was: commas, semicolons, backslashes, lines', () => {
    const programme = events.find(({ uid }) => uid.startsWith('changeAreas.'));
    expect(programme?.summary).toBe(
      'Set up a place to change at Old public library, east; wing \\ 2, with street clothes kept apart',
    );
    expect(programme?.description.split('\n').length).toBeGreaterThan(4);
    expect(programme?.description).toContain('Asked by 29 CFR 1926.62 Lead');
  });

  test('it never says compliant or safe, and no mark of an unread source', () => {
    expect(text).not.toMatch(/complian|\bsafe|DERIVED|MEMORY/i);
  });

  test('made again it has the same ids; where a date moved, the entry moves', () => {
    const later = calendarFile({ duties: findDuties(book, '2026-12-10').duties, book, madeAt, shownAs: 'none' });
    const uids = new Set(readBy(later).events.map(({ uid }) => uid));
    for (const { uid } of events) expect(uids.has(uid)).toBe(true);
  });

  test('an empty list is a calendar all the same', () => {
    const none = calendarFile({ duties: [], book, madeAt, shownAs: 'none' });
    expect(readBy(none)).toMatchObject({ version: '2.0', events: [] });
  });

  test('a practice book says EXAMPLE in every entry', () => {
    const { events: practice } = readBy(fileOf(named('Old public library', 'Sill and Sash', true)).text);
    for (const { summary } of practice) expect(summary).toMatch(/^EXAMPLE: /);
  });
});

describe('workers are named only when asked for', () => {
  const book = named('Old public library');
  const unfolded = (shownAs: ShownAs) => fileOf(book, shownAs).text.replaceAll('\r\n ', '');

  test('not at all: no name, no identifier, nobody who asked', () => {
    expect(unfolded('none')).not.toMatch(/Tess|Trestle|Víctor|Ñandú|W-1|W-7|Vera|Vent\b/);
    expect(unfolded('none')).toContain('a worker');
    for (const { uid } of readBy(fileOf(book).text).events) expect(uid).not.toMatch(/Tess|Trestle/);
  });

  test('by identifier: those, and no name', () => {
    const summaries = readBy(fileOf(book, 'identifiers').text).events.map(({ summary }) => summary);
    expect(summaries.some((one) => one.includes('W-7; east, "2"'))).toBe(true);
    expect(unfolded('identifiers')).not.toMatch(/Tess|Trestle|Víctor|Ñandú|Vera/);
  });

  test('by name', () => {
    const summaries = readBy(fileOf(book, 'names').text).events.map(({ summary }) => summary);
    for (const name of ['Tess Trestle', 'Víctor Ñandú', 'Vera Vent'])
      expect(
        summaries.some((one) => one.includes(name)),
        name,
      ).toBe(true);
  });
});

describe('RFC 5545 section 3.1: lines', () => {
  test('no line over 75 octets, every end CR LF, no bare CR or LF', () => {
    const { text } = fileOf(named('Büro für Öl- und Bleifarbe, 漆の仕事場, 🏚️🏚️🏚️🏚️🏚️🏚️🏚️🏚️🏚️🏚️🏚️🏚️🏚️🏚️🏚️🏚️'), 'names');
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const lines = text.split('\r\n');
    expect(lines.some((line) => line.startsWith(' '))).toBe(true);
    expect(Math.max(...lines.map(octets))).toBeLessThanOrEqual(75);
    expect(Math.max(...lines.map(octets))).toBeGreaterThan(70);
  });

  test.each([
    [74, 1],
    [75, 1],
    [76, 2],
    [149, 2],
    [150, 3],
  ])('%d octets are %d lines', (length, lines) => {
    // 75 in the first line, 74 and the space in each further one
    expect(folded('x'.repeat(length)).split('\r\n').length - 1).toBe(lines);
  });

  test('any text is read back as it is, control letters left out', () => {
    const seed = Number(process.env.SEED ?? 20261125);
    console.info(`calendar text: seed ${seed} (SEED=… to change)`);
    const drawn = fc.string({ unit: 'binary', maxLength: 200 });
    fc.assert(
      fc.property(drawn, (text) => {
        const line = folded(`SUMMARY:${escaped(text)}`);
        for (const part of line.split('\r\n')) expect(octets(part)).toBeLessThanOrEqual(75);
        const file = `BEGIN:VCALENDAR\r\nVERSION:2.0\r\nBEGIN:VEVENT\r\nUID:a\r\n${line}END:VEVENT\r\nEND:VCALENDAR\r\n`;
        const kept = text
          .replace(/\r\n?/g, '\n')
          .replace(/\p{Cc}/gu, (letter) => (letter === '\n' || letter === '\t' || letter >= '\u0080' ? letter : ''));
        expect(summaryIn(file)).toBe(kept);
      }),
      { seed, numRuns: 120 },
    );
  });
});

const summaryIn = (text: string): string =>
  String(new ICAL.Component(ICAL.parse(text)).getFirstSubcomponent('vevent')?.getFirstPropertyValue('summary') ?? '');
