/** The written initial determination of a task group at a site: 29 CFR 1926.62(d)(3) to (5). */
import type { Book } from '#records/book.ts';
import type { DeterminationFinding } from './determination.ts';
import type { Measurement } from './measurement.ts';
import type { GroupDay } from './taskGroup.ts';

/** What may be determined of one task group at one site. */
export function determinationFor(
  _siteId: string,
  _groupKey: string,
  _measurements: ReadonlyMap<string, Measurement>,
  _book: Book,
  _days: readonly GroupDay[],
  _today: string,
): DeterminationFinding {
  throw new Error('not written yet');
}

/** Every task group at every site, by site and group. */
export function determinationsOf(
  _measurements: ReadonlyMap<string, Measurement>,
  _book: Book,
  _days: readonly GroupDay[],
  _today: string,
): readonly DeterminationFinding[] {
  throw new Error('not written yet');
}
