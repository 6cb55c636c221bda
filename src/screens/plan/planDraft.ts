/** What is typed while a measurement is planned, and reading it: into facts, or the sentences of what stands in the way. */
import { crewSample } from '#findings/season/crewSample.ts';
import { type ProposedSlots, proposedSlots } from '#findings/season/proposedSlots.ts';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { type PersonText, readPerson } from '#parts/PersonFields.tsx';
import { addingNew } from '#parts/PickOrAdd.tsx';
import { parseDay } from '#parts/parseDay.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en as fitting } from '#words/fitting.ts';
import { en as partsWords } from '#words/parts.ts';
import { en as words } from '#words/planScreen.ts';

type Plan = FactBody<'measurementPlanned.v1'>;

export interface AddedWorker extends PersonText {
  readonly id: string;
}

export interface PlanDraft {
  readonly taskIds: readonly string[];
  readonly find: string;
  readonly setting: Plan['setting'] | null;
  readonly jobId: string | null;
  readonly jobName: string;
  readonly siteId: string | null;
  readonly crew: readonly string[];
  readonly added: readonly AddedWorker[];
  readonly crewCount: string;
  readonly choice: Plan['choice'];
  readonly highestId: string | null;
  readonly reason: string;
  /** Drawn by the device, one for each of the crew; empty until the lot is drawn. */
  readonly draws: readonly number[];
  readonly each: string;
  readonly days: readonly string[];
  readonly season: string;
  readonly methodId: string | null;
  readonly reportingLimit: string;
  readonly flow: string;
  readonly cassettes: string;
  readonly remark: string;
}

export const emptyPlan: PlanDraft = {
  taskIds: [],
  find: '',
  setting: null,
  jobId: null,
  jobName: '',
  siteId: null,
  crew: [],
  added: [],
  crewCount: '',
  choice: 'all',
  highestId: null,
  reason: '',
  draws: [],
  each: '1',
  days: [''],
  season: '',
  methodId: null,
  reportingLimit: '',
  flow: '',
  cassettes: '1',
  remark: '',
};

/** A whole number from `least` to `most`; null for anything else. */
export function wholeOf(text: string, least: number, most: number): number | null {
  const typed = text.trim();
  if (!/^\d{1,4}$/.test(typed)) return null;
  const value = Number(typed);
  return value < least || value > most ? null : value;
}

export const crewOf = ({ crew, added }: PlanDraft): readonly string[] => [...crew, ...added.map(({ id }) => id)];

/** As typed, and never fewer than are named. */
export const crewCountOf = (draft: PlanDraft): number =>
  Math.max(crewOf(draft).length, wholeOf(draft.crewCount, 1, 5000) ?? 0);

/** Days that can be read; the others are told when it is saved. */
const daysOf = ({ days }: PlanDraft, today: string): readonly string[] =>
  days.map((text) => parseDay(text, today)).flatMap((day) => (day.kind === 'value' ? [day.value] : []));

/** Everyone may be drawn only by name, and only after the lot was drawn. */
export const isDrawn = (draft: PlanDraft): boolean => draft.draws.length >= crewOf(draft).length;

/** Whom and when, as far as it is known; null while the lot is not drawn, or nobody is named. */
export function slotsOf(draft: PlanDraft, today: string): ProposedSlots | null {
  const crew = crewOf(draft);
  const needsLot = draft.choice === 'random' && crewSample(crewCountOf(draft)).sampleCount < crew.length;
  const isUnnamed = draft.choice === 'random' && crewCountOf(draft) > crew.length;
  if (crew.length === 0 || isUnnamed || (needsLot && !isDrawn(draft))) return null;
  return proposedSlots({
    crew,
    crewCount: crewCountOf(draft),
    choice: draft.choice,
    highestId: draft.highestId,
    days: daysOf(draft, today),
    daysEachCount: wholeOf(draft.each, 1, 20) ?? 1,
    draws: draft.draws,
  });
}

function readWho(read: FieldReader, draft: PlanDraft): void {
  const named = crewOf(draft).length;
  if (named === 0) read.add('crew', words.who.nobody);
  const typed = wholeOf(draft.crewCount, 1, 5000);
  if (draft.crewCount.trim() !== '' && typed === null) read.add('crewCount', words.who.crewCountBad);
  else if (typed !== null && typed < named) read.add('crewCount', words.who.crewCountFew(named));
  if (draft.choice === 'highest') {
    read.chosen('highest', words.who.highest, draft.highestId);
    read.text('reason', words.who.reason, draft.reason, { most: 2000 });
  }
  const unnamed = crewCountOf(draft) - named;
  if (draft.choice === 'random' && named > 0) {
    if (unnamed > 0) read.add('crew', words.who.drawNames(unnamed));
    else if (!isDrawn(draft)) read.add('choice', words.who.drawMissing);
  }
}

function readHow(read: FieldReader, draft: PlanDraft, today: string) {
  for (const [at, text] of draft.days.entries())
    read.day(`day-${at}`, words.days.day(at + 1), text, today, { optional: true });
  if (wholeOf(draft.each, 1, 20) === null) read.add('each', words.days.eachBad);
  const season = read.text('season', words.days.season, draft.season, { optional: true });
  const limits = { optional: true, least: 0.001, most: 1000 } as const;
  const reportingLimitUg = read.quantity('limit', words.how.reportingLimit, 'µg', draft.reportingLimit, limits);
  const flows = { optional: true, least: 0.1, most: 10 } as const;
  const flowLPerMin = read.quantity('flow', words.how.flow, 'L/min', draft.flow, flows);
  const cassettesCount = wholeOf(draft.cassettes, 1, 12) ?? read.add('cassettes', words.how.cassettesBad);
  const remark = read.text('remark', words.how.remark, draft.remark, { optional: true, most: 2000 });
  return { season, reportingLimitUg, flowLPerMin, cassettesCount, remark };
}

const isNewJob = ({ jobId }: PlanDraft): boolean => jobId === addingNew || jobId === null;

function readWork(read: FieldReader, draft: PlanDraft) {
  if (draft.taskIds.length === 0) read.add('find', fitting.taskMissing);
  const setting = read.chosen('setting', words.work.setting, draft.setting);
  const optional = { optional: true } as const;
  const jobName = isNewJob(draft) ? read.text('job-name', words.work.jobName, draft.jobName, optional) : null;
  const jobClassificationId = jobName !== null ? newId() : isNewJob(draft) ? null : draft.jobId;
  return { setting, jobName, jobClassificationId };
}

/** New classification and people first, then the plan. */
export function readPlan(draft: PlanDraft, today: string, entry: Entry) {
  const read = fieldReader(partsWords);
  const { setting, jobName, jobClassificationId } = readWork(read, draft);
  const people = draft.added.map(({ id, ...text }) => ({ personId: id, person: readPerson(read, id, text) }));
  readWho(read, draft);
  const { cassettesCount, ...how } = readHow(read, draft, today);
  const proposed = read.errors.length === 0 ? slotsOf(draft, today) : null;
  if (proposed !== null && proposed.slots.length > 200) read.add('each', words.days.tooMany(proposed.slots.length));
  if (read.errors.length > 0 || proposed === null || setting === null || cassettesCount === null)
    return { errors: read.errors, facts: [], planId: '' };
  const facts: NewFact[] = [];
  if (jobName !== null && jobClassificationId !== null)
    facts.push(newFact('jobClassificationAdded.v1', { jobClassificationId, name: jobName }, entry));
  for (const { personId, person } of people)
    if (person !== null) facts.push(newFact('personAdded.v1', { personId, ...person, jobClassificationId }, entry));
  const planId = newId();
  const slots = proposed.slots.map((slot) => ({ ...slot }));
  const { siteId, choice, methodId } = draft;
  const reason = choice === 'highest' ? draft.reason.trim() : null;
  const work = { jobClassificationId, setting, taskIds: [...draft.taskIds], siteId };
  const body: Plan = {
    planId,
    ...work,
    crewCount: crewCountOf(draft),
    choice,
    reason,
    slots,
    methodId,
    ...how,
    cassettesCount,
  };
  return { errors: [], facts: [...facts, newFact('measurementPlanned.v1', body, entry)], planId };
}
