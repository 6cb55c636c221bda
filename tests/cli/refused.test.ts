/** Files that are refused: one run of the command over all of them, each with the place and the reason that it must name. */
import { describe, expect, test } from 'vitest';
import { command, edited, exampleText, written } from './command.ts';

const library = (changes: Readonly<Record<string, unknown>>): string => edited('library-windows', changes);
const sample = '/days/0/samples/0';
const lines = exampleText('footbridge').split('\n');
const lineOf = (start: string): number => lines.findIndex((line) => line.trimStart().startsWith(start)) + 1;
const inFootbridge = (from: string, to: string): string => exampleText('footbridge').replace(from, to);

type Case = readonly [name: string, text: string | Uint8Array, path: string, reason: string];
const refused: readonly Case[] = [
  ['an empty file', '', '/', 'line 1, column 1: this is not JSON, the text ends too early'],
  ['no JSON at all', 'hello', '/', 'line 1, column 1: this is not JSON at hello'],
  ['cut short', lines.slice(0, 5).join('\n'), '/', 'line 5, column '],
  ['a comma missing', inFootbridge('"meters": [', '"meters" ['), '/', `line ${lineOf('"meters"')}, column 12`],
  ['a comma too many', inFootbridge('"blanks": [', '"blanks": [,'), '/', `line ${lineOf('"blanks"')}, column 14`],
  ['a comma for the point', inFootbridge('49.2', '49,2'), '/', 'this is not JSON at 2'],
  ['a key twice', inFootbridge('"massUg": 49.2', '"massUg": 4.92, "massUg": 49.2'), '/', 'massUg stands twice'],
  ['a picture', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]), '/', 'this is not JSON'],
  ['a list', '[]', '/', 'wanted: a group in curly brackets'],
  ['nothing inside', '{}', '/days', 'missing; wanted: a list in square brackets'],
  ['another format', library({ '/format': 'other' }), '/format', 'wanted: one of "fullshift.days.v1"'],
  ['no day', library({ '/days': [] }), '/days', 'wanted: at least 1'],
  ['an unknown name', library({ '/days/0/hours': 8 }), '/days/0/hours', 'hours is not a name that this file can have'],
  [
    'mass in mg',
    library({ [`${sample}/result/massUg`]: undefined, [`${sample}/result/massMg`]: 0.0048 }),
    `${sample}/result/massMg`,
    'write massUg, in µg',
  ],
  [
    'flow in mL/min',
    library({ '/flowChecks/0/readings/0': { lowMlPerMin: 2020, highLPerMin: 2.02 } }),
    '/flowChecks/0/readings/0/lowMlPerMin',
    'write lowLPerMin, in L/min',
  ],
  ['altitude in feet', library({ '/sites/0/altitudeFt': 520 }), '/sites/0/altitudeFt', 'write altitudeM, in m'],
  ['a name in other capitals', library({ [`${sample}/pumpmin`]: 480 }), `${sample}/pumpmin`, 'write pumpMin, in min'],
  ['a poisoned name', inFootbridge('"note":', '"__proto__": {}, "note":'), '/__proto__', 'is not a name'],
  ['a mass as text', library({ [`${sample}/result/massUg`]: '4.8' }), `${sample}/result/massUg`, 'a number of microgr'],
  ['a mass below zero', library({ [`${sample}/result/massUg`]: -1 }), `${sample}/result/massUg`, 'must be 0 or more'],
  [
    'less than nothing',
    library({ [`${sample}/result/massUg`]: { lessThanUg: 0 } }),
    `${sample}/result/massUg`,
    'above 0',
  ],
  [
    'SAE in per cent',
    library({ [`${sample}/result/saeFraction`]: 12 }),
    `${sample}/result/saeFraction`,
    'must be 1 or less',
  ],
  [
    'stopped first',
    library({ [`${sample}/stopped`]: '2026-11-24T06:59:00-06:00' }),
    `${sample}/stopped`,
    'before it was',
  ],
  ['a time alone', library({ [`${sample}/putOn`]: '07:00' }), `${sample}/putOn`, 'not a time with its offset'],
  ['no such day', library({ '/days/0/workOn': '2026-02-30' }), '/days/0/workOn', 'not a day of the calendar'],
  [
    'summer offset in winter',
    library({ [`${sample}/putOn`]: '2026-11-24T07:00:00-05:00' }),
    `${sample}/putOn`,
    'not the offset of America/Chicago at that moment, which is -06:00',
  ],
  ['another year', library({ '/days/0/workOn': '2025-11-24' }), `${sample}/putOn`, 'more than a day away'],
  [
    'work that ends first',
    library({ '/days/0/pieces/0/to': '2026-11-24T06:00:00-06:00' }),
    '/days/0/pieces/0/to',
    'ends before it begins',
  ],
  [
    'work counted twice',
    library({ '/days/0/pieces/1/from': '2026-11-24T11:00:00-06:00' }),
    '/days/0/pieces/1',
    'overlaps /days/0/pieces/0',
  ],
  ['one pump on two workers', library({ '/days/1/samples/0/pump': 'A' }), '/days/1/samples/0', 'pump A still ran for'],
  [
    'a stretch outside',
    library({ [`${sample}/stretches/0/to`]: '2026-11-24T15:45:00-06:00' }),
    `${sample}/str`,
    'outside',
  ],
  ['no such site', library({ '/days/0/site': 'Elsewhere' }), '/days/0/site', 'no site named Elsewhere'],
  ['no such meter', library({ '/flowChecks/0/meter': 'bell' }), '/flowChecks/0/meter', 'no flow meter named bell'],
  ['no such task', library({ [`${sample}/tasks/0`]: 'juggling' }), `${sample}/tasks/0`, 'no task juggling is held'],
  [
    'no such method',
    library({ [`${sample}/result/method`]: 'niosh-1' }),
    `${sample}/result/method`,
    'no method niosh-1',
  ],
  ['no such state', library({ '/sites/0/stateCode': 'ZZ' }), '/sites/0/stateCode', 'not a state or territory'],
  ['no such zone', library({ '/sites/0/zone': 'America/Nowhere' }), '/sites/0/zone', 'not a time zone'],
  [
    'one worker twice',
    library({ '/days/1/worker': 'Pia' }),
    '/days/1',
    'day of Pia, 2026-11-24 stands in the file twice',
  ],
  [
    'float upside down',
    library({ '/flowChecks/0/readings/0': { lowLPerMin: 2.2, highLPerMin: 2.0 } }),
    '/flowChecks/0/readings/0',
    'the low end is above the high end',
  ],
  ['no reading', library({ '/flowChecks/0/readings': [] }), '/flowChecks/0/readings', 'wanted: at least 1'],
  [
    'a result before the work',
    library({ [`${sample}/result/receivedOn`]: '2026-11-23' }),
    `${sample}/result/receivedOn`,
    'received before the work day, 2026-11-24',
  ],
  [
    'like no sample',
    library({
      '/days/0/explained': [
        { from: '2026-11-24T15:00:00-06:00', to: '2026-11-24T15:10:00-06:00', as: 'sameAs', reason: 'same room' },
      ],
    }),
    '/days/0/explained/0/sample',
    'the same as which sample?',
  ],
];

describe('a day file is refused with place and reason', () => {
  const paths = refused.map(([name, text]) => written(name, text));
  const ran = command([...paths, 'not-there.json']);
  const told = ran.err.split(/^Refused: /m).slice(1);

  test('exit 2, and nothing in the output', () => {
    expect(ran.exit).toBe(2);
    expect(ran.out).toBe('');
    expect(told.length).toBe(refused.length + 1);
    expect(refused.length).toBeGreaterThanOrEqual(20);
  });

  test.each(refused.map(([name, , path, reason], i) => [name, path, reason, i] as const))(
    '%s: %s',
    (_, path, reason, i) => {
      const [heading = '', ...reasons] = (told[i] ?? '').trimEnd().split('\n');
      expect(heading).toContain(paths[i]);
      const line = reasons.find((one) => one.startsWith(`  ${path}`) && one.includes(reason));
      expect(line, told[i]).toBeDefined();
    },
  );

  test('a file that is not there', () => {
    expect(told.at(-1)).toContain('not-there.json. Nothing of it was assessed.\n  /: the file cannot be read');
  });

  test('every reason is told, not only the first', () => {
    const { err } = command([
      written('many', library({ '/days/0/hours': 8, '/sites/0/stateCode': 'ZZ', [`${sample}/result/massUg`]: -1 })),
    ]);
    for (const path of ['/days/0/hours', '/sites/0/stateCode', `${sample}/result/massUg`])
      expect(err).toContain(`  ${path}: `);
  });

  test('no name or key of the schema checker reaches the reader', () => {
    expect(ran.err).not.toMatch(/Invalid|undefined|Unrecognized|zod|NaN/i);
  });
});
