/** The fitting points of a sample: hot work adds the helmet. */
import type { SampleRecord } from '#records/book.ts';
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

/** In the order in which a hand goes over them. */
export function pointsFor(sample: SampleRecord): readonly PointKey[] {
  const hot = sample.taskIds.some((taskId) => taskById(taskId)?.hotWork === true);
  return hot ? always.flatMap((key) => (key === 'outsideRespirator' ? [key, 'insideHelmet' as const] : [key])) : always;
}

export function pointsOf(
  asked: readonly PointKey[],
  ticked: readonly PointKey[],
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
