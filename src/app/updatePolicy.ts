/**
 * When a newer version may be offered. A visible page is never loaded again unasked; while a pump runs nothing is asked at all; who said
 * "not now" is left alone for the rest of the visit.
 */

export interface UpdateStanding {
  /** A newer version is on the device and waits. */
  readonly waiting: boolean;
  /** Another window has already changed to it. */
  readonly changedElsewhere: boolean;
  /** Pumps on workers now; null while that is not known. */
  readonly runningCount: number | null;
  readonly postponed: boolean;
}

/** `tell` says that it can wait; `offer` asks; `elsewhere` says that this page is of the older version. */
export type UpdateOffer = 'nothing' | 'tell' | 'offer' | 'elsewhere';

export function updateOffer(standing: UpdateStanding): UpdateOffer {
  if (standing.changedElsewhere) return 'elsewhere';
  if (!standing.waiting) return 'nothing';
  if (standing.runningCount === null || standing.runningCount > 0) return 'tell';
  return standing.postponed ? 'nothing' : 'offer';
}
