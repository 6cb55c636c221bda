/** What a task group needs next, in one word, and why it stands where it stands in the list. */

/** In the order of need: what blocks or is owed first. */
export const needKinds = [
  'neverMeasured',
  'changed',
  'again',
  'dueAgain',
  'dueSoon',
  'resultOwed',
  'planned',
  'notMeasuredNoWork',
  'known',
] as const;
/**
 * `neverMeasured`: no measurement bears on it at a site where the work goes on, or the work is planned. `changed`: additional monitoring
 * is owed. `again`: measured, and void, in doubt, or something stands against it. `dueAgain`: by the course, today, overdue, or before the
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
