/** Planning a measurement: the work, whom, on which days, how; and what became of a plan. A plan proves nothing and ends no duty. */
import type { SlotFinding, ToDoWhy } from '#findings/season/plan.ts';
import type { FactBody } from '#records/fact.ts';
import { formatDay, formatList } from './quantity.ts';

type Missed = FactBody<'plannedDayMissed.v1'>['because'];

const count = (n: number, one: string, more: string): string => (n === 1 ? `1 ${one}` : `${n} ${more}`);

export const missedKinds = ['declined', 'rainedOff', 'otherWork', 'notAtWork', 'gear', 'other'] as const;
const missed: Readonly<Record<Missed, string>> = {
  declined: 'The worker declined',
  rainedOff: 'Rained off',
  otherWork: 'Other work that day',
  notAtWork: 'Not at work',
  gear: 'Pump, meter or cassette failed',
  other: 'Something else',
};

const whys: Readonly<Record<ToDoWhy, string>> = {
  declined: 'declined',
  rainedOff: 'rained off',
  otherWork: 'did other work that day',
  notAtWork: 'was not at work',
  gear: 'the gear failed',
  other: 'it did not come about',
  void: 'the sample is void',
  irregularDay: 'it was not a regular day',
  doubtful: 'the measurement is in doubt',
  otherTasks: 'other tasks were done, or may have been',
  passed: 'the day went by with no sample',
  ahead: 'the day is ahead',
  dayOpen: 'the day is still open',
};

const states: Readonly<Record<Exclude<SlotFinding['state'], 'toDo'>, string>> = {
  done: 'done',
  onTheWorker: 'on the worker',
  notSent: 'sampled, not sent yet',
  withTheLaboratory: 'with the laboratory',
};

export const en = {
  heading: 'Plan a measurement',
  looking: 'Looking through the book …',
  intro: 'A plan says whom to measure and when. It proves nothing and takes nothing off what is to do.',
  work: {
    heading: 'The work',
    change: 'Change the work',
    setting: 'Where is it done?',
    settings: { indoors: 'Indoors', outdoors: 'Outdoors' },
    tasks: 'What will they do?',
    tasksHint: 'All of it, as one day of it is done.',
    job: 'Job classification',
    addJob: 'Write down a job classification',
    jobName: 'Name of the job classification',
    jobNameHint: 'Such as: window restorer, steel painter. May stay empty.',
    site: 'At which site',
    anySite: 'Wherever this work is done next',
  },
  who: {
    heading: 'Whom',
    crew: 'Who does this work',
    crewHint: 'Everyone who does it, whether they are measured or not.',
    nobody: 'Tick or write down at least one worker.',
    nobodyKnown: 'Nobody is in the book yet. Write down who does this work.',
    add: 'Write down a worker',
    added: (at: number) => `New worker ${at}`,
    remove: 'Leave this worker out again',
    crewCount: 'How many do this work in all',
    crewCountHint: 'Also those who are not ticked or written down.',
    crewCountBad: 'Write how many workers there are, from 1 to 5,000.',
    crewCountFew: (named: number) => `${count(named, 'worker is', 'workers are')} named: there are at least so many.`,
    choice: 'Which of them to measure',
    choices: {
      all: 'All of them',
      random: 'Some, drawn at random',
      highest: 'The one who is expected to breathe most lead',
    },
    choiceHints: {
      all: 'For a small crew, the surest',
      random: 'For a larger crew, so that one of the most exposed is very likely among them',
      highest: 'With the reason in writing',
    },
    highest: 'Who is expected to breathe most',
    reason: 'Why this worker',
    reasonHint: 'Such as: works closest to the paint, longest, without dust collection',
    everyoneSmall: (crew: number) => `In a crew of ${crew} everyone is measured: a draw would leave out too much.`,
    drawn: (sample: number, crew: number, chance: string) =>
      `Of ${crew} workers ${sample} are measured: with a chance of ${chance} one of the most exposed tenth is among them.`,
    working: 'How the number comes about',
    chanceLabel: 'Chance that one of the most exposed tenth is among them',
    draw: 'Draw the names',
    drawAgain: 'The names are drawn. Draw them anew',
    drawMissing: 'Draw the names first.',
    drawNames: (missing: number) =>
      `${count(missing, 'worker has', 'workers have')} no name here yet. Everyone who may be drawn must be named first.`,
    chosen: (names: readonly string[]) => `To be measured: ${formatList(names)}.`,
    unnamed: (n: number) => `${count(n, 'more has', 'more have')} to be named before all of them are planned.`,
  },
  days: {
    heading: 'Days',
    each: 'How many days for each worker',
    eachHint: 'Two occasions at least seven days apart are what can end monitoring; one clean day is weak evidence.',
    eachBad: 'Write how many days, from 1 to 20.',
    day: (at: number) => `Day ${at}`,
    dayHint: 'May stay empty: the day is still open.',
    add: 'Another day',
    season: 'Season',
    seasonHint: 'Your own word for it, such as winter 2026. May stay empty.',
    tooMany: (n: number) => `That makes ${n} measurements. A plan holds 200 at most; make two of it.`,
  },
  how: {
    heading: 'How',
    method: 'Method of the laboratory',
    methodOpen: 'Not said yet',
    reportingLimit: 'Reporting limit of the laboratory',
    flow: 'Flow',
    cassettes: 'Cassettes for each worker and day',
    cassettesHint: 'One after the other. More of them can prove less.',
    cassettesBad: 'Write how many cassettes, from 1 to 12.',
    toProve: 'Will this sample prove anything?',
    remark: 'Remark',
  },
  save: 'Save the plan',
  gone: 'This plan is not in the book on this device.',
  backToSeason: 'What to measure next',
  page: {
    heading: (group: string) => group,
    over: (season: string | null) => (season === null ? 'Plan' : `Plan, ${season}`),
    summary: (done: number, under: number, toDo: number) =>
      `${count(done, 'measurement is', 'measurements are')} done, ${under} under way, ${toDo} still to do.`,
    proves:
      'A planned measurement is done once a valid one of this worker and this work is there. What the rule asks follows from measurements, never from this plan.',
    dropped: (why: string | null) => (why === null ? 'This plan was given up.' : `This plan was given up: ${why}`),
    places: 'Whom, and on which day',
    place: (name: string, day: string | null) =>
      day === null ? `${name}, day still open` : `${name}, ${formatDay(day)}`,
    state: ({ state, why, remark, measuredOn }: SlotFinding): string => {
      const on = measuredOn === null ? '' : `, measured on ${formatDay(measuredOn)}`;
      if (state !== 'toDo') return `${capital(states[state])}${on}`;
      const because = why === null ? '' : `: ${whys[why]}`;
      return `Still to do${because}${on}${remark === null ? '' : ` (${remark})`}`;
    },
    someone: 'somebody not in the book',
    particulars: {
      crew: 'How many do this work',
      choice: 'Whom',
      reason: 'Why this worker',
      site: 'Site',
      method: 'Method',
      reportingLimit: 'Reporting limit',
      flow: 'Flow',
      cassettes: 'Cassettes for each worker and day',
      samples: 'Samples in all, and still to do',
      blanks: 'Field blanks in all, and still to do',
      remark: 'Remark',
    },
    of: (all: number, toDo: number) => `${all}, ${toDo} still to do`,
    notSaid: 'not said',
    tomorrow: 'Who wears what tomorrow',
    measure: 'See the measurement',
    drop: 'Give up this plan',
    dropWhy: 'Why is it given up?',
    dropHint: 'What the rule asks stays to do.',
    dropDo: 'Give it up',
    dropMissing: 'Write why the plan is given up.',
    keep: 'Keep it',
  },
  slot: {
    heading: (name: string) => `Planned for ${name}`,
    what: 'What is there to say?',
    kinds: { move: 'Another day', missed: 'It did not come about' },
    missed,
    because: 'What came in between',
    remark: 'Remark',
    newDay: 'On which day instead',
    newDayHint: 'Leave it empty when the day is still open.',
    save: 'Save',
    stays: 'It stays to do until a valid measurement fills it.',
    taken: 'This worker is planned for that day already.',
    missing: 'Say which of the two.',
    gone: 'This measurement is not in the plan any more.',
    noDay: 'This measurement has no day yet. Give it one first.',
  },
};

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export type PlanScreenWords = typeof en;
