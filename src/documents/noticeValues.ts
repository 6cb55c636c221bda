/**
 * The values of a notice to workers, 29 CFR 1926.62(d)(8): what is printed, kept in noticeIssued.v1 and attached to the PDF. Plain JSON.
 * The statement on the PEL stands exactly when the measurement asks for it, in the careful words where bounds straddle the limit.
 */
import { compareWithLimit, type Limit } from '#core/comparison.ts';
import type { Estimate } from '#core/estimate.ts';
import type { Course } from '#findings/duties/course/course.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import type { DoubtOnPaper } from '#findings/gear/doubtsOnPaper.ts';
import type { Verdict } from '#findings/standing.ts';
import { keptDoubts } from './gearOnPaper.ts';
import {
  type InTwoLanguages,
  type Occasion,
  occasionOf,
  type PaperLanguage,
  type PeopleById,
  type Printing,
} from './occasion.ts';

export interface NoticeInput extends Occasion, Printing {
  readonly measurement: Measurement;
  readonly siteName: string | null;
  /** Everyday names of the tasks, as shared/tasks holds them. */
  readonly tasks: readonly InTwoLanguages[];
  readonly people: PeopleById;
  /** Everyone it stands for, the measured one first. */
  readonly workerIds: readonly string[];
  readonly revision: string;
  /** Why this revision replaces the one before; null for the first. */
  readonly why: string | null;
  readonly receivedOn: string;
  readonly form: 'inWriting' | 'posted';
  readonly places: readonly string[];
  readonly shownAs: 'name' | 'identifier';
  readonly languages: readonly PaperLanguage[];
  /** Of the firm's own words; `es` null prints the English words and says so. */
  readonly correctiveAction: { readonly en: string; readonly es: string | null } | null;
  /** What was worn, in words; null = not noted. */
  readonly respirator: InTwoLanguages | null;
  /** null: what comes next is not known yet. */
  readonly next: Pick<Course, 'due' | 'dueOn'> | null;
  readonly questionsTo: string | null;
  /** Gear that it rests on and that is in doubt (doubtsOnMeasurements). */
  readonly gearDoubts: readonly DoubtOnPaper[];
  /** Who measured, where it was not this firm. */
  readonly measuredBy?: string | null;
}

/** All but the paper it is printed on. */
export type NoticeToldInput = Omit<NoticeInput, keyof Printing>;

export interface NoticeWorker {
  readonly workerId: string;
  /** As it is printed; null: neither a number nor job title and shift is known, and a line to write on stands there. */
  readonly shown: string | null;
  readonly employer: string | null;
  readonly measured: boolean;
}

export interface NoticeStanding {
  readonly limitUgPerM3: number;
  readonly verdict: Verdict | 'notKnown';
}

export interface NoticeValues extends Occasion {
  readonly noticeFormat: 'notice.v1';
  readonly measurementId: string;
  readonly from: Measurement['from'];
  readonly measuredBy: string | null;
  readonly revision: string;
  readonly why: string | null;
  readonly siteName: string | null;
  readonly workOn: string;
  readonly receivedOn: string;
  readonly tasks: readonly InTwoLanguages[];
  readonly sampleNumbers: readonly string[];
  readonly twa8UgPerM3: Estimate | null;
  readonly resultOwed: boolean;
  readonly actionLevel: NoticeStanding;
  readonly pel: NoticeStanding;
  readonly hoursWorked: number | null;
  readonly shiftAverageUgPerM3: Estimate | null;
  readonly allowableUgPerM3: number | null;
  readonly document: string;
  readonly paragraph: string;
  /** False: a rule of the state may govern that is not held complete. */
  readonly ruleHeld: boolean;
  readonly pelStatement: 'was' | 'mayHaveBeen' | null;
  readonly correctiveAction: { readonly en: string; readonly es: string | null } | null;
  readonly respirator: InTwoLanguages | null;
  readonly workers: readonly NoticeWorker[];
  readonly next: Pick<Course, 'due' | 'dueOn'> | null;
  readonly questionsTo: string | null;
  readonly gearDoubts: readonly DoubtOnPaper[];
  readonly form: 'inWriting' | 'posted';
  readonly places: readonly string[];
  readonly shownAs: 'name' | 'identifier';
  readonly languages: readonly PaperLanguage[];
}

/** The statement that (d)(8)(ii) asks for, and in which words. */
export const pelStatementOf = ({ atOrAbovePel }: Pick<Measurement, 'atOrAbovePel'>): NoticeValues['pelStatement'] =>
  atOrAbovePel === 'yes' ? 'was' : atOrAbovePel === 'unresolved' ? 'mayHaveBeen' : null;

function verdictOf(measurement: Measurement, which: 'actionLevel' | 'pel', limit: Limit): NoticeStanding {
  const limitUgPerM3 = limit.value;
  const known = measurement.finding?.standings.find((standing) => standing.which === which);
  if (known && known.limit.value === limit.value) return { limitUgPerM3, verdict: known.verdict };
  const estimate = measurement.twa8UgPerM3;
  if (!estimate) return { limitUgPerM3, verdict: 'notKnown' };
  const { standing, atOrAbove } = compareWithLimit(estimate, limit);
  const proved = which === 'pel' ? measurement.provesNotAbovePel : measurement.provesBelowActionLevel;
  if (standing === 'below') return { limitUgPerM3, verdict: proved ? 'below' : 'unresolved' };
  if (standing !== 'unresolved') return { limitUgPerM3, verdict: standing };
  if (atOrAbove === 'yes') return { limitUgPerM3, verdict: 'atOrAbove' };
  return { limitUgPerM3, verdict: estimate.kind === 'atLeast' ? 'atLeastBelow' : 'unresolved' };
}

function shownAs(id: string, { people, shownAs: as }: NoticeToldInput): string | null {
  const person = people.get(id);
  if (!person) return null;
  if (as === 'name') return person.name;
  if (person.identifier) return person.identifier;
  return person.jobClassification && person.shift ? `${person.jobClassification}, ${person.shift}` : null;
}

const exactOf = (estimate: Estimate | undefined): number | null => (estimate?.kind === 'exact' ? estimate.value : null);

export function noticeValues(input: NoticeToldInput): NoticeValues {
  const { measurement, people } = input;
  const { set } = measurement.limits;
  const { finding } = measurement;
  return {
    noticeFormat: 'notice.v1',
    ...occasionOf(input),
    measurementId: measurement.id,
    from: measurement.from,
    measuredBy: input.measuredBy ?? null,
    revision: input.revision,
    why: input.why,
    siteName: input.siteName,
    workOn: measurement.workOn,
    receivedOn: input.receivedOn,
    tasks: input.tasks.map(({ en, es }) => ({ en, es })),
    sampleNumbers: finding?.samples.map(({ sampleNumber }) => sampleNumber) ?? [],
    twa8UgPerM3: measurement.twa8UgPerM3,
    resultOwed: measurement.resultOwed,
    actionLevel: verdictOf(measurement, 'actionLevel', set.actionLevel),
    pel: verdictOf(measurement, 'pel', set.pel),
    hoursWorked: exactOf(finding?.hoursWorked?.estimate),
    shiftAverageUgPerM3: finding?.allowableAverage ? (finding.shiftAverage?.estimate ?? null) : null,
    allowableUgPerM3: exactOf(finding?.allowableAverage?.estimate),
    document: set.document,
    paragraph: set.duties?.notice.paragraph ?? '',
    ruleHeld: measurement.limits.heldComplete,
    pelStatement: pelStatementOf(measurement),
    correctiveAction: input.correctiveAction,
    respirator: input.respirator,
    workers: input.workerIds.map((workerId) => ({
      workerId,
      shown: shownAs(workerId, input),
      employer: people.get(workerId)?.employer ?? null,
      measured: workerId === measurement.workerId,
    })),
    next: input.next ? { due: input.next.due, dueOn: input.next.dueOn } : null,
    questionsTo: input.questionsTo,
    gearDoubts: keptDoubts(input.gearDoubts),
    form: input.form,
    places: [...input.places],
    shownAs: input.shownAs,
    languages: [...input.languages],
  };
}
