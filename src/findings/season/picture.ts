/** Results of a task group by date against the limits of their day: what a chart draws and what its table says, row by row. */
import type { Axis } from '#core/axis.ts';
import type { Book } from '#records/book.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import type { Band, Measurement } from '../duties/measuring/measurement.ts';
import type { Reason } from '../reason.ts';

export interface PicturePoint {
  /** Also of one reported to us. */
  readonly measurementId: string;
  /** null: reported to us. */
  readonly workdayId: string | null;
  readonly from: Measurement['from'];
  readonly workOn: string;
  readonly workerId: string | null;
  readonly siteId: string | null;
  /** The 8-hour average that judges. */
  readonly lowerUgPerM3: number;
  /** null: nothing bounds it from above; drawn to the edge. */
  readonly upperUgPerM3: number | null;
  readonly valueKind: 'exact' | 'between' | 'atLeast';
  readonly atLeast: boolean;
  readonly doubtful: boolean;
  /** It may have been of another group. */
  readonly mayBeOther: boolean;
  readonly band: Band;
  readonly reasons: readonly Reason[];
  readonly limits: { readonly actionLevelUgPerM3: number; readonly pelUgPerM3: number };
}

/** A limit as it stood from a first to a last day of the picture: a line, ended where it changed. */
export interface PictureLimit {
  readonly which: 'actionLevel' | 'pel';
  readonly limitSetId: string;
  /** As the set names itself. */
  readonly document: string;
  readonly jurisdiction: string;
  readonly limitUgPerM3: number;
  readonly fromOn: string;
  readonly toOn: string;
}

export interface SeasonPicture {
  readonly groupKey: string;
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly setting: 'indoors' | 'outdoors';
  /** In the order of days, then workers: also the rows of the table. */
  readonly points: readonly PicturePoint[];
  /** Measured, and no figure is known yet: in the table alone. */
  readonly awaited: readonly Pick<
    PicturePoint,
    'measurementId' | 'workdayId' | 'workOn' | 'workerId' | 'siteId' | 'reasons'
  >[];
  readonly limits: readonly PictureLimit[];
  readonly axisUgPerM3: Axis;
  /** First and last day of the picture, and the days that get a line; null without a point. */
  readonly days: { readonly fromOn: string; readonly toOn: string; readonly ticksOn: readonly string[] } | null;
}

/** A group that nothing is known of gives an empty picture. */
export function seasonPicture(book: Book, duties: DutiesOfBook, groupKey: string): SeasonPicture {
  void book;
  void duties;
  throw new Error(`${groupKey}: not written yet`);
}
