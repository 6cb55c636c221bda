/** What the triggers of duties look at: the jobs (a task group at a site) whose rule is held, and who worked there when. */
import type { Book } from '#records/book.ts';
import { type DutiesFile, dutiesOfSet } from '#reference/duties.ts';
import { type LimitsHere, limitSetOn } from '#reference/limits.ts';
import { type Presumption, presumptionFor } from '#reference/presumption.ts';
import type { Course } from '../course/course.ts';
import type { DeterminationFinding } from '../determining/determination.ts';
import type { DutiesOfBook } from '../dutiesOfBook.ts';
import { surelyStandsFor } from '../groups/standsFor.ts';
import type { GroupDay } from '../groups/taskGroup.ts';
import { changeNotedOn } from '../groups/taskGroups.ts';
import type { Measurement } from '../measuring/measurement.ts';
import type { NotHeld } from './notHeld.ts';

/** What duties follow from. */
export interface DutyParts extends Omit<DutiesOfBook, 'today' | 'duties' | 'notHeld'> {
  readonly days: readonly GroupDay[];
}

/** One worker's days of one task group at one site. */
export interface Turn {
  readonly workerId: string;
  readonly firstOn: string;
  readonly lastOn: string;
  /** The entries of the first and the last day. */
  readonly because: readonly string[];
}

/** One task group at one site whose rule is held. */
export interface Job {
  readonly siteId: string;
  readonly groupKey: string;
  readonly taskIds: readonly string[];
  readonly presumption: Presumption;
  readonly limits: LimitsHere;
  readonly turns: ReadonlyMap<string, Turn>;
  readonly determination: DeterminationFinding | null;
  /** Measurements that bear on it, in the order of days. */
  readonly measurements: readonly Measurement[];
}

export interface Ground {
  readonly parts: DutyParts;
  readonly book: Book;
  readonly today: string;
  readonly table: DutiesFile;
  readonly jobs: readonly Job[];
  readonly jobsBySite: ReadonlyMap<string, readonly Job[]>;
  /** Sites whose rule is held. */
  readonly isHeld: (siteId: string | null) => boolean;
  readonly courseOf: (workerId: string, groupKey: string) => Course | undefined;
  /** Whom a measurement stands for: the same people who are to be told of it. */
  readonly affectedBy: ReadonlyMap<string, readonly string[]>;
  /** Only where no entry leaves it open. */
  readonly isSurelyFor: (measurement: Measurement, workerId: string) => boolean;
  /** The last day on which a change was noted at a site, (d)(7). */
  readonly changedOn: (siteId: string) => string | undefined;
}

const keyOf = (a: string, b: string): string => `${a} ${b}`;

interface Gathered {
  readonly siteId: string;
  readonly groupKey: string;
  readonly taskIds: readonly string[];
  readonly turns: Map<string, Turn>;
}

function withDay(turn: Turn | undefined, { workerId, workOn, because }: GroupDay): Turn {
  if (!turn) return { workerId, firstOn: workOn, lastOn: workOn, because };
  if (workOn < turn.firstOn) return { ...turn, firstOn: workOn, because: [...because, ...turn.because].slice(0, 8) };
  if (workOn > turn.lastOn) return { ...turn, lastOn: workOn };
  return turn;
}

/** Made once for a list of days, which is never changed. */
const gatheredOf = new WeakMap<readonly GroupDay[], readonly Gathered[]>();

function gathered(days: readonly GroupDay[]): readonly Gathered[] {
  const made = gatheredOf.get(days) ?? gather(days);
  gatheredOf.set(days, made);
  return made;
}

function gather(days: readonly GroupDay[]): readonly Gathered[] {
  const byJob = new Map<string, Gathered>();
  for (const day of days) {
    const key = keyOf(day.siteId, day.groupKey);
    let job = byJob.get(key);
    if (!job) {
      job = { siteId: day.siteId, groupKey: day.groupKey, taskIds: day.taskIds, turns: new Map() };
      byJob.set(key, job);
    }
    const turn = job.turns.get(day.workerId);
    const next = withDay(turn, day);
    if (next !== turn) job.turns.set(day.workerId, next);
  }
  return [...byJob.values()].sort((a, b) => (keyOf(a.siteId, a.groupKey) < keyOf(b.siteId, b.groupKey) ? -1 : 1));
}

const byDay = (a: Measurement, b: Measurement): number =>
  a.workOn < b.workOn ? -1 : a.workOn > b.workOn ? 1 : a.id < b.id ? -1 : 1;

/** The last day on which anybody worked at each site. */
function lastDays(jobs: readonly Gathered[]): Map<string, string> {
  const found = new Map<string, string>();
  for (const { siteId, turns } of jobs)
    for (const { lastOn } of turns.values()) if (lastOn > (found.get(siteId) ?? '')) found.set(siteId, lastOn);
  return found;
}

/** The rule that governs at each site on its last day of work. A site that is not in the book has no state: nothing is held for it. */
function limitsBySite(jobs: readonly Gathered[], book: Book): ReadonlyMap<string, LimitsHere> {
  const limits = new Map<string, LimitsHere>();
  for (const [siteId, lastOn] of lastDays(jobs))
    limits.set(siteId, limitSetOn(lastOn, book.sites.get(siteId)?.stateCode ?? ''));
  return limits;
}

const isWhole = ({ heldComplete, set }: LimitsHere): boolean => heldComplete && dutiesOfSet(set.id) !== null;

/** Sites for which no duties are listed, and whose rule governs there. */
export function notHeldOf(days: readonly GroupDay[], book: Book): readonly NotHeld[] {
  return [...limitsBySite(gathered(days), book)].flatMap(([siteId, limits]) =>
    isWhole(limits)
      ? []
      : [
          {
            siteId,
            stateCode: book.sites.get(siteId)?.stateCode ?? '',
            governs: limits.governs,
            document: limits.set.document,
          },
        ],
  );
}

function surelyFor(days: readonly GroupDay[], book: Book): Ground['isSurelyFor'] {
  const found = new Map<string, ReadonlySet<string>>();
  return (measurement, workerId) => {
    const known = found.get(measurement.id) ?? new Set(surelyStandsFor(measurement, book, days));
    found.set(measurement.id, known);
    return known.has(workerId);
  };
}

function changeDays(book: Book, today: string): Ground['changedOn'] {
  const found = new Map<string, string>();
  for (const shift of book.shifts.values()) {
    const change = changeNotedOn(shift);
    if (change && change.on <= today && change.on > (found.get(shift.siteId) ?? '')) found.set(shift.siteId, change.on);
  }
  return (siteId) => found.get(siteId);
}

/** The limit set whose duties are listed. One table is held; a second one would be listed beside it. */
const limitSetId = 'us-fed-constr-lead';

export function tableHeld(): DutiesFile {
  const table = dutiesOfSet(limitSetId);
  if (!table) throw new Error('no table of duties is held');
  return table;
}

/** `about`: the jobs of these sites alone. */
export function groundOf(parts: DutyParts, book: Book, today: string, about?: ReadonlySet<string>): Ground {
  const table = tableHeld();
  const all = gathered(parts.days);
  const limits = limitsBySite(all, book);
  const held = new Set([...limits].flatMap(([siteId, here]) => (isWhole(here) ? [siteId] : [])));
  const determinations = new Map(parts.determinations.map((one) => [keyOf(one.siteId, one.groupKey), one]));
  const courses = new Map(parts.courses.map((one) => [keyOf(one.workerId, one.groupKey), one]));
  const jobs = all.flatMap((one): Job[] => {
    const here = limits.get(one.siteId);
    if (!here || !isWhole(here) || about?.has(one.siteId) === false) return [];
    const determination = determinations.get(keyOf(one.siteId, one.groupKey)) ?? null;
    const measurements = (determination?.measurementIds ?? [])
      .flatMap((id) => parts.measurements.get(id) ?? [])
      .sort(byDay);
    return [{ ...one, presumption: presumptionFor(one.taskIds), limits: here, determination, measurements }];
  });
  const jobsBySite = new Map<string, Job[]>();
  for (const job of jobs) jobsBySite.set(job.siteId, [...(jobsBySite.get(job.siteId) ?? []), job]);
  return {
    parts,
    book,
    today,
    table,
    jobs,
    jobsBySite,
    isHeld: (siteId) => siteId !== null && held.has(siteId),
    courseOf: (workerId, groupKey) => courses.get(keyOf(workerId, groupKey)),
    isSurelyFor: surelyFor(parts.days, book),
    changedOn: changeDays(book, today),
    affectedBy: new Map(parts.notices.map(({ measurementId, affectedIds }) => [measurementId, affectedIds])),
  };
}
