/** How gear stands on a day, as screens list it. */
import type { Source } from '#core/formula.ts';
import type { Held } from '#records/book.ts';
import type { CertificateInForce } from './certificateInForce.ts';
import type { GearDoubtOf } from './touched.ts';

export interface GearHeadStanding {
  readonly id: string;
  /** Serial or lot number. */
  readonly number: string;
  readonly held: Held | null;
  /** Rented or lent, and to go back by today or before. */
  readonly backOverdue: boolean;
  readonly retired: boolean;
  /** Every doubt, the newest first. */
  readonly doubts: readonly GearDoubtOf[];
  /** Some doubt is open, or settled as staying doubtful. */
  readonly doubtful: boolean;
}

export interface PumpStanding extends GearHeadStanding {
  /** Its model, as written down. */
  readonly make: string | null;
  readonly lastCharge: { readonly at: string; readonly full: boolean; readonly by: string | null } | null;
  readonly lastWornOn: string | null;
  /** Fully charged after it was last worn; null: never worn and no charge noted, or on a worker now. */
  readonly chargedSinceWorn: boolean | null;
  /** Changes of flow over its last samples, newest first, in per cent of the flow before. */
  readonly lastChanges: readonly { readonly sampleId: string; readonly workOn: string; readonly changePct: number }[];
}

export type MeterDue = 'overdue' | 'soon' | 'later' | 'notKnown';
export interface MeterStanding extends GearHeadStanding {
  readonly meterKind: string;
  readonly certificate: CertificateInForce;
  readonly dueOn: string | null;
  /** `stated`: by the certificate; `twelveMonths`: nothing else is said. A flow check is held to what is stated alone. */
  readonly dueFrom: 'stated' | 'twelveMonths' | null;
  readonly dueSource: Source | null;
  readonly due: MeterDue;
  readonly certificatesCount: number;
}

export interface LotStanding extends GearHeadStanding {
  readonly media: string;
  readonly expiresOn: string | null;
  readonly expiry: 'passed' | 'soon' | 'later' | 'notKnown';
  readonly usedCount: number;
  readonly blanksCount: number;
  /** By the chosen rule, for the samples worn from this lot so far. */
  readonly blanksNeededCount: number;
  readonly boxes: readonly {
    readonly boxId: string;
    readonly samplesCount: number;
    readonly blanksCount: number;
    readonly blanksNeededCount: number;
  }[];
}

export interface GearStanding {
  /** Each list by number, what is retired last. */
  readonly pumps: readonly PumpStanding[];
  readonly meters: readonly MeterStanding[];
  readonly lots: readonly LotStanding[];
  /** Doubts that are open or stay doubtful, over all gear, by the day on which they were found. */
  readonly doubtful: readonly GearDoubtOf[];
}
