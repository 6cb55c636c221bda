/** What the schema of a day file cannot see: names that nothing in the file carries, and one thing written twice. */

import { methodById } from '#reference/methods.ts';
import { taskById } from '#reference/tasks.ts';
import type { DayFile } from './dayFile.ts';

export interface Refusal {
  /** JSON pointer into the file. */
  readonly path: string;
  readonly reason: string;
}

function twice<T>(list: readonly T[], nameOf: (one: T) => string, path: string, what: string): Refusal[] {
  const seen = new Set<string>();
  return list.flatMap((one, i) => {
    const name = nameOf(one);
    if (!seen.has(name)) {
      seen.add(name);
      return [];
    }
    return [{ path: `${path}/${i}`, reason: `${what} ${name} is in the file twice` }];
  });
}

const missing = (names: ReadonlySet<string>, name: string | null | undefined, path: string, what: string): Refusal[] =>
  name === null || name === undefined || names.has(name)
    ? []
    : [{ path, reason: `no ${what} named ${name} in the file` }];

function ofResult(method: string | null | undefined, path: string): Refusal[] {
  return method && !methodById(method)
    ? [{ path: `${path}/result/method`, reason: `no method ${method} is held` }]
    : [];
}

function ofDay(day: DayFile['days'][number], at: string, siteNames: ReadonlySet<string>): Refusal[] {
  const numbers = new Set(day.samples.map(({ number }) => number));
  return [
    ...missing(siteNames, day.site, `${at}/site`, 'site'),
    ...twice(day.samples, ({ number }) => number, `${at}/samples`, 'sample'),
    ...(day.explained ?? []).flatMap(({ sample }, i) =>
      missing(numbers, sample, `${at}/explained/${i}/sample`, 'sample of that day'),
    ),
    ...day.samples.flatMap(({ tasks, result }, i) => [
      ...tasks.flatMap((id, j) =>
        taskById(id) ? [] : [{ path: `${at}/samples/${i}/tasks/${j}`, reason: `no task ${id} is held` }],
      ),
      ...ofResult(result?.method, `${at}/samples/${i}`),
    ]),
  ];
}

export function referenceProblems(file: DayFile): Refusal[] {
  const siteNames = new Set(file.sites.map(({ name }) => name));
  const meterNames = new Set(file.meters.map(({ name }) => name));
  return [
    ...twice(file.sites, ({ name }) => name, '/sites', 'site'),
    ...twice(file.meters, ({ name }) => name, '/meters', 'flow meter'),
    ...twice(file.days, ({ worker, workOn }) => `${worker}, ${workOn}`, '/days', 'day'),
    ...file.flowChecks.flatMap(({ meter }, i) => missing(meterNames, meter, `/flowChecks/${i}/meter`, 'flow meter')),
    ...file.blanks.flatMap(({ site, result }, i) => [
      ...missing(siteNames, site, `/blanks/${i}/site`, 'site'),
      ...ofResult(result?.method, `/blanks/${i}`),
    ]),
    ...file.days.flatMap((day, i) => ofDay(day, `/days/${i}`, siteNames)),
  ];
}
