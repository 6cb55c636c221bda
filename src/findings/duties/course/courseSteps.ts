/**
 * The course of re-monitoring of one worker in one task group, 29 CFR 1926.62(d)(6) and (7): from its measured occasions and the changes
 * noted, in the order of days, to the schedule that stands and the next date. Doubt lets nothing step down, moves no date back and
 * never keeps a schedule from rising.
 */
import { addMonths } from '#core/calendar.ts';
import type { Course, CourseStep, Schedule } from './course.ts';
import { belowAtEnd, chained, type Low } from './courseChain.ts';
import { dueOf, inDoubt, isRepeated, runOf, type State } from './courseDue.ts';
import type { ChangeNoted, CourseInput, Occasion } from './courseInput.ts';
import type { CourseRule } from './courseRule.ts';

const isHigh = ({ band }: Occasion): boolean => band === 'actionLevelToPel' || band === 'abovePel';

function step(
  state: State,
  { on, measurementIds, because }: Pick<Occasion, 'on' | 'measurementIds' | 'because'>,
  to: Pick<CourseStep, 'to' | 'why' | 'paragraph'>,
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

/** Proven low while a schedule runs: the row grows, and when it is long enough the schedule steps down or stops. */
function low(state: State, occasion: Occasion, rule: CourseRule): void {
  const { schedule } = state;
  const one: Low = { on: occasion.on, belowActionLevel: occasion.provesBelowActionLevel };
  state.chain = chained(state.chain, one, rule.daysApart);
  if (belowAtEnd(state.chain).length >= rule.consecutive) {
    step(state, occasion, { to: 'none', why: 'stops', paragraph: rule.stopParagraph });
    state.chain = [];
    state.unsure = false;
  } else if (schedule === 'quarterly' && state.chain.length >= rule.consecutive) {
    step(state, occasion, { to: 'sixMonthly', why: 'stepsDown', paragraph: rule.stepDownParagraph });
    state.chain = belowAtEnd(state.chain);
  }
  setDate(state, occasion, schedule, rule);
}

const stepsTowardsLess = (occasion: Occasion, schedule: Schedule): boolean =>
  occasion.relation !== 'roster' &&
  (occasion.provesBelowActionLevel || (schedule === 'quarterly' && occasion.provesNotAbovePel));

/** The first low one begins with nothing owed; after one that may have been high it takes as many as end a schedule. */
function begin(state: State, occasion: Occasion, rule: CourseRule): void {
  if (state.unsure) {
    state.chain = chained(state.chain, { on: occasion.on, belowActionLevel: true }, rule.daysApart);
    if (state.chain.length < rule.consecutive) return;
    state.unsure = false;
  }
  const before = state.schedule;
  const paragraph = rule.paragraphBySchedule.none;
  if (before === 'undetermined') step(state, occasion, { to: 'none', why: 'begins', paragraph });
  setDate(state, occasion, before, rule);
}

/** A result that is owed takes back no doubt of the one before: it may come to nothing. */
function takeOwn(state: State, occasion: Occasion, rule: CourseRule): void {
  const { relation, resultOwed, doubted = false, leftOpen = false } = occasion;
  if (relation === 'roster') return;
  state.unsure ||= leftOpen;
  const paragraph = rule.paragraphBySchedule[state.schedule];
  if (resultOwed) step(state, occasion, { to: state.schedule, why: 'owed', paragraph });
  if (!resultOwed || doubted) state.last = occasion;
}

function takeOccasion(state: State, occasion: Occasion, rule: CourseRule): void {
  const own = occasion.relation !== 'roster';
  const raises = isHigh(occasion);
  if (!own && (!raises || state.decidedByOwn)) return;
  const lowers = stepsTowardsLess(occasion, state.schedule);
  takeOwn(state, occasion, rule);
  state.band = occasion.band;
  if (lowers && isRepeated(state.schedule)) low(state, occasion, rule);
  else if (lowers && !raises) begin(state, occasion, rule);
  else {
    state.chain = [];
    if (raises) high(state, occasion, rule);
  }
  if (raises || lowers) note(state, occasion.sound, own);
}

function note(state: State, sound: boolean, own: boolean): void {
  state.known = true;
  state.decided ||= sound;
  state.decidedByOwn ||= sound && own;
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

const nothingDue = { schedule: 'undetermined', steps: [], lastMeasurementId: null, band: null, dueOn: null } as const;

export function courseOf({ workerId, groupKey, occasions, changes, rule, lastDoneOn, today }: CourseInput): Course {
  const whose = { workerId, groupKey };
  if (!rule) return { ...whose, ...nothingDue, due: 'none', overdue: false, run: null, changeOwed: null };
  const state: State = {
    ...nothingDue,
    steps: [],
    chain: [],
    last: null,
    unsure: false,
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
  const { schedule, steps, lastMeasurementId, band, changeOwed } = state;
  return {
    ...whose,
    schedule,
    steps,
    lastMeasurementId,
    band,
    ...dueOf(state, lastDoneOn, today),
    measureAgain: inDoubt(state),
    run: runOf(state, rule),
    changeOwed,
  };
}
