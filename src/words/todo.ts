/** The list of what the rule asks next: by when, under which paragraph, because of what, and how it is noted as done. Read by the office. */
import type { Duty } from '#findings/duties/list/duty.ts';
import { formatDay, formatList } from './quantity.ts';

/** 'Friday 4 December'; the year stands only where it is another one than today's. */
export function dayInList(day: string, today: string): string {
  const text = formatDay(day, 'en', 'weekday');
  return day.slice(0, 4) === today.slice(0, 4) ? text.slice(0, -5) : text;
}

/** Over the lines of one day. */
export const dayHeading = (day: string, today: string): string =>
  day === today ? `${dayInList(day, today)}, today` : dayInList(day, today);

type When = Pick<Duty, 'when' | 'dueOn'>;

const whenWords: Readonly<Record<Duty['when'], (day: string | null) => string>> = {
  by: (day) => (day === null ? 'no day is set' : `by ${day}`),
  asSoonAsPossible: (day) => (day === null ? 'as soon as possible' : `as soon as possible, by ${day} at the latest`),
  beforeWorkStarts: (day) => (day === null ? 'before the work starts' : `before the work starts, by ${day}`),
  beforeOrOnFirstDayAgain: () => 'before or on the first day this task is done again',
  whileItLasts: () => 'for as long as it lasts',
  atTheNextShift: (day) => (day === null ? 'at the next shift' : `at the next shift, by ${day}`),
};

/** By when, as the end of a sentence. */
export const whenText = ({ when, dueOn }: When, today: string): string =>
  whenWords[when](dueOn === null ? null : dayInList(dueOn, today));

const people = (names: readonly string[]): string =>
  names.length > 4 ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more` : formatList(names);

export const en = {
  heading: 'To do',
  over: 'What the rule asks next',
  looking: 'Looking through the book. This may take some seconds the first time.',
  empty: 'Nothing is to do. The list fills itself from results, from who did what, and from what is presumed.',
  emptyFiltered: 'Nothing is to do for this choice.',
  intro:
    'Made from this book and from the text of the rule as it was read. The current text, state plans and local codes go before it. Where nothing else is said, the firm decides how, and sees that it is done.',
  groups: {
    overdue: 'The day has passed',
    dated: 'By date',
    soon: 'As soon as possible',
    again: 'Before the task is done again',
    lasting: 'For as long as the work lasts',
    lateDone: 'Done late',
  },
  /** Folded under one line for each site: 'Footbridge: 6'. */
  atOne: (site: string, count: number) => `${site}: ${count}`,
  noSite: 'No site of its own',
  done: (count: number) => (count === 1 ? 'One is done' : `${count} are done`),
  filters: {
    heading: 'Show only one person or one site',
    person: 'One person',
    everybody: 'Everybody',
    site: 'One site',
    everySite: 'Every site',
  },
  /** 'Ana Sash: tell her the result of 24 November, by Friday 4 December' */
  line: (what: string, when: string) => `${what}, ${when}`,
  overdueSince: (day: string) => `was due ${day}`,
  forWhom: (names: readonly string[]) => `For ${people(names)}`,
  atSite: (site: string) => `At ${site}`,
  under: (paragraph: string, title: string) => `${title}, ${paragraph}`,
  notCited: 'Our own reading; no paragraph is cited',
  sentence: (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`,
  presumed: 'Presumed, not measured: it falls away when a measurement proves less.',
  laterReading: (day: string) =>
    `If federal holidays are not counted as working days, the last day would be ${day}. Our own note, not a citation.`,
  because: {
    day: (name: string, day: string) => `The day of ${name}, ${day}`,
    reported: (day: string) => `The measurement reported to us, ${day}`,
    group: 'What stands for these tasks',
    person: (name: string) => `What ${name} did`,
    shift: (day: string) => `The shift of ${day}`,
  },
  fulfil: {
    notice: 'Make and give the notice',
    measurement: 'Open the shift on which to measure',
    determination: 'Write the determination',
    note: 'Note it done',
    respirator: 'See which respirator, and note it',
    sign: 'Print the sign, and note it',
    roster: 'Write down who did what',
    jobStart: 'Answer what is new at this job',
  } as const satisfies Record<Duty['fulfilledBy'], string>,
  noteIt: 'Note it done',
  open: 'See it',
  late: 'Late, and it stays visible. What mends it: do it now, and note when it was done and why it came late.',
  lateAgain:
    'It was owed while the work went on, and stays visible as late. What mends it: do it before the work goes on.',
  lateDone: 'It was done after its last day, and stays visible as late.',
  lateNotice:
    'Late. Give the notice now all the same, and note beside it why it came late: a late notice still tells, a missing one does not.',
  doneOn: (day: string, name: string | null) => `Done ${day}${name === null ? '' : ` by ${name}`}`,
  whereItLies: (place: string) => `Lies: ${place}`,
  noPlace: 'Where it lies is not written down',
  stateNotHeld: {
    heading: 'No list for these sites',
    text: (site: string, state: string) =>
      `${site}: ${state} runs its own plan, and its own rule is not held complete here. What it asks is for the state to say; figures are shown, and no list is made from the federal rule.`,
    unknown: (site: string) =>
      `${site}: the state is not known here, so nobody can say whose rule governs. Put the site right.`,
    before: (site: string) => `${site}: for its days the text of the rule is not held here.`,
  },
  calendar: {
    heading: 'In your own calendar',
    text: 'Every day of this list as entries for a calendar. A later file moves them and doubles none.',
    names: 'Workers in it',
    shownAs: { none: 'Not named', identifiers: "By the firm's own number", names: 'By name' },
    action: 'Calendar file',
    making: 'Making the calendar file',
    fileName: (day: string) => `to-do-${day}.ics`,
  },
  toToday: 'Go to Today',
  next: 'Do the first one',
  more: {
    heading: 'Also',
    inspector: 'Somebody asks at the door: one site at a glance',
    request: 'Somebody asked to see records',
    papers: 'Signs, labels, blank forms',
    people: 'One worker: dates, days and notices',
  },
  one: {
    gone: 'This is not on the list now. It was done, or what it followed from has changed.',
    goneHeading: 'Not on the list',
    back: 'To the list',
    by: 'By when',
    paragraph: 'Under',
    decides: 'Whose decision',
    fulfils: 'What fulfils it',
    whom: 'For whom',
    where: 'Where',
    fallsByItself: 'It leaves the list by itself once that is done in this book. Nothing is ticked off here.',
    whatDone: 'Note it done',
    doneOn: 'Done on',
    who: 'Who did it',
    nobody: 'Nobody in this book',
    place: 'Where it lies',
    placeHint: 'The folder, the drawer, the person who has it. Nothing medical: no result, no name of an illness.',
    placeHintPlain: 'The folder, the drawer, the person who has it. May stay blank.',
    medical:
      'Only that it was offered or done is kept here. Medical values belong to the physician and never into this book.',
    medicalFound:
      'This looks like a medical value. Leave it out: this book keeps only that it was done, and where the paper lies.',
    remark: 'Remark, if any',
    lateRemark: 'Why it came late',
    save: 'Note it done',
    saved: 'Noted.',
    reopen: 'It was not done after all',
    reopenHeading: 'Open it again?',
    reopenText: 'What was noted is kept, struck through, with the reason.',
    reopenWhy: 'Why is it opened again?',
    reopenSave: 'Open it again',
    story: 'Story',
  },
  quiet: {
    /** Today's line: 'To do: 3, the first by Friday 4 December: tell Ana Sash her result'. */
    line: (count: number, what: string, when: string) =>
      count === 1 ? `To do: one thing, ${when}: ${what}` : `To do: ${count}, the first ${when}: ${what}`,
    overdue: (count: number, what: string, day: string) =>
      count === 1
        ? `To do: one thing, due since ${day}: ${what}`
        : `To do: ${count}, the first due since ${day}: ${what}`,
    nothing: 'To do: nothing now',
    action: 'What is to do, for whom and by when',
  },
  request: {
    heading: 'Somebody asked to see records',
    intro:
      'From the day of asking, the records are to be shown within 15 working days; if that cannot be, tell whoever asked within those days why, and when. It goes on the list by itself.',
    askedOn: 'Asked on',
    by: 'Who asked',
    as: 'Asked as',
    asChoices: {
      worker: 'A worker here',
      formerWorker: 'Somebody who worked here before',
      representative: 'A representative, with written authorization',
      agency: 'An agency',
      other: 'Somebody else',
    },
    person: 'Whose records',
    noPerson: 'Of no single person',
    remark: 'Remark, if any',
    save: 'Write it down',
    listed: 'Asked so far',
    line: (who: string, day: string) => `${who} asked ${day}`,
    none: 'Nobody asked so far.',
  },
};
