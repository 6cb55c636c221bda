/** What a notice must say, as values: its sentences stand in src/words/notice.ts, its page in src/documents. */
import type { Estimate } from '#core/estimate.ts';
import type { Book } from '#records/book.ts';
import type { Measurement } from './measurement.ts';
import type { NoticeOwed } from './notice.ts';

export interface NoticeText {
  readonly measurementId: string;
  readonly workOn: string;
  readonly siteId: string | null;
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  /** null = a worker who is not in the book. */
  readonly measuredWorkerId: string | null;
  readonly measuredBy: Measurement['from'];
  /** As reported; null where we sampled ourselves. */
  readonly measuredByName: string | null;
  readonly twa8UgPerM3: Estimate | null;
  /** Nothing bounds it from above: the figure is read as *at least*. */
  readonly atLeastOnly: boolean;
  readonly actionLevelUgPerM3: number;
  readonly pelUgPerM3: number;
  readonly pelStatement: 'none' | 'atOrAbove' | 'mayHaveBeen';
  readonly correctiveActionNeeded: boolean;
  /** A result of the day is still with the laboratory: the figure may grow. */
  readonly resultOwed: boolean;
  readonly resultFactIds: readonly string[];
  readonly receivedOn: string;
  readonly dueOn: string;
  readonly revision: number;
  readonly workerIds: readonly string[];
  /** `by` a day, `notSet` where none is due or none can be told yet. */
  readonly nextMeasurement: { readonly kind: 'by'; readonly on: string } | { readonly kind: 'notSet' };
  readonly limitSetId: string;
}

export function noticeText(
  _owed: NoticeOwed,
  _measurement: Measurement,
  _nextOn: string | null,
  _book: Book,
): NoticeText {
  throw new Error('not written yet');
}
