/** What the schema of a day file cannot see: names that nothing in the file carries, one thing written twice, results before the work. */
import { methodById } from '#reference/methods.ts';
import { taskById } from '#reference/tasks.ts';
import { en as words } from '#words/assess.ts';
import type { DayFile, DayInFile, ResultInFile } from './dayFile.ts';
import type { Refusal } from './refusal.ts';

type What = keyof typeof words.refusals.what;

function twice<T>(list: readonly T[], nameOf: (one: T) => string, path: string, what: What): Refusal[] {
  const seen = new Set<string>();
  return list.flatMap((one, i) => {
    const name = nameOf(one);
    if (!seen.has(name)) {
      seen.add(name);
      return [];
    }
    return [{ path: `${path}/${i}`, reason: words.refusals.twice(words.refusals.what[what], name) }];
  });
}

const missing = (names: ReadonlySet<string>, name: string | null | undefined, path: string, what: What): Refusal[] =>
  name === null || name === undefined || names.has(name)
    ? []
    : [{ path, reason: words.refusals.noSuch(words.refusals.what[what], name) }];

function ofResult(result: ResultInFile | null | undefined, workOn: string, at: string): Refusal[] {
  if (!result) return [];
  const { method, receivedOn } = result;
  const found: Refusal[] = [];
  if (method && !methodById(method))
    found.push({ path: `${at}/result/method`, reason: words.refusals.noMethod(method) });
  if (receivedOn < workOn) found.push({ path: `${at}/result/receivedOn`, reason: words.refusals.beforeWork(workOn) });
  return found;
}

function ofExplained(day: DayInFile, at: string): Refusal[] {
  const numbers = new Set(day.samples.map(({ number }) => number));
  return (day.explained ?? []).flatMap(({ as, sample }, i) => {
    const path = `${at}/explained/${i}/sample`;
    if (as === 'sameAs' && !sample) return [{ path, reason: words.refusals.likeWhich }];
    return missing(numbers, sample, path, 'sampleOfDay');
  });
}

function ofDay(day: DayInFile, at: string, siteNames: ReadonlySet<string>): Refusal[] {
  const done = (day.tasks ?? []).flatMap((id, j) =>
    taskById(id) ? [] : [{ path: `${at}/tasks/${j}`, reason: words.refusals.noTask(id) }],
  );
  const tasks = day.samples.flatMap(({ tasks: ids }, i) =>
    ids.flatMap((id, j) =>
      taskById(id) ? [] : [{ path: `${at}/samples/${i}/tasks/${j}`, reason: words.refusals.noTask(id) }],
    ),
  );
  return [
    ...missing(siteNames, day.site, `${at}/site`, 'site'),
    ...twice(day.samples, ({ number }) => number, `${at}/samples`, 'sample'),
    ...ofExplained(day, at),
    ...done,
    ...tasks,
    ...day.samples.flatMap(({ result }, i) => ofResult(result, day.workOn, `${at}/samples/${i}`)),
  ];
}

export function referenceProblems(file: DayFile): Refusal[] {
  const siteNames = new Set(file.sites.map(({ name }) => name));
  const meterNames = new Set(file.meters.map(({ name }) => name));
  return [
    ...twice(file.sites, ({ name }) => name, '/sites', 'site'),
    ...twice(file.meters, ({ name }) => name, '/meters', 'meter'),
    ...twice(file.days, ({ worker, workOn }) => `${worker}, ${workOn}`, '/days', 'day'),
    ...file.flowChecks.flatMap(({ meter }, i) => missing(meterNames, meter, `/flowChecks/${i}/meter`, 'meter')),
    ...file.blanks.flatMap(({ site, workOn, result }, i) => [
      ...missing(siteNames, site, `/blanks/${i}/site`, 'site'),
      ...ofResult(result, workOn, `/blanks/${i}`),
    ]),
    ...file.days.flatMap((day, i) => ofDay(day, `/days/${i}`, siteNames)),
  ];
}
