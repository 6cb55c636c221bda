/** npm run -s assess as a child process: exit codes, text and JSON, and what it never says. */
import { readdirSync } from 'node:fs';
import { describe, expect, test, vi } from 'vitest';
import { z } from 'zod';
import { command, commandOver, edited, examples, exampleText, written } from './command.ts';
import { dayText } from './writtenDay.ts';

vi.setConfig({ testTimeout: 60_000 });

const names = readdirSync(examples).map((name) => name.replace('.json', ''));
const pathOf = (name: string): string => `${examples}/${name}.json`;
const library = 'library-windows';
const all = command(names.map(pathOf));
const oregon = written('oregon', dayText([{ min: 480, before: 2, after: 2, massUg: 48 }], 0, 'OR'));
const notAsked = written('notAsked', edited(library, { '/days/1/otherWork': undefined }));
const voided = written('void', edited('footbridge', { '/days/0/samples/0/void': { why: 'tubing off' } }));
const changed = commandOver([oregon, notAsked, voided]);

describe('a day file is assessed', () => {
  test('every example is taken, whatever its verdict: exit 0, nothing to the error output', () => {
    expect(names.length).toBeGreaterThanOrEqual(4);
    expect(all.exit).toBe(0);
    expect(all.err).toBe('');
    for (const name of names) expect(all.out).toContain(`File ${pathOf(name)}`);
  });

  test('the rule, the text held, the cautions and the editions are printed', () => {
    expect(all.out).toContain('Held against 29 CFR 1926.62.');
    expect(all.out).toContain('Text held: 2015 annual edition');
    expect(all.out).toContain('The current text of the rule, state plans, local codes');
    expect(all.out).toMatch(/Rules 20\d\d-\d\d-\d\d\.[0-9a-f]{8}\. Formulas \d+\.[0-9a-f]{8}\./);
  });

  test('times are those of the site', () => {
    expect(all.out).toContain('06:00 to 16:00');
    expect(all.out).toContain('On the worker 06:00 to 16:00. Power sanding');
  });

  test('a state with a plan of its own: figures, and whose rule governs', () => {
    const out = changed.of(oregon);
    expect(changed.exit).toBe(0);
    expect(out).toContain('OR runs its own plan and its rule is not held here.');
    expect(out).toContain('Exactly at the permissible exposure limit');
  });

  test('only sources that were read are cited', () => {
    expect(all.out).toContain('[from 29 CFR 1926.62 Lead, (c)(2), 2015 annual edition');
    expect(all.out).toContain('[our own derivation]');
    expect(all.out).toContain('[common practice, no source read]');
    expect(all.out).not.toMatch(/MEMORY|DERIVED/);
  });

  test('it never says compliant or safe', () => {
    expect(`${all.out}${command([pathOf(library), '--json']).out}`).not.toMatch(/complian|\bsafe/i);
  });

  test('a blank is not refused: it keeps "below" from being said, and nothing else', () => {
    const out = changed.of(notAsked);
    const otto = out.slice(out.indexOf('Otto, '));
    expect(changed.exit).toBe(0);
    expect(otto).toContain('Above the action level');
    expect(otto).toContain('Not settled against the permissible exposure limit');
    expect(otto).toContain('What keeps it from being settled');
  });

  test('a void sample keeps what it still shows', () => {
    const out = changed.of(voided);
    expect(out).toContain('Sample 130019: void');
    expect(out).toMatch(/At or above the permissible exposure limit|Above the permissible exposure limit/);
  });

  test('standard input, and a byte order mark in front', () => {
    const { exit, out } = command(['-'], { input: `\uFEFF${exampleText('footbridge')}` });
    expect(exit).toBe(0);
    expect(out).toContain('Bo, 2026-10-14, Mill Lane footbridge');
  });
});

const estimate = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('exact'), value: z.number() }),
  z.object({ kind: z.literal('between'), lower: z.number(), upper: z.number() }),
  z.object({ kind: z.literal('atLeast'), lower: z.number() }),
]);
const recorded = z.object({
  kind: z.literal('recorded'),
  name: z.string(),
  unit: z.string(),
  estimate,
  because: z.array(z.string()),
});
const working = z.object({
  kind: z.literal('working'),
  formula: z.object({ name: z.string(), expression: z.string(), source: z.object({ mark: z.string() }) }),
  unit: z.string(),
  estimate,
  get inputs() {
    return z.record(z.string(), z.union([term, z.array(term)]));
  },
});
const term: z.ZodType = z.lazy(() => z.union([recorded, working]));
const verdict = z.enum(['below', 'exactlyAt', 'above', 'atOrAbove', 'unresolved', 'atLeastBelow']);
const finding = z.object({
  workOn: z.iso.date(),
  twa8: term,
  samples: z.array(z.object({ sampleNumber: z.string(), concentration: term.nullable(), volume: term.nullable() })),
  standings: z.array(z.object({ which: z.enum(['actionLevel', 'pel']), verdict })).length(2),
});
const findings = z.object({
  format: z.literal('fullshift.findings.v1'),
  editions: z.object({ rules: z.string(), formulas: z.string() }),
  cautions: z.array(z.string()).min(1),
  files: z.array(
    z.union([
      z.object({ file: z.string(), days: z.array(finding) }),
      z.object({ file: z.string(), refused: z.array(z.object({ path: z.string(), reason: z.string() })) }),
    ]),
  ),
});

describe('--json', () => {
  test('holds every term of the workings, and where in the file it stands', () => {
    const { exit, out } = command([...names.map(pathOf), '--json']);
    expect(exit).toBe(0);
    const found = findings.parse(JSON.parse(out));
    const verdictsOf = (name: string) =>
      found.files.flatMap((one) =>
        one.file === pathOf(name) && 'days' in one
          ? one.days.map(({ standings }) => standings.map((s) => s.verdict))
          : [],
      );
    // by hand, see figures.test.ts
    expect(verdictsOf(library)).toEqual([
      ['below', 'below'],
      ['above', 'below'],
    ]);
    expect(verdictsOf('footbridge')).toEqual([['above', 'above']]);
    expect(verdictsOf('exactlyAt')).toEqual([
      ['exactlyAt', 'below'],
      ['above', 'exactlyAt'],
    ]);
    expect(verdictsOf('unknownMinutes')).toEqual([['atLeastBelow', 'atLeastBelow']]);
    expect(out).toContain('"/days/0/samples/0/result"');
  });

  test('a refused file beside a good one: both are told, exit 2', () => {
    const { exit, out, err } = command([written('bad', '{}'), pathOf('footbridge'), '--json']);
    expect(exit).toBe(2);
    expect(err).toContain('Refused: ');
    const { files } = findings.parse(JSON.parse(out));
    expect(files.map((one) => Object.keys(one))).toEqual([
      ['file', 'refused'],
      ['file', 'days'],
    ]);
  });
});

describe('exit codes', () => {
  test('2 and how to use it, without a file or with an option that it does not know', () => {
    for (const args of [[], ['--json'], [pathOf(library), '--jsn']]) {
      const { exit, out, err } = command(args);
      expect(exit).toBe(2);
      expect(out).toBe('');
      expect(err).toContain('npm run -s assess -- day.json');
    }
  });

  test('1 for a mistake of our own, with its stack, and no half finding', () => {
    const preload = `const parse = JSON.parse; JSON.parse = (text, ...rest) => { const value = parse(text, ...rest);
      if (value?.format === 'fullshift.days.v1') Object.defineProperty(value, 'days', { get() { throw new Error('planted') } });
      return value }`;
    const { exit, out, err } = command([pathOf(library)], { preload });
    expect(exit).toBe(1);
    expect(out).toBe('');
    expect(err).toContain('This is a mistake in Fullshift, not in the file:');
    expect(err).toMatch(/Error: planted\n\s+at /);
  });
});
