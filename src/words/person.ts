/** One worker: dates, days, notices, records, respirator. Read by the office, and by the worker beside it. */
import type { CourseStep, Schedule } from '#findings/duties/course/course.ts';
import { formatDay } from './quantity.ts';

const timesOver = (count: number, one: string, many: string): string => (count === 1 ? one : `${count} ${many}`);

export const en = {
  heading: 'Workers',
  over: 'Dates, days, notices and records of each one',
  looking: 'Looking through the book. This may take some seconds the first time.',
  none: 'Nobody is in the book yet. People are written down where they are first needed, or under People, places and gear.',
  gone: { heading: 'Not in this book', text: 'This person is not in the book on this device.', action: 'To the list' },
  ofEmployer: (employer: string) => `of ${employer}`,
  employed: (from: string | null, to: string | null) =>
    `${from === null ? 'here since a day not written down' : `here from ${formatDay(from)}`}${to === null ? '' : ` to ${formatDay(to)}`}`,
  toDo: (count: number) => (count === 0 ? 'Nothing is to do for this worker' : `To do: ${count}`),
  toDoDetail: 'The list, for this worker only',
  courses: {
    heading: 'Measured again',
    none: 'Nothing is known yet that would set a date.',
    group: (tasks: string, job: string | null, setting: 'indoors' | 'outdoors') =>
      `${tasks}${job === null ? '' : `, ${job}`}, ${setting}`,
    schedule: {
      undetermined: 'not determined yet; what is presumed stands',
      none: 'no date: the work as it is asks for none',
      sixMonthly: 'at least every six months',
      quarterly: 'at least every three months',
    } as const satisfies Record<Schedule, string>,
    noneInDoubt: 'no date so far, but the last measurement is in doubt: measure again now',
    due: {
      none: '',
      byDate: (day: string) => `next by ${day}`,
      overdue: (day: string) => `was due ${day}`,
      beforeNextTime: 'next before or on the first day this task is done again',
      now: (day: string | null) => (day === null ? 'due now' : `due now, in any case by ${day}`),
    },
    run: (count: number, of: number, towards: 'none' | 'sixMonthly') =>
      towards === 'none'
        ? `${count} of ${of} low results in a row; with ${of} the measuring stops`
        : `${count} of ${of} results in a row not above the PEL; with ${of} it goes to every six months`,
    runFrom: (day: string) => `another one counts from ${day} on`,
    change: (day: string) => `Something new was noted ${day}: additional measuring is owed`,
    steps: 'How it came to this',
    why: {
      begins: 'begins',
      stepsDown: 'steps down',
      stops: 'stops',
      rises: 'goes up',
      restarts: 'begins again after a change',
      owed: 'a result is awaited',
    } as const satisfies Record<CourseStep['why'], string>,
    step: (day: string, why: string, to: string) => `${day}: ${why}; ${to}`,
  },
  days: {
    heading: 'Days at or above the action level',
    none: 'No day of work is written down for the last twelve months.',
    running: (count: number, from: string, to: string) =>
      `${timesOver(count, 'One day', 'days')} in the twelve months from ${from} to ${to}`,
    presumed: (count: number) => `${timesOver(count, 'one of them', 'of them')} presumed, not measured`,
    notKnown: (count: number) => `${timesOver(count, 'one more day', 'more days')} of which it is not known`,
    most: (count: number, from: string, to: string) =>
      `Most in any twelve months so far: ${count}, from ${from} to ${to}`,
    more: 'More than thirty: what follows stands on the list.',
    by: {
      measured: 'measured',
      represented: 'by a measurement that stands for it',
      presumed: 'presumed',
      notKnown: 'not known',
    },
    atOrAbove: { yes: 'at or above', no: 'below', notKnown: 'not known' },
    show: (count: number) => (count === 1 ? 'Show the day' : `Show all ${count} days`),
    line: (day: string, standing: string, by: string) => `${day}: ${standing}, ${by}`,
  },
  notices: {
    heading: 'Notices of results',
    none: 'No result stands for this worker yet.',
    carriedBy: (name: string) => `Measured on ${name}`,
    told: (day: string) => `Result of ${day}: told`,
    toldLate: (day: string) => `Result of ${day}: told, after the last day`,
    open: (day: string, due: string) => `Result of ${day}: not told yet, by ${due}`,
    overdue: (day: string, due: string) => `Result of ${day}: not told, was due ${due}`,
  },
  records: {
    heading: 'Exposure records',
    none: 'No day of this worker was measured yet.',
    line: (day: string) => formatDay(day, 'en', 'weekday'),
    asPdf: 'exposure record as PDF',
    issued: (count: number) => `handed out ${timesOver(count, 'once', 'times')}`,
  },
  respirator: {
    heading: 'Respirator',
    none: 'No task of this worker is known yet.',
    least: (apf: string) => `assigned protection factor at least ${apf}`,
    from: {
      result: 'by the result',
      presumed: 'by what is presumed until a measurement shows less',
      notNeededByResult: 'By the result none is asked for. Whoever wants one gets one.',
    },
    byResultOf: (day: string) => `by the result of ${formatDay(day)}`,
    beyond:
      'The air may be immediately dangerous, or no factor of the table reaches. Nobody enters before the competent person has decided.',
    unbounded: 'No upper bound is known: the factor stands on what is presumed.',
    noFactor: (apf: string) =>
      `The rule gives no upper bound, so no factor is named. Below ${apf} is known to be too little.`,
    choices: (least: string) => `Least: ${least}`,
    byOwnLimit: 'by our own limit',
    conditions:
      'It holds only with a full programme: fit test, medical clearance, training. HEPA-class filters (N100, R100, P100), never N95. It permits no practice that is restricted otherwise.',
  },
  record: {
    heading: 'Exposure record',
    over: (worker: string, day: string) => `${worker}, ${formatDay(day, 'en', 'weekday')}`,
    gone: 'This day is not in the book on this device.',
    intro:
      'The worker, whoever worked here before, and whoever they name in writing may have it; the first copy costs nothing. It carries every figure with its working, and what was struck.',
    to: 'For whom is it',
    toHint: 'The name of whoever gets it',
    shownAs: 'Workers on the record',
    name: 'By name',
    identifier: "By the firm's own number",
    noIdentifier: 'This worker has no number of the firm. Add one under People, or show names.',
    why: 'What changed since the last one, and why?',
    whyMissing: 'Say what changed since the last one, and why',
    make: 'Make the exposure record',
    makeRevision: (revision: string) => `Make record ${revision}`,
    making: 'Making the record',
    failed:
      'The record could not be made on this device. Nothing was written down. Load the page again, then try again.',
    madeHeading: 'Handed out so far',
    made: (revision: string, to: string, when: string) => `Record ${revision} for ${to}, made ${when}`,
    handOut: 'Print or share it',
    fileName: (day: string, revision: string) => `exposure-record-${day}-${revision}.pdf`,
    day: 'The day and its workings',
  },
};
