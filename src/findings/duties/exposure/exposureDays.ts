/** Days at or above the action level, per worker, over any twelve consecutive months: 29 CFR 1926.62(j)(1)(ii). */

export interface ExposureDay {
  readonly on: string;
  /** `measured` that day on this worker; `represented` by a measurement that stands for it; `presumed` from the task; `notKnown` */
  readonly by: 'measured' | 'represented' | 'presumed' | 'notKnown';
  readonly atOrAbove: 'yes' | 'no' | 'notKnown';
  readonly measurementId: string | null;
  readonly because: readonly string[];
}

export interface ExposureDays {
  readonly workerId: string;
  readonly days: readonly ExposureDay[];
  /** The twelve months with the most such days so far. */
  readonly most: {
    readonly fromOn: string;
    readonly toOn: string;
    readonly count: number;
    readonly presumedCount: number;
  } | null;
  /** The twelve months that end today. */
  readonly running: {
    readonly fromOn: string;
    readonly toOn: string;
    readonly count: number;
    readonly presumedCount: number;
    readonly notKnownCount: number;
  };
  readonly anyDay: boolean;
  /** More than thirty: counted with presumed days. */
  readonly moreThanThirty: boolean;
}
