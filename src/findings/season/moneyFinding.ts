/** The shape of what measuring costs: planned, spent, to come. A price that is not known leaves its sum not known, never 0. */

export const moneyKinds = [
  'analysis',
  'blank',
  'cassettes',
  'courier',
  'rush',
  'rental',
  'consultant',
  'calibration',
  'other',
] as const;
export type MoneyKind = (typeof moneyKinds)[number];

/** A price of the firm, by the name of its field. */
export type PriceName =
  | 'analysisUsd'
  | 'blankUsd'
  | 'cassetteUsd'
  | 'courierUsd'
  | 'rushUsd'
  | 'pumpRentalUsd'
  | 'meterRentalUsd'
  | 'consultantUsd';

/** null: a price is missing. A count may be known all the same. */
export interface Amount {
  readonly count: number;
  readonly amountUsd: number | null;
}

export interface MoneyLine {
  readonly of: MoneyKind;
  readonly planned: Amount;
  /** Entries not struck; `count`: how many were paid for, as far as said. */
  readonly spent: { readonly count: number; readonly amountUsd: number; readonly entriesCount: number };
  /** Taken or planned, and not yet billed. */
  readonly toCome: Amount;
  /** Bills that do not say how many they were for: what they paid for is still counted as to come. */
  readonly billsWithoutCount: number;
}

export interface MissingPrice {
  readonly price: PriceName;
  /** The days that want it. */
  readonly fromOn: string;
  readonly toOn: string;
}

export interface MoneySum {
  readonly lines: readonly MoneyLine[];
  /** null: not known, because a price is missing. What is known of it stands in `known...`. */
  readonly plannedUsd: number | null;
  readonly knownPlannedUsd: number;
  readonly spentUsd: number;
  readonly toComeUsd: number | null;
  readonly knownToComeUsd: number;
  readonly missing: readonly MissingPrice[];
  /** Days that are planned, with a day or without one. */
  readonly slotsCount: number;
  readonly openDaysCount: number;
}

export interface MoneyOfJob extends MoneySum {
  /** null: of no single job. */
  readonly siteId: string | null;
}

export interface Money extends MoneySum {
  readonly fromOn: string;
  readonly toOn: string;
  readonly siteId: string | null;
  /** By job; empty where one job is asked for. */
  readonly jobs: readonly MoneyOfJob[];
  readonly determinationsCount: number;
  /** What was spent for each determination written in that time, to the nearest cent; null: none was written. */
  readonly perDeterminationUsd: number | null;
  /** The prices that hold today; null: none were entered. */
  readonly pricesFromOn: string | null;
}

export interface MoneyQuestion {
  readonly fromOn: string;
  readonly toOn: string;
  readonly siteId?: string | null;
  /** Foreseen besides what plans say. */
  readonly consultantDaysCount?: number;
  readonly rushSamplesCount?: number;
}
