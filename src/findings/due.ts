/** What is due next, on each worker and in the office, as data: overdue first, then by time, then in the order of the day. */
import { addMinutes, minutesBetween } from '#core/calendar.ts';
import type { Book, SampleRecord, ShiftRecord } from '#records/book.ts';
import { backupIsDue } from './backupDue.ts';
import { blanksNeeded } from './blanks.ts';
import { checksOfSample } from './checks.ts';
import { lookEveryMin, pumpChargeHours } from './practice.ts';

export const dueKeys = [
  'flowBefore',
  'fit',
  'putOn',
  'look',
  'stop',
  'flowAfter',
  'seal',
  'lockIn',
  'blanks',
  'conditions',
  'regularDay',
  'sendToLaboratory',
  'backup',
] as const;
export type DueKey = (typeof dueKeys)[number];

export interface Due {
  readonly key: DueKey;
  readonly sampleId: string | null;
  readonly workerId: string | null;
  readonly shiftId: string | null;
  readonly workdayId: string | null;
  readonly boxId: string | null;
  /** Since when, or at what time, it is due; null where no time is set. */
  readonly dueAt: string | null;
  readonly overdue: boolean;
  readonly params: Readonly<Record<string, string | number>>;
}

export interface DueContext {
  /** Instant of the last whole-book backup, or null when there was none. */
  readonly lastBackupAt: string | null;
  /** The browser's promise to keep the book. */
  readonly persisted?: boolean | null;
}

type About = Partial<
  Pick<Due, 'sampleId' | 'workerId' | 'shiftId' | 'workdayId' | 'boxId' | 'dueAt' | 'overdue' | 'params'>
>;

const due = (key: DueKey, about: About): Due => ({
  key,
  sampleId: null,
  workerId: null,
  shiftId: null,
  workdayId: null,
  boxId: null,
  dueAt: null,
  overdue: false,
  params: {},
  ...about,
});

/** When the next look at a running pump is due: so many minutes after the last look, or after it was put on. */
export function nextLookOf(sample: SampleRecord): string | null {
  if (!sample.putOn || sample.stopped) return null;
  const seenAt = [sample.putOn.at, ...sample.looks.map(({ at }) => at)].sort().at(-1) ?? sample.putOn.at;
  return addMinutes(seenAt, lookEveryMin.value);
}

function hoursOver(sample: SampleRecord, book: Book, now: string): boolean {
  const day = sample.workdayId === null ? undefined : book.workdays.get(sample.workdayId);
  if (!day?.pieces || day.pieces.length === 0) return false;
  return day.pieces.every(({ endedAt }) => endedAt <= now);
}

function onTheWorker(sample: SampleRecord, book: Book, now: string, about: About): Due[] {
  const putOnAt = sample.putOn?.at;
  if (putOnAt === undefined) return [];
  const lookAt = nextLookOf(sample);
  const longMin = minutesBetween(putOnAt, now);
  const found: Due[] = [];
  if (lookAt !== null) found.push(due('look', { ...about, dueAt: lookAt, overdue: lookAt <= now }));
  if (hoursOver(sample, book, now) || longMin >= pumpChargeHours.value * 60)
    found.push(due('stop', { ...about, dueAt: now, overdue: true, params: { soFarMin: longMin } }));
  return found;
}

/** Of one cassette on a worker: the steps of the day that are still open. */
function ofSample(sample: SampleRecord, book: Book, now: string): Due[] {
  const { id, workerId, shiftId, workdayId } = sample;
  const about: About = { sampleId: id, workerId, shiftId, workdayId };
  const checks = checksOfSample(sample, book);
  const found: Due[] = [];
  const open = (key: DueKey, missing: boolean, dueAt: string): void => {
    if (missing) found.push(due(key, { ...about, dueAt }));
  };
  open('flowBefore', checks.before === null && !sample.stopped, sample.preparedAt);
  if (!sample.putOn) {
    open('fit', sample.fitting === null, sample.preparedAt);
    open('putOn', true, sample.preparedAt);
    return found;
  }
  if (!sample.stopped) return [...found, ...onTheWorker(sample, book, now, about)];
  open('flowAfter', checks.after === null, sample.stopped.at);
  open('seal', sample.sealed === null, sample.stopped.at);
  open('lockIn', sample.sealed !== null && sample.sealed.lockedIn === null, sample.stopped.at);
  return found;
}

function ofShift(shift: ShiftRecord, samples: readonly SampleRecord[], book: Book): Due[] {
  const own = samples.filter(({ shiftId }) => shiftId === shift.id);
  const air = own.filter(({ sampleKind, voided }) => sampleKind === 'air' && !voided);
  const stopped = air.filter((sample) => sample.stopped);
  const first = stopped[0];
  if (!first?.stopped) return [];
  const about: About = { shiftId: shift.id, dueAt: first.stopped.at };
  const found: Due[] = [];
  const blanksCount = own.filter(({ sampleKind, voided }) => sampleKind === 'blank' && !voided).length;
  const wantedCount = blanksNeeded(air.length, 'tenPercent').count;
  if (blanksCount < wantedCount) found.push(due('blanks', { ...about, params: { blanksCount, wantedCount } }));
  if (!shift.conditions) found.push(due('conditions', about));
  const asked = new Set<string>();
  for (const { workdayId, workerId } of stopped) {
    if (workdayId === null || asked.has(workdayId)) continue;
    asked.add(workdayId);
    if (!book.workdays.get(workdayId)?.regular) found.push(due('regularDay', { ...about, workdayId, workerId }));
  }
  return found;
}

function forTheLaboratory(samples: readonly SampleRecord[], book: Book): Due[] {
  const boxed = new Set<string>();
  const found: Due[] = [];
  for (const box of book.boxes.values()) {
    for (const sampleId of box.packed.sampleIds) boxed.add(sampleId);
    if (!box.handedOver)
      found.push(due('sendToLaboratory', { boxId: box.id, params: { samplesCount: box.packed.sampleIds.length } }));
  }
  const waiting = samples.filter((s) => s.sealed && !boxed.has(s.id) && s.results.length === 0);
  const first = waiting[0];
  if (first)
    found.push(due('sendToLaboratory', { dueAt: first.sealed?.at ?? null, params: { samplesCount: waiting.length } }));
  return found;
}

/** On a worker, or made ready for one today: nobody is told of backups then. */
const inTheShift = ({ putOn, stopped, voided, preparedAt, sampleKind }: SampleRecord, now: string): boolean =>
  sampleKind === 'air' &&
  voided === null &&
  stopped === null &&
  (putOn !== null || minutesBetween(preparedAt, now) < pumpChargeHours.value * 60);

function backupDue(samples: readonly SampleRecord[], now: string, context: DueContext): Due[] {
  const { lastBackupAt, persisted = null } = context;
  const runningCount = samples.filter((sample) => inTheShift(sample, now)).length;
  const standing = { now, lastBackupAt, persisted, samplesCount: samples.length, runningCount, newCount: 1 };
  return backupIsDue(standing) ? [due('backup', { dueAt: lastBackupAt, overdue: lastBackupAt !== null })] : [];
}

const rank = (one: Due): number => dueKeys.indexOf(one.key);
const compareDue = (a: Due, b: Due): number =>
  Number(b.overdue) - Number(a.overdue) ||
  (a.dueAt ?? '9').localeCompare(b.dueAt ?? '9') ||
  rank(a) - rank(b) ||
  (a.sampleId ?? '').localeCompare(b.sampleId ?? '');

/** What is due, soonest first. `now` is an instant. Without a context nothing is said of backups. */
export function findDue(book: Book, now: string, context?: DueContext): Due[] {
  const samples = [...book.samples.values()].sort(
    (a, b) => a.preparedAt.localeCompare(b.preparedAt) || a.id.localeCompare(b.id),
  );
  const found: Due[] = [];
  for (const sample of samples)
    if (sample.sampleKind === 'air' && !sample.voided) found.push(...ofSample(sample, book, now));
  for (const shift of book.shifts.values()) found.push(...ofShift(shift, samples, book));
  found.push(...forTheLaboratory(samples, book));
  if (context) found.push(...backupDue(samples, now, context));
  return found.sort(compareDue);
}
