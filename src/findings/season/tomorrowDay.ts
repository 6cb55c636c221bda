/** The day made ready, as a value: what the finding answers and what screen and paper show. */
import type { BlanksNeeded } from '../blanks.ts';
import type { Duty } from '../duties/list/duty.ts';

export const tomorrowCautionKeys = [
  'nobodyYet',
  'plannedNotPrepared',
  'askInTheMorning',
  'pumpNone',
  'pumpTwice',
  'pumpNotCharged',
  'pumpDoubted',
  'pumpGoesBack',
  'pumpRetired',
  'lotNone',
  'lotExpired',
  'lotDoubted',
  'labelNone',
  'blankLabelsFew',
  'sparePumpNone',
  'spareCassettesNone',
  'chargedByNone',
  'meterNone',
  'meterOutOfDate',
  'meterDueNotKnown',
  'meterDoubted',
] as const;
export type TomorrowCautionKey = (typeof tomorrowCautionKeys)[number];

export interface TomorrowCaution {
  readonly key: TomorrowCautionKey;
  /** Whom it is about; null = the whole day. */
  readonly workerId: string | null;
  /** `serial`, `lotNumber`, `onDay`, `count`: what its sentence needs. */
  readonly params: Readonly<Record<string, string | number>>;
}

export interface TomorrowPump {
  readonly pumpId: string;
  readonly serial: string;
  /** Instant at which it was last said to be charged to the full; null = nobody said so. */
  readonly chargedAt: string | null;
}
export interface TomorrowLot {
  readonly lotId: string;
  readonly lotNumber: string;
  readonly expiresOn: string | null;
}
export interface TomorrowMeter {
  readonly meterId: string;
  readonly serial: string;
  readonly dueOn: string | null;
}

export interface TomorrowWearer {
  readonly workerId: string;
  readonly planId: string | null;
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  /** Said the evening before or in the morning, or only planned so far. */
  readonly from: 'prepared' | 'plan';
  readonly pump: TomorrowPump | null;
  readonly lot: TomorrowLot | null;
  /** The number on the cassette or on the label made for it; null = no label yet. */
  readonly sampleNumber: string | null;
  /** The sample, once the cassette is prepared for this worker. */
  readonly sampleId: string | null;
}

export interface Tomorrow {
  readonly shiftId: string;
  readonly siteId: string;
  readonly workOn: string;
  /** When it was last asked; null = only planned so far. */
  readonly asked: 'evening' | 'morning' | null;
  readonly wearers: readonly TomorrowWearer[];
  readonly sparePumps: readonly TomorrowPump[];
  readonly spareCassettesCount: number;
  /** Numbers of labels made for field blanks, and of those made as spares. */
  readonly blankNumbers: readonly string[];
  readonly spareNumbers: readonly string[];
  /** By the rule of at least two or a tenth, for as many cassettes as there are wearers, each as often as its plan says. */
  readonly blanks: BlanksNeeded;
  readonly cassettesCount: number;
  readonly chargedById: string | null;
  readonly remark: string | null;
  readonly meters: readonly TomorrowMeter[];
  readonly cautions: readonly TomorrowCaution[];
  /** What the rule asks before this work goes on, of this site or these workers, not done yet. Empty without duties. */
  readonly duties: readonly Duty[];
}
