/**
 * What others measured at such tasks. Hints for planning: the same task differs ten to a hundred times from job to job, most figures are
 * of half an hour, and none is evidence of anything. Always ranges with their source, never a predicted number.
 */
import { type PublishedExposure, publishedExposures } from '#reference/publishedExposures.ts';

export interface PublishedHint {
  readonly exposure: PublishedExposure;
  /** The tasks asked for that it speaks of. */
  readonly taskIds: readonly string[];
  /** Measured in the setting asked for; `notStated`: the source does not say. Those of the other setting are told, and marked. */
  readonly setting: 'same' | 'other' | 'notStated';
}

const rank = { same: 0, notStated: 1, other: 2 } as const;

/** Those of the same setting first, then in the order of the list. None where nothing was published of any of these tasks. */
export function publishedExposuresFor(
  taskIds: readonly string[],
  setting: 'indoors' | 'outdoors',
): readonly PublishedHint[] {
  const hints = publishedExposures().flatMap((exposure): PublishedHint[] => {
    const own = exposure.taskIds.filter((id) => taskIds.includes(id));
    if (own.length === 0) return [];
    const { setting: where } = exposure;
    return [{ exposure, taskIds: own, setting: where === 'notStated' ? where : where === setting ? 'same' : 'other' }];
  });
  return hints.sort((a, b) => rank[a.setting] - rank[b.setting]);
}
