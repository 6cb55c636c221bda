/** npm run -s assess: exit codes, text and JSON, refusals with path and reason; the committed schema is current. */
import { execFileSync, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assess, assessDays, readDays } from '#cli/assess.ts';
import { daySchemaPath, daySchemaText } from '#cli/daySchema.ts';
import { lowerOf } from '#core/estimate.ts';

const folder = 'shared/examples/days';
const example = (name: string): string => readFileSync(`${folder}/${name}`, 'utf8');
const library = 'library-windows.json';
const bridge = 'footbridge-long-shift.json';

/** The example with one value changed, by JSON pointer. */
function edited(name: string, pointer: string, value: unknown): string {
  const file = JSON.parse(example(name)) as Record<string, unknown>;
  const parts = pointer.slice(1).split('/');
  const last = parts.pop() ?? '';
  const parent = parts.reduce<Record<string, unknown>>((at, part) => at[part] as Record<string, unknown>, file);
  if (value === undefined) delete parent[last];
  else parent[last] = value;
  return JSON.stringify(file);
}

describe('a day file is assessed', () => {
  it('every example is taken, whatever its verdict', () => {
    const names = readdirSync(folder).filter((name) => name.endsWith('.json'));
    expect(names.length).toBeGreaterThanOrEqual(2);
    for (const name of names) expect(assess(example(name), name, false), name).toMatchObject({ exit: 0, err: '' });
  });

  it('methods C15 (READ-2): the 12-hour shift, 1.7075 L/min, 1229.4 L, 35.79, TWA8 53.68, allowed 33.33', () => {
    const read = readDays(example(bridge));
    if (read.kind !== 'days') throw new Error(JSON.stringify(read));
    const [day] = assessDays(read.file);
    expect(lowerOf(day?.samples[0]?.volume?.estimate ?? { kind: 'exact', value: 0 })).toBeCloseTo(1229.4, 6);
    expect(lowerOf(day?.twa8?.estimate ?? { kind: 'exact', value: 0 })).toBeCloseTo(53.685, 2);
    const { out } = assess(example(bridge), bridge, false);
    expect(out).toContain('= (1.7 L/min + 1.715 L/min) / 2');
    expect(out).toContain('Above the permissible exposure limit, 50 µg/m³.');
    expect(out).toContain('40 CFR 50 Appendix B');
  });

  it('the JSON holds every term of the working, and where in the file it stands', () => {
    const { out } = assess(example(library), library, true);
    const parsed = JSON.parse(out) as { format: string; days: { standings: { verdict: string }[] }[] };
    expect(parsed.format).toBe('fullshift.findings.v1');
    // by hand: Pia 26.4 / (0.48 × 2.535) + 21.2 / (0.48 × 2.50833) = 39.3: over 30, under 50
    expect(parsed.days[0]?.standings.map(({ verdict }) => verdict)).toEqual(['above', 'below']);
    // Otto has 40 unknown minutes
    expect(parsed.days[1]?.standings.map(({ verdict }) => verdict)).toEqual(['atLeastBelow', 'atLeastBelow']);
    expect(out).toContain('"/days/0/samples/0/result"');
  });

  it('never says compliant or safe', () => {
    for (const name of [library, bridge])
      expect(assess(example(name), name, false).out).not.toMatch(/\b(compliant|safe)\b/i);
  });

  it('MEMORY and DERIVED are not cited', () => {
    const { out } = assess(example(library), library, false);
    expect(out).toContain('common practice, no source read');
    expect(out).not.toMatch(/MEMORY|DERIVED/);
  });
});

describe('a day file is refused with path and reason, exit 2', () => {
  it.each([
    ['/days/0/samples/0/result/massUg', -1, '/days/0/samples/0/result/massUg'],
    ['/days/0/samples/0/result/massUg', '26,4', '/days/0/samples/0/result/massUg'],
    ['/days/0/samples/0/putOn', '2026-11-24 07:12', '/days/0/samples/0/putOn'],
    ['/days/0/samples/0/stopped', '2026-11-24T07:11:00-06:00', '/days/0/samples/0/stopped'],
    ['/days/0/pieces/0/to', '2026-11-24T06:00:00-06:00', '/days/0/pieces/0/to'],
    ['/days/0/site', 'Elsewhere', '/days/0/site'],
    ['/days/0/samples/0/tasks/0', 'juggling', '/days/0/samples/0/tasks/0'],
    ['/days/0/samples/0/result/method', 'niosh-1', '/days/0/samples/0/result/method'],
    ['/flowChecks/0/meter', 'piston 9', '/flowChecks/0/meter'],
    ['/sites/0/stateCode', 'ZZ', '/sites/0/stateCode'],
    ['/days/0/hours', 8, '/days/0'],
    ['/format', 'other', '/format'],
    ['/days', [], '/days'],
  ])('%s = %j', (pointer, value, path) => {
    const ran = assess(edited(library, pointer, value), library, false);
    expect(ran.exit).toBe(2);
    expect(ran.out).toBe('');
    expect(ran.err).toContain(`${path}: `);
  });

  it('no JSON, and a file cut short', () => {
    for (const text of ['', 'hello', example(library).slice(0, 400)]) expect(assess(text, 'x', false).exit).toBe(2);
  });

  it('a blank is not refused: it blocks below', () => {
    const { exit, out } = assess(edited(library, '/days/0/otherWork', undefined), library, false);
    expect(exit).toBe(0);
    expect(out).toContain('Not settled against the permissible exposure limit');
    expect(out).toContain('Above the action level');
  });
});

describe('the command itself', () => {
  const command = (args: readonly string[]) =>
    spawnSync(process.execPath, ['--import', 'tsx', 'src/cli/assess.ts', ...args], { encoding: 'utf8' });

  it('exit 0 and the text, exit 2 without a file or with one that is not there', () => {
    const ran = command([`${folder}/${bridge}`]);
    expect(ran.status).toBe(0);
    expect(ran.stdout).toContain('8-hour average');
    for (const args of [[], ['not-there.json'], ['a.json', 'b.json']]) expect(command(args).status).toBe(2);
  });

  it('reads standard input', () => {
    const out = execFileSync(process.execPath, ['--import', 'tsx', 'src/cli/assess.ts', '-', '--json'], {
      input: example(bridge),
      encoding: 'utf8',
    });
    expect(JSON.parse(out)).toMatchObject({ format: 'fullshift.findings.v1' });
  });
});

describe('what is made from schemas is current', () => {
  it('the committed JSON schema of the day file', () => {
    expect(readFileSync(daySchemaPath, 'utf8')).toBe(daySchemaText());
  });
});
