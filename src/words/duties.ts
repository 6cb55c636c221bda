/** A duty in sentences: what to do, because of which finding, what fulfils it, whose decision it is, where it lies. Read by the office. */
import type { Duty } from '#findings/duties/list/duty.ts';
import { measuring } from './dutyKindsMeasuring.ts';
import { people } from './dutyKindsPeople.ts';
import { protecting } from './dutyKindsProtecting.ts';
import { type DutyNames, type KindInWords, printedLevel, type Said, saidOf } from './dutySaid.ts';
import { formatDay, formatInWorking } from './quantity.ts';

export type { DutyNames } from './dutySaid.ts';

const kinds: Readonly<Record<string, KindInWords>> = { ...measuring, ...protecting, ...people };

/** Kinds that have their sentences. */
export const kindsInWords: readonly string[] = Object.keys(kinds);

const kindOf = ({ kind }: Duty) => {
  const words = kinds[kind];
  if (!words) throw new Error(`no words for ${kind}`);
  return words;
};

/** 'Tell Ana Sash the result of 24 November 2026': goes on with by when. */
export const whatToDo = (duty: Duty, names: DutyNames): string => kindOf(duty).what(saidOf(duty, names));

export const whatFulfils = (duty: Duty): string => kindOf(duty).fulfils;

/** What is asked about where it lies; null: what fulfils it lies in this book. */
export const whereItLies = (duty: Duty): string | null => kindOf(duty).lies;

const decidedBy: Readonly<Record<Duty['decidedBy'], string>> = {
  firm: 'The firm decides how, and sees that it is done.',
  competentPerson: 'The competent person decides.',
  physician: 'The physician decides.',
  worker: 'The worker decides.',
  laboratory: 'The laboratory decides.',
};

export const whoseDecision = (duty: Duty): string => kindOf(duty).whose ?? decidedBy[duty.decidedBy];

/** null: the firm's, as of most; said once for the whole list. */
export const anothersDecision = (duty: Duty): string | null =>
  kindOf(duty).whose === undefined && duty.decidedBy === 'firm' ? null : whoseDecision(duty);

const number = (value: string | number | undefined): number => (typeof value === 'number' ? value : Number.NaN);

/** 'an 8-hour average of 61.4 µg/m³'; '' where none is known. */
function figure(said: Said): string {
  const { twa8UgPerM3, upToUgPerM3, atLeastUgPerM3 } = said.params;
  if (twa8UgPerM3 !== undefined) return `an 8-hour average of ${printedLevel(number(twa8UgPerM3), said.params)}`;
  if (upToUgPerM3 !== undefined)
    return `an 8-hour average of up to ${printedLevel(number(upToUgPerM3), said.params, 'up')}`;
  if (atLeastUgPerM3 === undefined) return '';
  return `an 8-hour average of at least ${printedLevel(number(atLeastUgPerM3), said.params, 'down')}`;
}

/** 'above the permissible exposure limit', or by the firm's own one. */
function beyond({ params }: Said, rule: string, own: string): string {
  if (params.ownLimitUgPerM3 === undefined) return rule;
  return `${own}, ${formatInWorking(number(params.ownLimitUgPerM3), 'µg/m³')}, by our own limit`;
}

const withFigure = (said: Said, rest: string): string => {
  const [day, of] = [said.day('workOn'), figure(said)];
  if (of === '') return `Because of ${rest}.`;
  return day === '' ? `Because of ${of}, ${rest}.` : `Because of ${of} on ${day}, ${rest}.`;
};

const abovePel = (said: Said): string =>
  withFigure(said, beyond(said, 'above the permissible exposure limit', 'above our own limit'));
const presumedPel = ({ tasks }: Said): string =>
  `Because ${tasks} counts as above the permissible exposure limit until a measurement shows less.`;

const reached = (said: Said): string =>
  withFigure(said, beyond(said, 'at or above the action level', 'at or above our own action level'));
const presumedReached = (said: Said): string =>
  `Because the work of ${said.day('workOn')} counts as at or above the action level until a measurement shows less.`;

const result = (said: Said): string => {
  const of = figure(said);
  const came = `Because a result came on ${said.day('receivedOn')}`;
  return of === '' ? `${came}.` : `${came}: ${of}.`;
};

const statement = (said: Said): string =>
  said.params.atOrAbovePel === 'yes'
    ? withFigure(said, 'at or above the permissible exposure limit')
    : withFigure(said, 'which may have been at or above the permissible exposure limit');

const days = ({ params, day }: Said): string => {
  const presumed = number(params.presumedCount);
  const counted = presumed > 0 ? `, ${presumed} of them presumed and not measured` : '';
  return `Because of ${params.daysCount} days at or above the action level from ${day('fromOn')} to ${day('toOn')}${counted}: more than ${params.moreThanDays}.`;
};

/** The last result is not what put the worker on these dates, and alone does not take them away. null: it is what did. */
function goesOn(said: Said, rule: string, band: string): string | null {
  const [day, of, last] = [said.day('workOn'), figure(said), said.params.band];
  if (last === undefined || last === band || of === '' || day === '' || said.params.ownLimitUgPerM3 !== undefined)
    return null;
  return `Because of an earlier result ${rule}; the last one, ${of} on ${day}, does not end it alone.`;
}

const again = (said: Said): string => `Because it was done last on ${said.day('lastDoneOn')}.`;

type Because = (said: Said, isPresumed: boolean) => string;
const byLevel: Because = (said, isPresumed) => (isPresumed ? presumedPel(said) : abovePel(said));
const byDays: Because = (said, isPresumed) => (isPresumed ? presumedReached(said) : reached(said));

/** Kinds that are not there because of a level above the PEL. */
const because: Readonly<Record<string, Because>> = {
  initialDetermination: ({ tasks, params }, isPresumed) =>
    params.awaited === 'yes'
      ? 'Because a sample was taken and its result is not here yet.'
      : isPresumed
        ? `Because ${tasks} counts as above the permissible exposure limit until a measurement shows less.`
        : `Because nothing is measured of ${tasks} here.`,
  measureEach: () =>
    'Because somebody at these tasks may reach the action level, and no measurement stands for these workers.',
  measureAgain: (said) => {
    const of = figure(said);
    return of === '' ? 'Because what was measured is in doubt.' : `Because what was measured is in doubt: ${of}.`;
  },
  sixMonthly: (said) =>
    goesOn(said, 'at or above the action level', 'actionLevelToPel') ??
    withFigure(
      said,
      beyond(said, 'from the action level to the permissible exposure limit', 'at or above our own action level'),
    ),
  quarterly: (said) => goesOn(said, 'above the permissible exposure limit', 'abovePel') ?? abovePel(said),
  additionalMonitoring: ({ day }) =>
    `Because of what was said to be new, or not known, on ${day('changedOn')}: more people may reach the action level, or go above the permissible limit.`,
  observation: () => 'Because something is measured, or is to be measured.',
  notice: result,
  correctiveAction: statement,
  writeDetermination: () =>
    'Because everything measured at these tasks is below the action level, and nothing stands against writing it down.',
  determinationDiffers: () => 'Because it was written on other entries than there are now.',
  cleanClothingDaily: (said, isPresumed) =>
    isPresumed
      ? `Because what ${said.tasks} counts as reaches above the level of daily cleaning.`
      : withFigure(said, 'above the level of daily cleaning'),
  housekeeping: ({ tasks }) => `Because of work with lead: ${tasks}.`,
  handWashing: ({ tasks }) => `Because of work with lead: ${tasks}.`,
  bloodTests: byDays,
  training: byDays,
  bloodResultsTold: ({ day }) => `Because blood was tested on ${day('testedOn')}.`,
  surveillance: days,
  physicianTold: days,
  trainingYearly: again,
  programmeRevision: again,
  recordsToldYearly: again,
  keepRecords: ({ day, params }) =>
    `Because exposure records are kept for ${params.keepYears} years; the newest here is of ${day('newestOn')}.`,
  recordsTold: ({ params, day }) =>
    params.hired === 'said'
      ? `Because work here began on ${day('startsOn')}.`
      : `Because the first day of work written down is ${day('startsOn')}; nobody said when work here began.`,
  recordsAccess: ({ day }) => `Because records were asked for on ${day('askedOn')}.`,
};

/** Because of which finding. */
export function becauseOfWhat(duty: Duty, names: DutyNames): string {
  const said = saidOf(duty, names);
  return (because[duty.kind] ?? byLevel)(said, duty.presumed);
}

/** Asked on a presumption by our own reading: told, never cited. */
export const presumedNote = (duty: Duty): string | null =>
  duty.presumed && !duty.paragraph.startsWith('(d)(2)')
    ? 'Asked while exposure is presumed, on the careful side.'
    : null;

export const en = {
  heading: 'To do',
  none: 'Nothing follows from these days that is still to do.',
  presumed: 'Presumed, not measured.',
  byWhen: {
    by: (day: string) => `by ${day}`,
    asSoonAsPossible: (day: string) =>
      day === '' ? 'as soon as possible' : `as soon as possible, by ${day} at the latest`,
    beforeWorkStarts: (day: string) => (day === '' ? 'before the work starts' : `before the work starts, ${day}`),
    beforeOrOnFirstDayAgain: () => 'before or on the first day this task is done again',
    whileItLasts: () => 'for as long as it lasts',
    atTheNextShift: () => 'at the next shift',
  } as const satisfies Record<Duty['when'], (day: string) => string>,
  overdueSince: (day: string) => `was due on ${day}`,
  laterReading: (day: string) => `A later reading of the last day, public holidays not counted: ${day}.`,
  lastDone: (day: string) => `Done last on ${formatDay(day)}.`,
  cited: (document: string, paragraph: string) => `${document} ${paragraph}`,
} as const;

/** By when, in words. */
export function byWhen({ when, dueOn, overdue, done }: Duty): string {
  if (overdue && !done && dueOn !== null) return en.overdueSince(formatDay(dueOn));
  return en.byWhen[when](dueOn === null ? '' : formatDay(dueOn));
}
