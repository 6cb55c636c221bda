/** Telling workers: 29 CFR 1926.62(d)(8). For any result, to everyone it stands for, within five working days of its receipt. */

export interface NoticeOwed {
  readonly measurementId: string;
  readonly receivedOn: string;
  /** Last day: Monday to Friday counted, receipt excluded. */
  readonly dueOn: string;
  /** Federal holidays not counted either; null where it is the same day. */
  readonly laterReadingOn: string | null;
  readonly affectedIds: readonly string[];
  /** Told by a notice that knew the results as they are now. */
  readonly toldIds: readonly string[];
  readonly openIds: readonly string[];
  readonly pelStatement: boolean;
  readonly correctiveActionNeeded: boolean;
  /** `revised`: an earlier notice told other results. */
  readonly kind: 'first' | 'revised';
  readonly noticeIds: readonly string[];
  readonly overdue: boolean;
  /** Told, but after the last day. */
  readonly toldLate: boolean;
  readonly because: readonly string[];
}
