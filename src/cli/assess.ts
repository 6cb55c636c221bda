/**
 * npm run -s assess -- day.json [--json]: the findings of a file of work days, with their workings.
 * Exit 0: assessed, whatever the verdict. 2: refused, with path and reason. 1: a mistake in Fullshift.
 */
import { readFileSync } from 'node:fs';
import { findWorkday, type WorkdayFinding } from '#findings/workday.ts';
import { editions } from '#reference/editions.ts';
import { en as words } from '#words/assess.ts';
import { bookOfDays } from './dayBook.ts';
import { type DayFile, dayFile } from './dayFile.ts';
import { workdayIdOf } from './dayIds.ts';
import { type Refusal, referenceProblems } from './dayReferences.ts';
import { dayLines } from './dayText.ts';

export type ReadDays =
  | { readonly kind: 'days'; readonly file: DayFile }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

const pointer = (path: readonly PropertyKey[]): string =>
  path.map((part) => `/${String(part).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');

/** From text to a checked file, or every reason why not. */
export function readDays(text: string): ReadDays {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    return {
      kind: 'refused',
      refusals: [{ path: '', reason: words.notJson(error instanceof Error ? error.message : '') }],
    };
  }
  const parsed = dayFile.safeParse(json);
  if (!parsed.success)
    return {
      kind: 'refused',
      refusals: parsed.error.issues.map(({ path, message }) => ({ path: pointer(path), reason: message })),
    };
  const refusals = referenceProblems(parsed.data);
  return refusals.length > 0 ? { kind: 'refused', refusals } : { kind: 'days', file: parsed.data };
}

/** The finding of each day, in the order of the file. A day knows its own site only. */
export function assessDays(file: DayFile): WorkdayFinding[] {
  const book = bookOfDays(file);
  return file.days.map(({ worker, workOn, site }) => {
    const own = book.sites.get(site);
    const sites = own ? new Map([[own.id, own]]) : book.sites;
    return findWorkday(workdayIdOf(worker, workOn), { ...book, sites });
  });
}

function textOf(findings: readonly WorkdayFinding[]): string {
  const { rules, formulas } = editions();
  const lines = [...findings.flatMap(dayLines), words.standsOn, words.editions(rules, formulas), ''];
  // spaces that do not break are for print; a terminal is searched and piped
  return lines.join('\n').replaceAll(/[\u00a0\u202f]/g, ' ');
}

const jsonOf = (findings: readonly WorkdayFinding[]): string =>
  `${JSON.stringify({ format: 'fullshift.findings.v1', editions: editions(), days: findings }, null, 2)}\n`;

export interface Ran {
  readonly exit: 0 | 1 | 2;
  readonly out: string;
  readonly err: string;
}

/** The whole command but for reading arguments and files: text in, text out. */
export function assess(text: string, name: string, asJson: boolean): Ran {
  const read = readDays(text);
  if (read.kind === 'refused') {
    const lines = read.refusals.map(({ path, reason }) => `  ${words.refused(path, reason)}`);
    return { exit: 2, out: '', err: [words.refusedHeading(name), ...lines, ''].join('\n') };
  }
  const findings = assessDays(read.file);
  return { exit: 0, out: asJson ? jsonOf(findings) : textOf(findings), err: '' };
}

function run(args: readonly string[]): Ran {
  const files = args.filter((arg) => arg === '-' || !arg.startsWith('--'));
  const unknown = args.filter((arg) => arg.startsWith('--') && arg !== '--json');
  const [file] = files;
  if (file === undefined || files.length > 1 || unknown.length > 0)
    return { exit: 2, out: '', err: `${words.usage}\n` };
  let text: string;
  try {
    text = readFileSync(file === '-' ? 0 : file, 'utf8');
  } catch {
    return { exit: 2, out: '', err: `${words.refusedHeading(file)}\n  ${words.cannotRead}\n` };
  }
  try {
    return assess(text, file, args.includes('--json'));
  } catch (error) {
    return {
      exit: 1,
      out: '',
      err: `${words.bug}\n${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
    };
  }
}

if (process.argv[1]?.replaceAll('\\', '/').endsWith('src/cli/assess.ts')) {
  const { exit, out, err } = run(process.argv.slice(2));
  process.stdout.write(out);
  process.stderr.write(err);
  process.exitCode = exit;
}
