/** The fitting points as the paper lists them; hot work adds the helmet. */
import type { FactBody } from '#records/fact.ts';
import { taskById } from '#reference/tasks.ts';

type Points = FactBody<'fittingChecked.v1'>['points'];
export type PointKey =
  | 'pumpSecured'
  | 'tubingSecured'
  | 'breathingZone'
  | 'outsideRespirator'
  | 'insideHelmet'
  | 'inletDown'
  | 'plugsOff'
  | 'running';

export const isHot = (taskIds: readonly string[]): boolean => taskIds.some((id) => taskById(id)?.hotWork === true);

export const pointKeys = (taskIds: readonly string[]): readonly PointKey[] => [
  'pumpSecured',
  'tubingSecured',
  'breathingZone',
  'outsideRespirator',
  ...(isHot(taskIds) ? (['insideHelmet'] as const) : []),
  'inletDown',
  'plugsOff',
  'running',
];

/** A point that is not ticked was not met, or nobody wrote it: both read as not. */
export function pointsTicked(ticked: readonly string[], taskIds: readonly string[]): Points {
  const has = (key: PointKey): boolean => ticked.includes(key);
  return {
    pumpSecured: has('pumpSecured'),
    tubingSecured: has('tubingSecured'),
    breathingZone: has('breathingZone'),
    outsideRespirator: has('outsideRespirator'),
    insideHelmet: isHot(taskIds) ? has('insideHelmet') : null,
    inletDown: has('inletDown'),
    plugsOff: has('plugsOff'),
    running: has('running'),
  };
}
