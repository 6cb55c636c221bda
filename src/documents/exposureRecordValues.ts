/**
 * The exposure record of a worker's day, 29 CFR 1926.62(n)(1)(ii)(A)-(E), with every working and every struck value: readable for thirty
 * years without this tool. The values are what is printed, line by line; they are kept in exposureRecordIssued.v1 and attached.
 */
import type { WorkdayFinding } from '#findings/workday.ts';
import type { Book } from '#records/book.ts';
import type { Occasion, PeopleById, Printing } from './occasion.ts';

export interface ExposureRecordInput extends Occasion, Printing {
  /** The slice that the finding was made from: people, gear, flow checks, samples, the day, its shifts. */
  readonly book: Book;
  readonly finding: WorkdayFinding;
  readonly people: PeopleById;
  /** Everyone the measurement stands for, the measured one among them. */
  readonly standsForIds: readonly string[];
  readonly revision: string;
  readonly why: string | null;
  /** To whom it is handed out. */
  readonly to: string;
  /** Everyday names of tasks, titles of methods, and what was worn, by id. */
  readonly nameOf: (id: string) => string | undefined;
  /** What was worn, in words; null = not noted. */
  readonly respirator: string | null;
  readonly shownAs: 'name' | 'identifier';
}

/** A labelled value, as printed. */
export type PrintedField = readonly [label: string, value: string];
/** A line of a hand calculation, indented by its depth. */
export interface WorkingLine {
  readonly depth: number;
  readonly text: string;
}
export interface PrintedWorking {
  readonly number: number;
  readonly title: string;
  readonly lines: readonly WorkingLine[];
}
/** A heading with its fields; `lines` are sentences below them. */
export interface PrintedSection {
  readonly heading: string;
  readonly fields: readonly PrintedField[];
  readonly lines: readonly string[];
}

export interface ExposureRecordValues extends Occasion {
  readonly recordFormat: 'exposureRecord.v1';
  readonly workdayId: string;
  readonly workOn: string;
  readonly worker: string;
  readonly siteName: string;
  readonly revision: string;
  readonly why: string | null;
  readonly to: string;
  readonly sections: readonly PrintedSection[];
  readonly minutes: readonly (readonly string[])[];
  readonly workings: readonly PrintedWorking[];
  readonly struck: readonly string[];
}
