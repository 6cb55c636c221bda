/** What rests on gear that was found bad: the shape that screens list and papers say. */
import type { GearDoubt } from '#records/book.ts';
import type { DoubtEffect, GearKind } from './doubtsOf.ts';

/** One thing that rests on the gear. `id` is that of its record (of a notice owed: of its measurement; of a duty: of the duty). */
export interface TouchedOne {
  readonly id: string;
  readonly onDay: string | null;
  readonly siteId: string | null;
  readonly workerId: string | null;
  /** Number of the sample, revision of the custody sheet; null where it has none. */
  readonly number: string | null;
  /** Key of the task group, of a determination that is not written yet; else null. */
  readonly groupKey: string | null;
}

/** Each list by day, then by id. */
export interface Touched {
  readonly gear: GearKind;
  readonly gearId: string;
  readonly doubtId: string;
  readonly effect: DoubtEffect;
  readonly flowChecks: readonly TouchedOne[];
  /** Field blanks too. */
  readonly samples: readonly TouchedOne[];
  readonly workdays: readonly TouchedOne[];
  readonly measurements: readonly TouchedOne[];
  readonly noticesIssued: readonly TouchedOne[];
  readonly noticesOwed: readonly TouchedOne[];
  readonly determinations: readonly TouchedOne[];
  /** What may be written now, by site and group: `groupKey` is set. */
  readonly determinationsNotWritten: readonly TouchedOne[];
  readonly reliances: readonly TouchedOne[];
  readonly duties: readonly TouchedOne[];
  readonly exposureRecords: readonly TouchedOne[];
  /** Boxes whose custody sheet was issued. */
  readonly custodySheets: readonly TouchedOne[];
}

/** A paper, or what it is made from. */
export type GearPaper =
  | { readonly kind: 'notice'; readonly id: string }
  | { readonly kind: 'determination'; readonly id: string }
  | { readonly kind: 'box'; readonly id: string }
  | { readonly kind: 'exposureRecord'; readonly id: string }
  | { readonly kind: 'measurement'; readonly id: string }
  | { readonly kind: 'measurements'; readonly ids: readonly string[] }
  | { readonly kind: 'sample'; readonly id: string };

/** A doubt that something rests on. */
export interface GearDoubtOf {
  readonly gear: GearKind;
  readonly gearId: string;
  readonly gearNumber: string;
  readonly doubt: GearDoubt;
  readonly effect: DoubtEffect;
}
