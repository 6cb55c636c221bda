/** The duties that the command line prints: what follows from the days of a file, as of a day. Due dates counted by hand. */
import { describe, expect, test, vi } from 'vitest';
import { z } from 'zod';
import { command, commandOver, edited, examples, written } from './command.ts';
import { dayText } from './writtenDay.ts';

vi.setConfig({ testTimeout: 60_000 });

const ofDay = (massUg: number, stateCode = 'PA', more: Record<string, unknown> = {}) => {
  const file = JSON.parse(dayText([{ min: 480, before: 2, after: 2, massUg }], 0, stateCode)) as {
    days: Record<string, unknown>[];
  };
  Object.assign(file.days[0] ?? {}, more);
  return JSON.stringify(file);
};
/** 2 L/min for 480 minutes are 0.96 m³: 76.8 µg are 80 µg/m³, 48 µg exactly 50. */
const high = written('above-the-pel', ofDay(76.8));
const atPel = written('at-the-pel', ofDay(48));
const inOregon = written('or', ofDay(76.8, 'OR'));
const ran = commandOver([high, atPel, inOregon], ['--today=2026-10-26']);
const text = ran.of(high);
const following = text.slice(text.indexOf('What follows from these days'));

describe('as text', () => {
  test('as of the day that was asked for, with paragraph, reason, what fulfils it, whose decision, where it lies', () => {
    expect(following).toContain('What follows from these days, as of 26 October 2026');
    expect(following).toContain('29 CFR 1926.62 Lead (d)(6)(iii).');
    expect(following).toMatch(
      /Because of an 8-hour average of 80\sµg\/m³ on 14 October 2026, above the permissible exposure limit\./,
    );
    expect(following).toContain('Fulfilled by: A full-shift sample');
    expect(following).toContain('The competent person decides.');
    expect(following).toContain('The written programme, at the site and to be shown on request: where does it lie?');
  });

  test('(d)(8): received on Friday 23 October, five working days are Friday 30 October', () => {
    expect(following).toContain(
      'Tell Bo the result of 14 October 2026, as soon as possible, by 30 October 2026 at the latest.',
    );
    expect(command([high, '--today=2026-10-31']).out).toContain(
      'Tell Bo the result of 14 October 2026, was due on 30 October 2026.',
    );
  });

  test('(d)(6)(iii): three calendar months after 14 October are 14 January', () => {
    expect(following).toContain('every three months, by 14 January 2027.');
  });

  test('exactly at the PEL: six months, and what is done about it stands in the notice', () => {
    const out = ran.of(atPel);
    expect(out).toContain('every six months');
    expect(out).toContain('Say in the notice of 14 October 2026 what is done to bring the exposure down');
    expect(out).not.toContain('every three months');
  });

  test('where the state has its own plan: no list, one line that says whose rule', () => {
    const out = ran.of(inOregon);
    expect(ran.exit).toBe(0);
    expect(out).toContain('No list of duties');
    expect(out).toContain(
      '- Footbridge: OR runs its own plan, and its rule is not held here. What it asks is for the state to say.',
    );
    expect(out).not.toContain('Tell Bo');
  });

  test('tasks of a day without a sample: what is presumed is asked', () => {
    const { out } = command([
      written('presumed', ofDay(0, 'PA', { samples: [], tasks: ['handScraping'] })),
      '--today=2026-10-14',
    ]);
    expect(out).toContain(
      'Measure scraping paint by hand at Footbridge: find out whether anybody may reach the action level',
    );
    expect(out).toContain('29 CFR 1926.62 Lead (d)(2)(v)(A).');
    expect(out).toContain('Presumed, not measured.');
  });

  test('only what was read is cited, and it never says compliant or safe', () => {
    expect(following).not.toMatch(/DERIVED|MEMORY|complian|\bsafe/i);
  });
});

describe('what is refused', () => {
  test.each(['2026-02-30', 'tomorrow', ''])('--today=%s', (day) => {
    const { exit, out, err } = command([high, `--today=${day}`]);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toContain('Wanted: --today=2026-11-25, a day of the calendar.');
  });

  test('a task that is not held, at its place', () => {
    const { exit, err } = command([
      written('task', edited('footbridge', { '/days/0/tasks': ['handScraping', 'juggling'] })),
    ]);
    expect(exit).toBe(2);
    expect(err).toContain('/days/0/tasks/1: no task juggling is held');
  });
});

test('--json carries the duties, those with a day, and the sites without a list', () => {
  const duty = z.object({
    id: z.string().regex(/^[0-9a-zA-Z.-]{3,120}$/),
    kind: z.string(),
    paragraph: z.string(),
    source: z.object({ title: z.string(), mark: z.string() }),
    workerIds: z.array(z.string()),
    when: z.string(),
    dueOn: z.iso.date().nullable(),
    overdue: z.boolean(),
    presumed: z.boolean(),
  });
  const shape = z.object({
    files: z
      .array(
        z.object({
          following: z.object({
            today: z.literal('2026-12-20'),
            duties: z.array(duty).min(5),
            dates: z.array(z.object({ uid: z.string(), on: z.iso.date() })).min(2),
            notHeld: z.array(z.unknown()).length(0),
          }),
        }),
      )
      .length(2),
  });
  const { out, exit } = command([
    `${examples}/footbridge.json`,
    `${examples}/library-windows.json`,
    '--json',
    '--today=2026-12-20',
  ]);
  expect(exit).toBe(0);
  const read = shape.parse(JSON.parse(out));
  for (const { following: found } of read.files) {
    const ids = found.duties.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { uid } of found.dates) expect(ids).toContain(uid);
  }
});
