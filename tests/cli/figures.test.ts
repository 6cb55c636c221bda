/** The command's figures against published ones and against sums done by hand; each expected value says where it is from. */
import { describe, expect, test } from 'vitest';
import { commandOver, examples, written } from './command.ts';
import { dayText } from './writtenDay.ts';

/** Flow 2 L/min, or 4 in short parts so that the method's least volume is drawn; mass = C × volume / 1000. */
const steady = (C: number, min: number) => {
  const q = min < 240 ? 4 : 2;
  return { min, before: q, after: q, massUg: (C * q * min) / 1000 };
};

const pel = 'the permissible exposure limit, 50 µg/m³';
const al = 'the action level, 30 µg/m³';
const shifts: readonly (readonly [
  name: string,
  parts: Parameters<typeof dayText>[0],
  awayMin: number,
  lines: readonly string[],
])[] = [
  // 45 × 600 / 480 = 56.25; 400 / 10 = 40
  ['45 for 600 min', [steady(45, 600)], 0, ['= 56.25 µg/m³', '= 40 µg/m³', `Above ${pel}.`, 'Above what the average']],
  // 39 × 600 / 480 = 48.75: within, and over the action level
  ['39 for 600 min', [steady(39, 600)], 0, ['= 48.75 µg/m³', `Below ${pel}.`, `Above ${al}.`, 'Not above what']],
  // 41 × 600 / 480 = 51.25: TWA8 is over 50 although 41 is under it
  ['41 for 600 min', [steady(41, 600)], 0, ['= 51.25 µg/m³', `Above ${pel}.`, 'Above what the average']],
  // 40 × 600 / 480 = 50, and 40 is what a shift of 10 hours may average: exactly at, on both
  ['40 for 600 min', [steady(40, 600)], 0, ['= 50 µg/m³', `Exactly at ${pel}: not above it`, 'Not above what']],
  // 120 × 120 / 480 = 30: reaches the action level
  ['120 for 120 min', [steady(120, 120)], 360, ['= 30 µg/m³', `Exactly at ${al}: that counts as reaching it`]],
  // 50 × 480 / 480 = 50: not above, and the notice owes its statement
  ['50 for 480 min', [steady(50, 480)], 0, ['= 50 µg/m³', `Exactly at ${pel}: not above it, and the notice`]],
  // (200 × 60 + 20 × 420) / 480 = 42.5
  ['200 for 60, 20 for 420', [steady(200, 60), steady(20, 420)], 0, ['= 42.5 µg/m³', `Above ${al}.`, `Below ${pel}.`]],
  // 28 × 600 / 480 = 35: the action level is held against the 8-hour average, never against 28
  ['28 for 600 min', [steady(28, 600)], 0, ['= 35 µg/m³', `Above ${al}.`]],
];

const cases: readonly (readonly [file: string, worker: string, lines: readonly string[]])[] = [
  // 4.8 µg / (2.00 L/min × 480 min) × 1000 = 5, for eight hours
  [
    'library-windows',
    'Pia',
    [
      '= 4.8 µg / 960 L × 1000',
      '= 5 µg/m³',
      'Below the action level, 30 µg/m³.',
      'Below the permissible exposure limit, 50 µg/m³.',
    ],
  ],
  // 34 / (0.48 × 2.02) = 35.066007; up to 2.5 / (0.48 × 1.98) = 2.630471 more: 37.696478. Bounds are rounded outwards.
  [
    'library-windows',
    'Otto',
    [
      '= 35.06601 µg/m³',
      '= less than 2.630472 µg/m³',
      '= between 35.066 and 37.69648 µg/m³',
      'Above the action level, 30 µg/m³.',
      'Below the permissible exposure limit, 50 µg/m³.',
    ],
  ],
  // 49.2 / (2.00 × 600) × 1000 = 41; × 600 / 480 = 51.25; 400 / 10 = 40
  [
    'footbridge',
    'Bo',
    [
      '= 49.2 µg / 1200 L × 1000',
      '= 51.25 µg/m³',
      '= 40 µg/m³',
      'Above the permissible exposure limit, 50 µg/m³.',
      'Above what the average over a shift of this length may reach.',
    ],
  ],
  // 28.8 / (2 × 120) × 1000 = 120; × 120 / 480 = 30
  [
    'exactlyAt',
    'Pia',
    [
      '= 28.8 µg / 240 L × 1000',
      '= 30 µg/m³',
      'Exactly at the action level, 30 µg/m³: that counts as reaching it.',
      'Below the permissible exposure limit, 50 µg/m³.',
    ],
  ],
  // 48 / (2 × 480) × 1000 = 50
  [
    'exactlyAt',
    'Otto',
    ['= 48 µg / 960 L × 1000', 'Exactly at the permissible exposure limit, 50 µg/m³: not above it, and the notice'],
  ],
  // Midpoint 2.1; by the certificate 2.01 + (2.1 − 2) × (2.97 − 2.01) / (3 − 2) = 2.106; for the air at the site
  // × √(101.3 × 285.15 / (99.4 × 294.15)) = 2.093255. After: 2 is 2.01; × √(101.3 × 289.15 / (99.4 × 294.15)) = 2.0118.
  // Average 2.0525275; × 457 min = 938.005 L; 9.2 µg = 9.80805; × 457 / 480 = 9.33808; (30 − 9.33808) × 480 / 40 = 247.943.
  [
    'unknownMinutes',
    'Nell',
    [
      '= 2.106 L/min',
      '= 2.093255 L/min',
      '= 2.0118 L/min',
      '= 938.005 L',
      '= at least 9.338',
      '= 247.943 µg/m³',
      'What is known lies under the action level, 30 µg/m³; that proves nothing yet.',
    ],
  ],
];

const slides = written('slides', dayText([{ min: 720, before: 1.7, after: 1.715, massUg: 44 }]));
const shiftFiles = shifts.map(
  ([name, parts, awayMin, lines]) => [name, written(name, dayText(parts, awayMin)), lines] as const,
);
const exampleOf = (file: string): string => `${examples}/${file}.json`;
const exampleFiles = [...new Set(cases.map(([file]) => exampleOf(file)))];
/** One process for all of them: each is told on its own. */
const ran = commandOver([slides, ...shiftFiles.map(([, path]) => path), ...exampleFiles]);

test('all of them are assessed', () => {
  expect({ exit: ran.exit, err: ran.err }).toEqual({ exit: 0, err: '' });
});

describe('published: training slides on air monitoring of lead (READ-2, 12-hour shift)', () => {
  // Slides: 1.700 and 1.715 L/min, 720 min, 44 µg, average 1.708. Continued by hand: 1.7075 × 720 = 1229.4 L;
  // 44 / 1229.4 × 1000 = 35.79; × 720 / 480 = 53.68; 400 / 12 = 33.33.
  const out = ran.of(slides);
  test.each([
    ['average flow', '= (1.7 L/min + 1.715 L/min) / 2'],
    ['average flow', '= 1.7075 L/min'],
    ['volume', '= 1.7075 L/min × 720 min'],
    ['volume', '= 1229.4 L'],
    ['concentration', '= 44 µg / 1229.4 L × 1000'],
    ['concentration', '= 35.78982 µg/m³'],
    ['8-hour average', '= 53.68472 µg/m³'],
    ['m / (0.48 Q)', '= 44 µg / (0.48 × 1.7075 L/min)'],
    ['what the shift may average', '= min(50 µg/m³, 400 µg·h/m³ / 12 h)'],
    ['what the shift may average', '= 33.33333 µg/m³'],
    ['verdict', 'Above the permissible exposure limit, 50 µg/m³.'],
    ['verdict', 'Above what the average over a shift of this length may reach.'],
  ])('%s: %s', (_, line) => expect(out.replaceAll('\u00a0', ' ')).toContain(line));
});

describe('extended shifts and exact limits: vectors of 29 CFR 1926.62(b), (c)(1), (c)(2), by hand', () => {
  test.each(shiftFiles)('%s', (_, path, lines) => {
    const out = ran.of(path).replaceAll('\u00a0', ' ');
    for (const line of lines) expect(out).toContain(line);
  });
});

describe('the example days, by hand', () => {
  test.each(cases)('%s, %s', (file, worker, lines) => {
    const days = ran
      .of(exampleOf(file))
      .replaceAll('\u00a0', ' ')
      .split(/\n(?=[^\n]+\n=+\n)/);
    const day = days.find((one) => one.trimStart().startsWith(`${worker}, `)) ?? '';
    for (const line of lines) expect(day).toContain(line);
  });
});
