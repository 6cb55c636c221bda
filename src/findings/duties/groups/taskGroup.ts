/**
 * Task groups: one job classification doing the same tasks, indoors or outdoors. The five resemblance terms of 29 CFR
 * 1926.62(d)(3)(iii) are filled from the conditions of each day and compared, never guessed.
 */

/** processes; type of material; control methods; work practices; environmental conditions */
export const resemblanceTerms = ['processes', 'material', 'controls', 'practices', 'environment'] as const;
export type ResemblanceTerm = (typeof resemblanceTerms)[number];

/** One day of one worker in a group, from the roster or from a sample. */
export interface GroupDay {
  readonly workerId: string;
  readonly workOn: string;
  readonly shiftId: string;
  readonly siteId: string;
  readonly groupKey: string;
  /** Other groups that it may have been: entries or samples of that shift that do not say the same. They raise and never relax. */
  readonly mayBeKeys?: readonly string[];
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly setting: 'indoors' | 'outdoors';
  readonly respirator: string | null;
  /** `roster`: written down. `sample`: only a sample tells. */
  readonly from: 'roster' | 'sample';
  readonly because: readonly string[];
}

export interface TaskGroup {
  readonly key: string;
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly setting: 'indoors' | 'outdoors';
  readonly days: readonly GroupDay[];
  readonly workerIds: readonly string[];
  readonly lastOn: string | null;
}

/** Same tasks in any order make the same key. */
export const groupKeyOf = (
  setting: 'indoors' | 'outdoors',
  jobClassificationId: string | null,
  taskIds: readonly string[],
): string => [setting, jobClassificationId ?? '-', [...new Set(taskIds)].sort().join('+')].join('|');

const parts = new Map<string, readonly [work: string, job: string]>();

function partsOf(key: string): readonly [work: string, job: string] {
  const known = parts.get(key);
  if (known) return known;
  const [setting = '', job = '-', tasks = ''] = key.split('|');
  const made = [`${setting}|${tasks}`, job] as const;
  parts.set(key, made);
  return made;
}

/** The same work, as far as anybody noted: a classification that nobody noted may be any. It raises and never relaxes. */
export function mayBeSameGroup(a: string, b: string): boolean {
  if (a === b) return true;
  const [workA, jobA] = partsOf(a);
  const [workB, jobB] = partsOf(b);
  return workA === workB && (jobA === '-' || jobB === '-');
}
