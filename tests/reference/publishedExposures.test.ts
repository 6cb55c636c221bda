/** Published task exposures: each row of methods.md part E is held with its source, or it says why it is left out. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { withSources } from '#reference/namedSources.ts';
import { type PublishedExposure, publishedExposures, publishedExposuresFile } from '#reference/publishedExposures.ts';
import { isCitable } from '#reference/source.ts';
import { everydayTasks } from '#reference/tasks.ts';

const file = publishedExposuresFile.parse(
  withSources(JSON.parse(readFileSync('shared/tasks/publishedExposures.json', 'utf8')) as object),
);
const row = (id: string): PublishedExposure | undefined => publishedExposures().find((one) => one.id === id);
const figuresOf = (id: string) =>
  row(id)?.figures.map((one) => ('value' in one ? `${one.kind} ${one.value}` : one.kind));

describe('what is held', () => {
  it('every row from E1 to E8 is held or says why not, none twice', () => {
    const ids = [...file.exposures, ...file.leftOut].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect([...new Set(ids.map((id) => id.slice(0, 2)))].sort()).toEqual([
      'E1',
      'E2',
      'E3',
      'E4',
      'E5',
      'E6',
      'E7',
      'E8',
    ]);
    for (const sub of ['E1a', 'E1b', 'E1c', 'E1d', 'E1e', 'E1f', 'E2c', 'E4b', 'E4c']) expect(ids).toContain(sub);
  });

  it('only what was read, with an address', () => {
    for (const { id, source } of publishedExposures()) {
      expect(isCitable(source), id).toBe(true);
      expect(source.url, id).toMatch(/^https?:/);
    }
  });

  it('E6, whose estimated mean does not follow from its own figures, is no hint: GM 290 with GSD 2.8 gives 493, not 430', () => {
    // mean of a lognormal: GM exp(½ ln² GSD)
    expect(290 * Math.exp(0.5 * Math.log(2.8) ** 2)).toBeCloseTo(493, 0);
    expect(file.leftOut.map(({ id }) => id)).toContain('E6');
    expect(JSON.stringify(publishedExposures())).not.toMatch(/\b(290|430|493)\b/);
  });

  it('every task is one of the everyday names', () => {
    const known = new Set(everydayTasks().map(({ id }) => id));
    for (const { id, taskIds } of publishedExposures())
      for (const task of taskIds) expect(known.has(task), `${id} ${task}`).toBe(true);
  });
});

describe('figures as printed (methods.md part E)', () => {
  it('Scholz et al. 2002: half-hour samples and full shifts', () => {
    expect(figuresOf('E1a')).toEqual(['mean 71', 'range']);
    expect(row('E1a')?.figures[1]).toMatchObject({ low: 4, high: 230, unit: 'µg/m³' });
    expect(row('E1a')).toMatchObject({ setting: 'outdoors', lasting: { kind: 'taskSample', value: 30 } });
    expect(figuresOf('E1c')).toEqual(['mean 580']);
    expect(figuresOf('E1d')).toEqual(['mean 33']);
    expect(row('E1f')).toMatchObject({ lasting: { kind: 'fullShift' }, samples: { count: 25 } });
  });

  it('Piacitelli and Sussell 2002: geometric means of 28 minutes; its times to the PEL are left out, for 400 / 49 is not 4.4 h', () => {
    expect(figuresOf('E2a1')).toEqual(['geometricMean 49']);
    expect(figuresOf('E2c')).toEqual(['geometricMean 6.9']);
    expect(row('E2d1')?.lasting).toEqual({ kind: 'taskSample', value: 28, unit: 'min' });
    expect(400 / 53).toBeCloseTo(7.5, 1);
    expect(JSON.stringify(publishedExposures())).not.toMatch(/\b(2\.4|4\.4) ?h/);
  });

  it('HETA 99-0305-2878: cleaning as high as scraping', () => {
    expect(figuresOf('E3b2')).toEqual(['geometricMean 108']);
    expect(row('E3b2')?.taskIds).toEqual(['dustCleanup']);
    expect(row('E3c3')?.figures[1]).toMatchObject({ low: 1.4, high: 2240 });
  });

  it('no figure is that of a single day of ours: every row is a mean, a maximum, a range, or words', () => {
    for (const { figures } of publishedExposures())
      for (const { kind } of figures)
        expect(['mean', 'meanUnder', 'geometricMean', 'maximum', 'range', 'text']).toContain(kind);
  });
});
