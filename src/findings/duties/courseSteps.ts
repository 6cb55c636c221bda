/**
 * The course of re-monitoring of one worker in one task group, 29 CFR 1926.62(d)(6) and (7): from its measured occasions and the changes
 * noted, in the order of days, to the schedule that stands and the next date. Doubt lets nothing step down, moves no date back and
 * never keeps a schedule from rising.
 */
import { addDays, addMonths, daysBetween } from '#core/calendar.ts';
import type { Course, CourseStep, Schedule } from './course.ts';
import type { ChangeNoted, CourseInput, Occasion } from './courseInput.ts';
import type { CourseRule, Repeated } from './courseRule.ts';
import type { Band } from './measurement.ts';

interface Low {
  readonly on: string;
  readonly belowActionLevel: boolean;
}

interface State {
  schedule: Schedule;
  steps: CourseStep[];
  /** Low occasions in a row, each far enough from the one before. */
  chain: readonly Low[];
  dueOn: string | null;
  lastMeasurementId: string | null;
  band: Band | null;
  last: Occasion | null;
  known: boolean;
  /** An occasion against which nothing stands has decided; one of the worker's own, or in writing. */
  decided: boolean;
  decidedByOwn: boolean;
  changeOwed: Course['changeOwed'];
}

const isRepeated = (schedule: Schedule): schedule is Repeated => schedule === 'sixMonthly' || schedule === 'quarterly';
const isHigh = ({ band }: Occasion): boolean => band === 'actionLevelToPel' || band === 'abovePel';

type Stepped = Pick<CourseStep, 'to' | 'why' | 'paragraph'>;

function step(
  state: State,
  { on, measurementIds, because }: Pick<Occasion, 'on' | 'measurementIds' | 'because'>,
  to: Stepped,
): void {
  state.steps.push({ on, measurementIds, because, ...to });
  state.schedule = to.to;
}

/** Sound, it sets the next date. In doubt it may bring the date forward and not put it off. */
function setDate(state: State, occasion: Occasion, before: Schedule, rule: CourseRule): void {
  if (!isRepeated(state.schedule)) {
    state.dueOn = null;
    if (occasion.sound) state.lastMeasurementId = occasion.measurementIds[0] ?? null;
    return;
  }
  const nextOn = addMonths(occasion.on, rule.monthsBySchedule[state.schedule]);
  const mayPutOff = (occasion.sound && occasion.relation !== 'roster') || !isRepeated(before) || state.dueOn === null;
  if (!mayPutOff && state.dueOn !== null && state.dueOn <= nextOn) return;
  state.dueOn = nextOn;
  state.lastMeasurementId = occasion.measurementIds[0] ?? null;
}

/** At or above the action level: the schedule begins, rises or stays. */
function high(state: State, occasion: Occasion, rule: CourseRule): void {
  const before = state.schedule;
  const to: Schedule = occasion.band === 'abovePel' || before === 'quarterly' ? 'quarterly' : 'sixMonthly';
  const why = before === 'undetermined' ? 'begins' : 'rises';
  if (to !== before) step(state, occasion, { to, why, paragraph: rule.paragraphBySchedule[to] });
  setDate(state, occasion, before, rule);
}

/** Adds to the low occasions in a row; one that comes too soon begins the row anew. */
function chained(chain: readonly Low[], low: Low, daysApart: number): readonly Low[] {
  const last = chain.at(-1);
  return last && daysBetween(last.on, low.on) >= daysApart ? [...chain, low] : [low];
}

const belowAtEnd = (chain: readonly Low[]): readonly Low[] =>
  chain.slice(chain.findLastIndex(({ belowActionLevel }) => !belowActionLevel) + 1);

/** Proven low while a schedule runs: the row grows, and when it is long enough the schedule steps down or stops. */
function low(state: State, occasion: Occasion, rule: CourseRule): void {
  const { schedule } = state;
  const one: Low = { on: occasion.on, belowActionLevel: occasion.provesBelowActionLevel };
  state.chain = chained(state.chain, one, rule.daysApart);
  if (belowAtEnd(state.chain).length >= rule.consecutive) {
    step(state, occasion, { to: 'none', why: 'stops', paragraph: rule.stopParagraph });
    state.chain = [];
  } else if (schedule === 'quarterly' && state.chain.length >= rule.consecutive) {
    step(state, occasion, { to: 'sixMonthly', why: 'stepsDown', paragraph: rule.stepDownParagraph });
    state.chain = belowAtEnd(state.chain);
  }
  setDate(state, occasion, schedule, rule);
}

const stepsTowardsLess = (occasion: Occasion, schedule: Schedule): boolean =>
  occasion.relation !== 'roster' &&
  (occasion.provesBelowActionLevel || (schedule === 'quarterly' && occasion.provesNotAbovePel));

function begin(state: State, occasion: Occasion, rule: CourseRule): void {
  const before = state.schedule;
  if (before === 'undetermined')
    step(state, occasion, { to: 'none', why: 'begins', paragraph: rule.paragraphBySchedule.none });
  setDate(state, occasion, before, rule);
}

function takeOccasion(state: State, occasion: Occasion, rule: CourseRule): void {
  const { relation, resultOwed } = occasion;
  const raises = isHigh(occasion);
  if (relation === 'roster' && (!raises || state.decidedByOwn)) return;
  const lowers = stepsTowardsLess(occasion, state.schedule);
  if (resultOwed && relation !== 'roster')
    step(state, occasion, { to: state.schedule, why: 'owed', paragraph: rule.paragraphBySchedule[state.schedule] });
  state.last = occasion;
  state.band = occasion.band;
  if (lowers && isRepeated(state.schedule)) low(state, occasion, rule);
  else {
    state.chain = [];
    if (raises) high(state, occasion, rule);
    else if (lowers) begin(state, occasion, rule);
  }
  if (!raises && !lowers) return;
  state.known = true;
  state.decided ||= occasion.sound;
  state.decidedByOwn ||= occasion.sound && relation !== 'roster';
  state.changeOwed = null;
}

/** What was measured before speaks for other work: no row goes on across it, and where nothing was owed the course starts again. */
function takeChange(state: State, change: ChangeNoted, rule: CourseRule): void {
  if (!state.known) return;
  state.chain = [];
  state.changeOwed ??= change;
  if (state.schedule !== 'none') return;
  state.decided = false;
  state.decidedByOwn = false;
  step(
    state,
    { ...change, measurementIds: [] },
    { to: 'undetermined', why: 'restarts', paragraph: rule.changeParagraph },
  );
}

function runOf({ schedule, chain }: State, rule: CourseRule): Course['run'] {
  if (!isRepeated(schedule)) return null;
  const last = chain.at(-1);
  const counted = schedule === 'sixMonthly' ? belowAtEnd(chain) : chain;
  return {
    towards: schedule === 'sixMonthly' || last?.belowActionLevel ? 'none' : 'sixMonthly',
    count: Math.min(counted.length, rule.consecutive - 1),
    of: rule.consecutive,
    nextFromOn: last ? addDays(last.on, rule.daysApart) : null,
  };
}

type Due = Pick<Course, 'due' | 'dueOn' | 'overdue'>;

/** Only doubt has decided so far: measuring is owed now. The day passed and the tasks were not done since: before or on the first day that they are done again. */
function dueOf({ schedule, dueOn, changeOwed, decided }: State, lastDoneOn: string | null, today: string): Due {
  if (schedule === 'undetermined') return { due: 'now', dueOn: null, overdue: false };
  if (!isRepeated(schedule) || dueOn === null) return { due: 'none', dueOn: null, overdue: false };
  const overdue = today > dueOn && lastDoneOn !== null && lastDoneOn >= dueOn;
  if (changeOwed || !decided) return { due: 'now', dueOn, overdue };
  if (today <= dueOn || overdue) return { due: 'byDate', dueOn, overdue };
  return { due: 'beforeNextTime', dueOn: null, overdue: false };
}

const nothingDue = { schedule: 'undetermined', steps: [], lastMeasurementId: null, band: null, dueOn: null } as const;

export function courseOf({ workerId, groupKey, occasions, changes, rule, lastDoneOn, today }: CourseInput): Course {
  const whose = { workerId, groupKey };
  if (!rule) return { ...whose, ...nothingDue, due: 'none', overdue: false, run: null, changeOwed: null };
  const state: State = {
    ...nothingDue,
    steps: [],
    chain: [],
    last: null,
    known: false,
    decided: false,
    decidedByOwn: false,
    changeOwed: null,
  };
  const left = [...changes].sort((a, b) => (a.on < b.on ? -1 : 1));
  for (const occasion of occasions) {
    while (left[0] && left[0].on <= occasion.on) takeChange(state, left.shift() as ChangeNoted, rule);
    takeOccasion(state, occasion, rule);
  }
  for (const change of left) takeChange(state, change, rule);
  const { schedule, steps, lastMeasurementId, band, last, changeOwed } = state;
  return {
    ...whose,
    schedule,
    steps,
    lastMeasurementId,
    band,
    ...dueOf(state, lastDoneOn, today),
    measureAgain: last !== null && !last.sound && !last.resultOwed,
    run: runOf(state, rule),
    changeOwed,
  };
}
