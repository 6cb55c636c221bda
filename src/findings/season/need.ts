/** What a task group needs next, in one word, and why it stands where it stands in the list. */

/** In the order of need: what blocks or is owed first. */
export const needKinds = [
  'neverMeasured',
  'changed',
  'again',
  'answer',
  'dueAgain',
  'dueSoon',
  'resultOwed',
  'planned',
  'notMeasuredNoWork',
  'known',
] as const;
/**
 * `neverMeasured`: no measurement bears on it at a site where the work goes on, or the work is planned. `changed`: additional monitoring
 * is owed. `again`: measured, and void, in doubt, and only another measurement helps. `answer`: measured, and
 * what stands against a finding is to be answered, not measured. `dueAgain`: by the course, today, overdue, or before the
 * next time. `dueSoon`: by the course, within the days of `soonDays`. `resultOwed`: on the worker, or with the laboratory. `planned`:
 * known, and a plan has open places. `notMeasuredNoWork`: never measured, and the work has not been done for some time. `known`: not due.
 */
export type NeedKind = (typeof needKinds)[number];

export interface Need {
  readonly kind: NeedKind;
  /** null: not of one site. */
  readonly siteId: string | null;
  readonly workerIds: readonly string[];
  readonly dueOn: string | null;
  readonly overdue: boolean;
  /** The duties that ask for it; empty where the rule of the site is not held, and of what no duty is. */
  readonly dutyIds: readonly string[];
  readonly because: readonly string[];
}

export type AboutNeed = Partial<Omit<Need, 'kind'>>;

export const need = (kind: NeedKind, about: AboutNeed = {}): Need => ({
  kind,
  siteId: null,
  workerIds: [],
  dueOn: null,
  overdue: false,
  dutyIds: [],
  because: [],
  ...about,
});

/** The last of some days; null where there is none. */
export const latest = (days: Iterable<string | null>): string | null =>
  [...days].reduce<string | null>((last, on) => (on !== null && (last === null || on > last) ? on : last), null);

const rank = ({ kind }: Need): number => needKinds.indexOf(kind);
const notDueAt = '9999';

/** Most pressing first: by kind, then what is overdue, then by day. What has no day is due now, or is not due at all. */
export function byPress(a: Need, b: Need): number {
  if (rank(a) !== rank(b)) return rank(a) - rank(b);
  if (a.overdue !== b.overdue) return a.overdue ? -1 : 1;
  const none = a.kind === 'known' ? notDueAt : '';
  const [onA, onB] = [a.dueOn ?? none, b.dueOn ?? none];
  return onA < onB ? -1 : onA > onB ? 1 : 0;
}

const once = (ids: readonly string[]): readonly string[] => [...new Set(ids)];

/** The same of several workers at one site is one line. */
export function mergedNeeds(needs: readonly Need[]): readonly Need[] {
  const found = new Map<string, Need>();
  for (const one of needs) {
    const name = `${one.kind} ${one.siteId} ${one.dueOn} ${one.overdue}`;
    const before = found.get(name);
    if (!before) found.set(name, one);
    else
      found.set(name, {
        ...before,
        workerIds: once([...before.workerIds, ...one.workerIds]),
        dutyIds: once([...before.dutyIds, ...one.dutyIds]),
        because: once([...before.because, ...one.because]),
      });
  }
  return [...found.values()];
}
