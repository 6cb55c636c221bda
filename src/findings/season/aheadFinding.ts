/** The shape of what is said of a sample before it is taken. It says what it could show and proves nothing. */
import type { Axis } from '#core/axis.ts';
import type { Term } from '#core/formula.ts';
import type { ReadSource } from '#reference/source.ts';

export interface SampleAheadInput {
  readonly methodId: string | null;
  readonly reportingLimitUg: number;
  readonly flowLPerMin: number;
  /** Minutes of work in the day. */
  readonly shiftMin: number;
  /** Minutes that are sampled, all cassettes together; left out: the whole shift. */
  readonly sampledMin?: number;
  readonly cassettesCount: number;
  /** Above 0 to 1: the bound is to lie below this share of the action level. */
  readonly shareOfActionLevel: number;
  /** Dust in the air, guessed; null: nobody says. */
  readonly dustMgPerM3: number | null;
  readonly actionLevelUgPerM3: number;
  readonly pelUgPerM3: number;
  /** Hours that the owner says a charge of this pump lasts; left out or null: not said. */
  readonly chargeHours?: number | null;
  /** The day whose limits hold, for California's beside. */
  readonly on: string;
}

export type AheadReasonKey =
  | 'splittingCostsProof'
  | 'otherMinutes'
  | 'noTimeSuffices'
  | 'moreSensitiveMethod'
  | 'limitBelowDetection'
  | 'flowOutsideMethod'
  | 'flowNotStatedByMethod'
  | 'volumeBelowMethod'
  | 'volumeAboveMethod'
  | 'volumeNotStatedByMethod'
  | 'longerThanMethod'
  | 'changeCassette'
  | 'dustNotSaid'
  | 'loadNotStatedByMethod'
  | 'restUnsampled'
  | 'chargeTooShort'
  | 'chargeNotSaid'
  | 'methodNotKnown'
  | 'californiaAsksMore';

export interface AheadReason {
  readonly key: AheadReasonKey;
  /** Quantities end in their unit suffix. */
  readonly params: Readonly<Record<string, number | string>>;
}

/** What it would take to come below a level. */
export interface ToComeBelow {
  readonly levelUgPerM3: number;
  /** `yes`: as planned. `withOtherMinutes`: not as planned, but with other minutes of the shift. `no`: no time suffices. */
  readonly couldShow: 'yes' | 'withOtherMinutes' | 'no';
  /** Least, of the plan's cassettes together, in whole minutes, with volumes that the method allows; null: no time suffices. */
  readonly minutesNeededMin: number | null;
  /** Of one cassette alone; null: no time suffices. */
  readonly oneMinutesNeededMin: number | null;
  /** How it was worked out, however long that would be. */
  readonly minutesWorking: Term;
  /** What the laboratory would have to report from, with these cassettes over the whole shift: less than this. */
  readonly reportingLimitNeeded: Term;
  /** What the flow would have to be over, with these cassettes over the whole shift. */
  readonly flowNeeded: Term;
  /** That flow lies within the method's; null: the method states none. */
  readonly flowNeededAllowed: boolean | null;
}

/** A range of the method, what the plan comes to, and where the range stands. */
export interface RangeOfMethod {
  readonly low: number | null;
  readonly high: number | null;
  readonly source: ReadSource;
  readonly stands: 'inside' | 'below' | 'above';
}

export interface LoadingAhead {
  readonly dustMgPerM3: number;
  readonly maxLoadMg: number;
  readonly source: ReadSource;
  /** Minutes until the filter holds what the method allows. */
  readonly minutesToLimit: Term;
  /** Whole minutes after which the cassette is to be changed; null: it lasts as long as it is planned to be on. */
  readonly changeAfterMin: number | null;
  /** Cassettes that the minutes need at this dust, not fewer than planned. */
  readonly cassettesCount: number;
  /** The day's bound with that many. */
  readonly bound: Term;
}

export interface CurvePoint {
  readonly durationMin: number;
  readonly value: number;
}

export interface SampleAhead {
  /** It says what a sample could show. It proves nothing. */
  readonly kind: 'ahead';
  readonly input: SampleAheadInput;
  readonly sampledMin: number;
  /** n × R / (0.48 × Q): the day's bound if every minute is sampled and all cassettes come back below the reporting limit. µg/m³. */
  readonly dayBound: Term;
  /** The same as planned: of the minutes sampled, if the rest of the shift is like them. Equal to `dayBound` when all is sampled. */
  readonly bound: Term;
  /** What one cassette alone would leave open. */
  readonly boundOfOne: Term;
  /** What the bound is held against: the chosen share, the action level, the PEL. */
  readonly share: ToComeBelow;
  readonly actionLevel: ToComeBelow;
  readonly pel: ToComeBelow;
  /** California's action level, with where it stands. */
  readonly california: ToComeBelow & { readonly source: ReadSource };
  /** Litres of one cassette, and the least concentration over its own minutes that it can tell from nothing. */
  readonly volume: Term;
  readonly leastSeen: Term;
  readonly volumeRange: RangeOfMethod | null;
  /** Recommended for an average over the shift, where the method says one. */
  readonly twaVolumeRange: RangeOfMethod | null;
  readonly flowRange: RangeOfMethod | null;
  /** null: no dust said, or the method states no load. */
  readonly loading: LoadingAhead | null;
  readonly charge: {
    readonly neededHours: number;
    readonly saidHours: number | null;
    readonly enough: 'yes' | 'no' | 'notSaid';
  };
  /** What would leave such a sample in doubt, so that it proved nothing low whatever its bound. */
  readonly blocks: readonly AheadReasonKey[];
  /** In the order in which they matter. */
  readonly reasons: readonly AheadReason[];
  readonly curves: {
    /** Bound against minutes sampled, for 1 to 4 cassettes together. Each begins where it comes down into the picture. */
    readonly bound: readonly { readonly cassettesCount: number; readonly points: readonly CurvePoint[] }[];
    readonly boundAxisUgPerM3: Axis;
    readonly minutesAxisMin: Axis;
    /** Dust on one filter against its minutes; null as `loading`. */
    readonly load: { readonly points: readonly CurvePoint[]; readonly loadAxisMg: Axis } | null;
  };
}
