import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { dataDictionary, unitOf } from '#records/dictionary.ts';
import { factBodies } from '#records/fact.ts';
import { meaningByField } from '#records/meanings.ts';

const committed = readFileSync('shared/dictionary.md', 'utf8').replaceAll('\r\n', '\n');

describe('the data dictionary', () => {
  test('the committed one is current (npx tsx src/cli/dictionary.ts writes it)', () => {
    expect(dataDictionary()).toBe(committed);
  });

  test('every kind of fact has a heading, and none is there twice', () => {
    const headings = [...committed.matchAll(/^## (.+)$/gm)].map(([, kind]) => kind);
    expect(headings).toEqual(['Every fact', ...Object.keys(factBodies)]);
    expect(headings.length).toBeGreaterThan(30);
  });

  // Each row as the schema files say it: name, type, unit of the suffix, bounds.
  test.each([
    ['resultReceived.v1', '| `mass (measured).massUg` | number | µg | from 0 |'],
    ['resultReceived.v1', '| `mass (lessThan).reportingLimitUg` | number | µg | above 0 |'],
    ['resultReceived.v1', '| `wallDeposit` | text | | `yes`, `no`, `notStated` | Interior wall deposit included? |'],
    ['flowChecked.v1', '| `readings[].lowLPerMin` | number | L/min | above 0 |'],
    ['flowChecked.v1', '| `temperatureC` | number | °C | from -40 to 60; or null |'],
    ['pumpStopped.v1', '| `pumpMin` | number | min | from 0 to 6000; or null |'],
    ['siteAdded.v1', '| `altitudeM` | number | m | from -500 to 9000; or null |'],
    ['workHoursStated.v1', '| `pieces[].startedAt` | text | | instant in UTC: 2026-11-25T10:12:00.000Z |'],
    ['correctionSettled.v1', '| `over` | list of text | | fact id: writer, dot, running number; may be left out |'],
  ])('%s: %s', (kind, row) => {
    const section = committed.split(/^## /m).find((part) => part.startsWith(`${kind}\n`)) ?? '';
    expect(section).toContain(row);
  });

  test('every number has a unit', () => {
    const numbers = committed.split('\n').filter((line) => /\| (whole )?number \|/.test(line));
    expect(numbers.length).toBeGreaterThan(15);
    expect(numbers.filter((line) => /\| (whole )?number \| \|/.test(line))).toEqual([]);
  });

  test('every value is told, and no meaning is told of nothing', () => {
    const rows = committed.split('\n').filter((line) => line.startsWith('| `'));
    expect(rows.length).toBeGreaterThan(200);
    expect(rows.filter((row) => row.endsWith('| |'))).toEqual([]);
    const fields = rows.map((row) => row.split('`')[1] ?? '');
    const names = new Set([...fields, ...fields.map((field) => field.split('.').at(-1) ?? '')]);
    expect(Object.keys(meaningByField).filter((name) => !names.has(name))).toEqual([]);
  });

  test('the longest suffix is the unit', () => {
    expect(unitOf('flowLPerMin')).toBe('L/min');
    expect(unitOf('durationMin')).toBe('min');
    expect(unitOf('laboratoryConcentrationUgPerM3')).toBe('µg/m³');
    expect(unitOf('saeFraction')).toBe('1');
  });
});
