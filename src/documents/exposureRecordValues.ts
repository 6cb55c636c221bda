/**
 * The exposure record of a worker's day, 29 CFR 1926.62(n)(1)(ii)(A)-(E), with every working and every struck value: readable for thirty
 * years without this tool. The values are what is printed, line by line; they are kept in exposureRecordIssued.v1 and attached.
 */
import type { DoubtOnPaper } from '#findings/gear/doubtsOnPaper.ts';
import { namesIn } from '#findings/naming.ts';
import type { WorkdayFinding } from '#findings/workday.ts';
import type { Book } from '#records/book.ts';
import { en } from '#words/exposureRecord.ts';
import type { Naming } from '#words/valueText.ts';
import { conditionsSection } from './exposureConditions.ts';
import { minutesOf, representsSection, resultSection, standsForOf, whomSection } from './exposureDay.ts';
import { blanksSection, flowsSection } from './exposureFlows.ts';
import { sampleSections } from './exposureSamples.ts';
import { struckLines } from './exposureStruck.ts';
import { type PrintedWorking, workingsOf } from './exposureWorkings.ts';
import { gearSection } from './gearOnPaper.ts';
import { type Occasion, occasionOf, type PeopleById, type Printing } from './occasion.ts';

export interface ExposureRecordInput extends Occasion, Printing {
  /** The slice that the finding was made from: people, gear, flow checks, samples, the day, its shifts. */
  readonly book: Book;
  readonly finding: WorkdayFinding;
  readonly people: PeopleById;
  /** Everyone the measurement stands for, the measured one among them. */
  readonly standsForIds: readonly string[];
  readonly revision: string;
  /** Why this revision replaces the one before; null for the first. */
  readonly why: string | null;
  /** To whom it is handed out. */
  readonly to: string;
  /** What was worn, in words; null = not noted. */
  readonly respirator: string | null;
  readonly shownAs: 'name' | 'identifier';
  /** Gear that the day rests on and that is in doubt (doubtsOnPaper). */
  readonly gearDoubts: readonly DoubtOnPaper[];
}

/** A labelled value, as printed. */
export type PrintedField = readonly [label: string, value: string];
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
  readonly revision: string;
  readonly why: string | null;
  readonly to: string;
  readonly shownAs: 'name' | 'identifier';
  readonly whom: PrintedSection;
  readonly result: PrintedSection;
  /** null: no gear that it rests on is in doubt. */
  readonly gearFoundBad: PrintedSection | null;
  /** Name or number, job classification, employer. */
  readonly standsFor: readonly (readonly [string, string, string])[];
  /** When, minutes, what it was, reason, concentration. */
  readonly minutes: readonly (readonly [string, string, string, string, string])[];
  readonly sections: readonly PrintedSection[];
  readonly workings: readonly PrintedWorking[];
  readonly struck: readonly string[];
}

/** What every part of the record is told from. */
export interface Recording {
  readonly input: ExposureRecordInput;
  readonly book: Book;
  readonly finding: WorkdayFinding;
  readonly naming: Naming;
  readonly shown: (personId: string) => string;
}

function recordingOf(input: ExposureRecordInput): Recording {
  const { book, finding, people, shownAs, zone } = input;
  const others = namesIn(book);
  const shown = (id: string): string => {
    const person = people.get(id);
    return (shownAs === 'identifier' ? person?.identifier : person?.name) ?? en.notKnown;
  };
  const nameOf = (id: string) => (people.has(id) || book.people.has(id) ? shown(id) : others(id));
  return { input, book, finding, naming: { nameOf, zone, on: finding.workOn }, shown };
}

export function exposureRecordValues(input: ExposureRecordInput): ExposureRecordValues {
  const recording = recordingOf(input);
  const { finding } = input;
  return {
    recordFormat: 'exposureRecord.v1',
    ...occasionOf(input),
    workdayId: finding.workdayId,
    workOn: finding.workOn,
    worker: recording.shown(finding.workerId),
    revision: input.revision,
    why: input.why,
    to: input.to,
    shownAs: input.shownAs,
    whom: whomSection(recording),
    result: resultSection(recording),
    gearFoundBad: gearSection(input.gearDoubts),
    standsFor: standsForOf(recording),
    minutes: minutesOf(recording),
    sections: [
      representsSection(recording),
      ...sampleSections(recording),
      flowsSection(recording),
      blanksSection(recording),
      conditionsSection(recording),
    ],
    workings: workingsOf(finding),
    struck: struckLines(recording),
  };
}
