/** Every pair of colours that meets on a page, by WCAG 2.2's own contrast ratio (https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio). */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const css = readFileSync('src/parts/tokens.css', 'utf8');
const block = (start: number): Map<string, string> => {
  const text = css.slice(start, css.indexOf('}', start));
  return new Map([...text.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map((match) => [match[1] ?? '', match[2] ?? '']));
};
const light = block(css.indexOf(':root'));
const dark = new Map([...light, ...block(css.indexOf('prefers-color-scheme: dark'))]);
const print = new Map([...light, ...block(css.indexOf('@media print'))]);

/** Relative luminance: W3C, WCAG 2.2, "relative luminance", with the threshold 0.04045 of sRGB. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
const contrast = (a: string, b: string): number => {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
};

const text = [
  ['ink', 'paper'],
  ['ink', 'paper-under'],
  ['ink-quiet', 'paper'],
  ['ink-quiet', 'paper-under'],
  ['accent', 'paper'],
  ['accent', 'paper-under'],
  ['on-accent', 'accent'],
] as const;
const edges = [
  ['edge', 'paper'],
  ['edge', 'paper-under'],
  ['focus', 'paper'],
  ['focus', 'paper-under'],
  ['accent', 'paper'],
] as const;

test('the ratio itself: black on white is 21 to 1, #767676 on white 4.54 (W3C, Understanding 1.4.3)', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});

describe.each([
  ['light', light],
  ['dark', dark],
  ['print', print],
])('%s', (_, colours) => {
  const ratio = (a: string, b: string): number => contrast(colours.get(a) ?? '', colours.get(b) ?? '');
  test.each(text)('%s on %s reads at 7 to 1 or better', (a, b) => expect(ratio(a, b)).toBeGreaterThanOrEqual(7));
  test.each(edges)('%s against %s is seen at 4.5 to 1 or better', (a, b) =>
    expect(ratio(a, b)).toBeGreaterThanOrEqual(4.5),
  );
});

test('body and inputs are 18 px or more, nothing is under 16 px', () => {
  expect(css).toContain('--text: 1.125rem');
  expect(css).toContain('--text-small: 1rem');
});

test('no colour stands outside the tokens', () => {
  const files = [
    'Actions',
    'Choice',
    'ConfirmBox',
    'ErrorSummary',
    'Field',
    'Figure',
    'Lines',
    'Notice',
    'Page',
    'Saved',
    'StandingMark',
    'WorkingView',
  ];
  for (const file of files)
    expect(readFileSync(`src/parts/${file}.module.css`, 'utf8')).not.toMatch(/#[0-9a-f]{3,8}\b/i);
});
