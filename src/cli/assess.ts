/**
 * npm run -s assess -- day.json [more.json] [--json] [--today=2026-11-25]: the findings of files of work days, with their workings, and
 * the duties that follow as of a day: today's, unless one is given.
 * Exit 0: assessed, whatever the verdict. 2: refused, with path and reason. 1: a mistake in Fullshift.
 */
import { readFileSync } from 'node:fs';
import { isDay } from '#core/calendar.ts';
import { findWorkday, type WorkdayFinding } from '#findings/workday.ts';
import { editions } from '#reference/editions.ts';
import { en as words } from '#words/assess.ts';
import { en as dutyWords } from '#words/assessDuties.ts';
import { dutiesAsData, dutiesOfDays, dutyLines, type FollowingDuties } from './assessDuties.ts';
import { bookOfDays } from './dayBook.ts';
import type { DayFile, DayInFile } from './dayFile.ts';
import { workdayIdOf } from './dayIds.ts';
import { dayLines } from './dayText.ts';
import { readDays } from './readDays.ts';
import type { Refusal } from './refusal.ts';

interface AssessedDay {
  readonly day: DayInFile;
  readonly zone: string;
  readonly finding: WorkdayFinding;
}

/** The finding of each day, in the order of the file. A day knows its own site only. */
export function assessDays(file: DayFile): AssessedDay[] {
  const book = bookOfDays(file);
  return file.days.map((day) => {
    const own = book.sites.get(day.site);
    const sites = own ? new Map([[own.id, own]]) : book.sites;
    const finding = findWorkday(workdayIdOf(day.worker, day.workOn), { ...book, sites });
    return { day, zone: own?.zone ?? 'UTC', finding };
  });
}

/** What came of one file. */
type Outcome = { readonly name: string } & (
  | { readonly kind: 'assessed'; readonly days: readonly AssessedDay[]; readonly following: FollowingDuties }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }
);

function outcomeOf(name: string, today: string): Outcome {
  let text: string;
  try {
    text = readFileSync(name === '-' ? 0 : name, 'utf8');
  } catch {
    return { name, kind: 'refused', refusals: [{ path: '', reason: words.refusals.cannotRead }] };
  }
  const read = readDays(text);
  if (read.kind === 'refused') return { name, ...read };
  return { name, kind: 'assessed', days: assessDays(read.file), following: dutiesOfDays(read.file, today) };
}

function textOf(outcomes: readonly Outcome[]): string {
  const assessed = outcomes.flatMap((one) => (one.kind === 'assessed' ? [one] : []));
  if (assessed.length === 0) return '';
  const { rules, formulas } = editions();
  const lines = assessed.flatMap(({ name, days, following }) => [
    ...(outcomes.length > 1 ? [words.fileHeading(name), ''] : []),
    ...days.flatMap(({ day, zone, finding }) => dayLines(finding, day, zone)),
    ...dutyLines(following),
  ]);
  return [...lines, ...words.standsOn, words.editions(rules, formulas), ''].join('\n');
}

function jsonOf(outcomes: readonly Outcome[]): string {
  const files = outcomes.map((one) =>
    one.kind === 'refused'
      ? { file: one.name, refused: one.refusals }
      : { file: one.name, days: one.days.map(({ finding }) => finding), following: dutiesAsData(one.following) },
  );
  const found = { format: 'fullshift.findings.v1', editions: editions(), cautions: words.standsOn, files };
  return `${JSON.stringify(found, null, 2)}\n`;
}

function refusedText(outcomes: readonly Outcome[]): string {
  const lines = outcomes.flatMap((one) =>
    one.kind === 'assessed'
      ? []
      : [words.refusedHeading(one.name), ...one.refusals.map(({ path, reason }) => `  ${words.refused(path, reason)}`)],
  );
  return lines.map((line) => `${line}\n`).join('');
}

interface Ran {
  readonly exit: 0 | 1 | 2;
  readonly out: string;
  readonly err: string;
}

/** The day of the clock where the command runs; null: what was written is no day. */
function dayAsked(args: readonly string[]): string | null {
  const asked = args.find((arg) => arg.startsWith('--today='))?.slice('--today='.length);
  if (asked !== undefined) return isDay(asked) ? asked : null;
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

const isOption = (arg: string): boolean => arg === '--json' || arg.startsWith('--today=');

function run(args: readonly string[]): Ran {
  const names = args.filter((arg) => arg === '-' || !arg.startsWith('-'));
  const unknown = args.filter((arg) => arg !== '-' && arg.startsWith('-') && !isOption(arg));
  if (names.length === 0 || unknown.length > 0) return { exit: 2, out: '', err: `${words.usage}\n` };
  const today = dayAsked(args);
  if (today === null) return { exit: 2, out: '', err: `${dutyWords.badToday}\n` };
  const outcomes = names.map((name) => outcomeOf(name, today));
  const err = refusedText(outcomes);
  return { exit: err === '' ? 0 : 2, out: args.includes('--json') ? jsonOf(outcomes) : textOf(outcomes), err };
}

/** Nothing is printed to the output before all of it is known, so that a mistake of ours leaves no half finding behind. */
function ranOrBug(args: readonly string[]): Ran {
  try {
    return run(args);
  } catch (error) {
    const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return { exit: 1, out: '', err: `${words.bug}\n${stack}\n` };
  }
}

if (process.argv[1]?.replaceAll('\\', '/').endsWith('src/cli/assess.ts')) {
  const { exit, out, err } = ranOrBug(process.argv.slice(2));
  process.stdout.write(out);
  process.stderr.write(err);
  process.exitCode = exit;
}
