/** One value of an example taken away or replaced, wherever it stands: the file is refused with a place, or assessed, never a mistake. */
import { describe, expect, test } from 'vitest';
import { assessDays } from '#cli/assess.ts';
import { dayLines } from '#cli/dayText.ts';
import { readDays } from '#cli/readDays.ts';
import { edited, exampleText } from './command.ts';

function pointersIn(value: unknown, at: string): string[] {
  if (typeof value !== 'object' || value === null) return [at];
  const inner = Object.entries(value).flatMap(([key, one]) => pointersIn(one, `${at}/${key}`));
  return at === '' ? inner : [at, ...inner];
}

interface Verdicts {
  readonly below: number;
  readonly text: string;
}

/** null when refused; every refusal names a place that is in the file, or beside what is in it. */
function assessed(text: string): Verdicts | null {
  const read = readDays(text);
  if (read.kind === 'refused') {
    expect(read.refusals.length).toBeGreaterThan(0);
    for (const { path, reason } of read.refusals) {
      expect(path).toMatch(/^(\/[^/]+)*$/);
      expect(reason).not.toMatch(/Invalid|undefined|NaN/);
    }
    return null;
  }
  const days = assessDays(read.file);
  const lines = days.flatMap(({ finding, day, zone }) => dayLines(finding, day, zone));
  const standings = days.flatMap(({ finding }) => finding.standings);
  return { below: standings.filter(({ verdict }) => verdict === 'below').length, text: lines.join('\n') };
}

const wrong: readonly unknown[] = [-1, 0, 1e308, '', 'x', true, [], {}];

describe.each(['library-windows', 'footbridge', 'exactlyAt', 'unknownMinutes'])('%s', (name) => {
  const pointers = pointersIn(JSON.parse(exampleText(name)), '');
  const whole = assessed(exampleText(name));

  test('a value that is wrong', () => {
    const counts = { refused: 0, assessed: 0 };
    for (const pointer of pointers)
      for (const value of wrong) counts[assessed(edited(name, { [pointer]: value })) ? 'assessed' : 'refused'] += 1;
    expect(pointers.length).toBeGreaterThan(60);
    expect(counts.refused).toBeGreaterThan(pointers.length);
    expect(counts.assessed).toBeGreaterThan(0);
  });

  test('a value that is blank: refused, or nothing is said to be below that was not', () => {
    let taken = 0;
    for (const pointer of pointers)
      for (const blank of [null, undefined]) {
        const now = assessed(edited(name, { [pointer]: blank }));
        if (!now) continue;
        taken += 1;
        expect(now.below, pointer).toBeLessThanOrEqual(whole?.below ?? 0);
        expect(now.text).not.toMatch(/NaN|undefined|Infinity/);
      }
    expect(taken).toBeGreaterThan(15);
  });
});
