/** The shape of a predicted day. It is a prediction: it proves nothing, ends no presumption and no duty. */
import type { Estimate } from '#core/estimate.ts';
import type { Term } from '#core/formula.ts';
import type { LimitsHere } from '#reference/limits.ts';
import type { Presumption } from '#reference/presumption.ts';
import type { RespiratorAdvice } from '../duties/protecting/respirator.ts';

export interface DayAheadInput {
  readonly pieces: readonly { readonly taskIds: readonly string[]; readonly durationMin: number }[];
  /** Only samples of like setting count as like work; null or left out: both. */
  readonly setting?: 'indoors' | 'outdoors' | null;
  /** Two letters; null: not known. */
  readonly stateCode: string | null;
  readonly on: string;
}

/** One sample of these tasks alone; or a day's average of them that was reported to us. */
export interface LikeSample {
  /** Of one reported: its measurement. */
  readonly sampleId: string;
  /** Empty of one reported. */
  readonly sampleNumber: string;
  readonly workdayId: string;
  /** An 8-hour average that others measured: no figure of the air while it was worn, so it only raises. */
  readonly reported?: true;
  readonly workOn: string;
  readonly workerId: string | null;
  /** The flow that judges. */
  readonly concentrationUgPerM3: Estimate;
  readonly working: Term;
  /** Something stands against it: it may raise the figure and never lowers it. */
  readonly doubtful: boolean;
}

export interface PieceAhead {
  readonly taskIds: readonly string[];
  readonly durationMin: number;
  /** `known`: sound samples of like work. `presumed`: none, and the rule's level stands in. `notKnown`: nothing is known or presumed. */
  readonly from: 'known' | 'presumed' | 'notKnown';
  /** What goes in: from the lowest to the highest found; less than the upper end presumed; at least, where nothing bounds it. Never 0. */
  readonly concentration: Term;
  /** Oldest first. */
  readonly samples: readonly LikeSample[];
  readonly spread: {
    readonly soundCount: number;
    readonly lowestUgPerM3: number;
    /** null: one that is only *at least* lies above all sound ones. */
    readonly highestUgPerM3: number | null;
    /** Of upper ends; null with fewer than three sound ones, or where one is nothing. */
    readonly geometricSd: Term | null;
  } | null;
  readonly presumption: Presumption;
}

export interface DayAhead {
  readonly kind: 'prediction';
  readonly limits: LimitsHere;
  readonly pieces: readonly PieceAhead[];
  readonly durationMin: number;
  /** From the lowest to the highest that like work was found to be; *at least* where nothing bounds a piece. null without pieces. */
  readonly twa8: Term | null;
  /** The careful side of it: the upper end, where there is one. */
  readonly upperUgPerM3: number | null;
  readonly lowerUgPerM3: number;
  /** Its careful side reaches the number: said as *may reach*, never as a finding. Not reached says nothing. */
  readonly mayReach: { readonly actionLevel: boolean; readonly pel: boolean };
  /** Least protection: the higher of what the figures need and of what is presumed of the tasks, which no prediction ends. */
  readonly advice: RespiratorAdvice;
  /** Pieces by where their level comes from. */
  readonly knownCount: number;
  readonly presumedCount: number;
  readonly notKnownCount: number;
  /** More than 8 hours. */
  readonly longDay: boolean;
}
