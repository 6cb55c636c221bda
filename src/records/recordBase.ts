/** What every record has: the facts it stands on, what was struck, what is in dispute, what is not understood, its pictures. */
import type { FactBody } from './fact.ts';

/** A body without one of its values; what a newer version may have put beside them is not promised. */
export type Without<T, K extends string> = {
  [P in keyof T as string extends P ? never : P extends K ? never : P]: T[P];
};

/** Two corrections of one value, made without knowledge of each other. The more careful value stands in the record meanwhile. */
export interface Conflict {
  readonly factId: string;
  readonly path: string;
  readonly candidates: readonly {
    readonly correctionId: string;
    readonly value: unknown;
    readonly by: string | null;
  }[];
  readonly standing: string;
  /** `first`: no direction is known for this value, so what was there first stands. */
  readonly judges?: 'careful' | 'first';
  /** The value that judges meanwhile; it may be no candidate's. */
  readonly standingValue?: unknown;
  /** Of statements: what else was said of the matter so far, settlements and corrections. Whoever settles it now names these too. */
  readonly besides?: readonly string[];
}

/** A struck value: shown with its reason wherever the record is shown. */
export interface Strike {
  readonly correctionId: string;
  readonly factId: string;
  readonly path: string;
  readonly old: unknown;
  readonly new: unknown;
  readonly why: string | null;
  readonly by: string | null;
}

export interface RecordBase {
  readonly key: string;
  readonly id: string;
  readonly factIds: readonly string[];
  readonly strikes: readonly Strike[];
  readonly conflicts: readonly Conflict[];
  /** Ids of facts that must be understood and are not: nothing may be relaxed on this record. */
  readonly notUnderstood: readonly string[];
  /** What was noted on people, places, gear and days; a sample has its remarks. */
  readonly notes?: readonly string[];
  /** Pictures of it, in the order taken. Their bytes may be missing on this device. */
  readonly photos?: readonly Photo[];
}

export interface Photo
  extends Pick<FactBody<'photoTaken.v1'>, 'photoId' | 'of' | 'hash' | 'widthPx' | 'heightPx' | 'bytesCount'> {
  readonly factId: string;
  readonly at: string;
  readonly by: string | null;
}
