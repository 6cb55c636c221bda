/** The points of a fitting, on the phone and on paper: hot work adds the helmet. */
import type { FactBody } from '#records/fact.ts';
import { taskById } from '#reference/tasks.ts';

export type PointKey =
  | 'pumpSecured'
  | 'tubingSecured'
  | 'breathingZone'
  | 'outsideRespirator'
  | 'insideHelmet'
  | 'inletDown'
  | 'plugsOff'
  | 'running';

const always: readonly PointKey[] = [
  'pumpSecured',
  'tubingSecured',
  'breathingZone',
  'outsideRespirator',
  'inletDown',
  'plugsOff',
  'running',
];

/** A task that this version does not know may be hot work. */
export const isHotWork = (taskIds: readonly string[]): boolean => taskIds.some((id) => taskById(id)?.hotWork ?? true);

/** In the order in which a hand goes over them. */
export function pointsFor(taskIds: readonly string[]): readonly PointKey[] {
  if (!isHotWork(taskIds)) return always;
  return always.flatMap((key) => (key === 'outsideRespirator' ? [key, 'insideHelmet' as const] : [key]));
}

/** A point that is not ticked was not met, or nobody wrote it: both read as not. */
export function pointsOf(
  asked: readonly PointKey[],
  ticked: readonly string[],
): FactBody<'fittingChecked.v1'>['points'] {
  const has = (key: PointKey): boolean => ticked.includes(key);
  return {
    pumpSecured: has('pumpSecured'),
    tubingSecured: has('tubingSecured'),
    breathingZone: has('breathingZone'),
    outsideRespirator: has('outsideRespirator'),
    insideHelmet: asked.includes('insideHelmet') ? has('insideHelmet') : null,
    inletDown: has('inletDown'),
    plugsOff: has('plugsOff'),
    running: has('running'),
  };
}
