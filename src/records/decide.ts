/**
 * What somebody wants to write down -> the facts, or the reasons why not now. Pure; the store runs it inside the transaction on rows
 * read there, so that two tabs or two thumbs cannot start one pump twice.
 */
import { subjectOf } from './about.ts';
import { keyOf } from './common.ts';
import { afterwards } from './decide/afterwards.ts';
import { type Answers, type Ask, askOf } from './decide/ask.ts';
import { boxCases } from './decide/box.ts';
import { correctionDecided, settlementDecided } from './decide/correction.ts';
import { dayCases } from './decide/day.ts';
import { dutyCases, reopeningDecided } from './decide/duty.ts';
import { checkedEntry, refuseFuture, refuseSocialSecurityNumber } from './decide/entry.ts';
import type { DecideContext, Fresh, Needs } from './decide/fresh.ts';
import { certificateDecided, gearCases, heldDecided, settlingDecided } from './decide/gear.ts';
import { keepingCases, refuseWhileTakingIn, relaxes, voidReviewDecided } from './decide/keeping.ts';
import { measurementCases, measurementKey } from './decide/measurement.ts';
import { moneyCases, pricesDecided, spendingStruckDecided } from './decide/money.ts';
import { onWorker, refuseClockSetBack, refuseTwice } from './decide/onWorker.ts';
import type { Caution, Refusal } from './decide/refusal.ts';
import { nameSuperseding, registerCases } from './decide/registers.ts';
import { resultCases } from './decide/result.ts';
import { employmentDecided, limitsDecided } from './decide/revised.ts';
import { rosterCases, strikeDecided } from './decide/roster.ts';
import { sampleCases } from './decide/sample.ts';
import { dayPreparedDecided, dropDecided, planDecided, seasonCases } from './decide/season.ts';
import { tellingCases } from './decide/telling.ts';
import { type View, viewOf } from './decide/view.ts';
import type { FactKind, NewFact } from './fact.ts';

export type { DecideContext, Fresh, Needs } from './decide/fresh.ts';

export type Decision =
  /** As wanted, with bodies checked and trimmed, `about` completed and `supersedes` filled in. */
  | { readonly kind: 'facts'; readonly facts: readonly NewFact[]; readonly cautions: readonly Caution[] }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

const startsRunning = (fact: NewFact): boolean =>
  fact.kind === 'pumpPutOn.v1' ||
  fact.kind === 'stoppedByMistake.v1' ||
  (fact.kind === 'valueCorrected.v1' && /^\/(pumpId|workerId)$/.test(fact.body.path));

function numberIn(fact: NewFact): readonly string[] {
  if (fact.kind === 'samplePrepared.v1' || fact.kind === 'blankOpened.v1') return [fact.body.sampleNumber];
  const corrects = fact.kind === 'valueCorrected.v1' && fact.body.path === '/sampleNumber';
  return corrects && typeof fact.body.new === 'string' ? [fact.body.new] : [];
}

const sampleKeysIn = (fact: NewFact): readonly string[] => {
  if (fact.kind === 'boxPacked.v1') return fact.body.sampleIds.map((id) => keyOf('sample', id));
  const follows = fact.kind === 'samplePrepared.v1' ? fact.body.follows : null;
  return follows === null ? [] : [keyOf('sample', follows)];
};

const siteKey = (id: string | null): readonly string[] => (id === null ? [] : [keyOf('site', id)]);

/** The same of what is planned, made ready and spent; null for every other kind. */
function besideKeysOfSeason({ kind, body }: NewFact): readonly string[] | null {
  if (kind === 'measurementPlanned.v1') return siteKey(body.siteId);
  if (kind === 'dayPrepared.v1' || kind === 'labelsMade.v1') return siteKey(String(body.shiftId).slice(0, 12));
  if (kind !== 'moneySpent.v1') return null;
  return [...siteKey(body.siteId), ...(body.boxId === null ? [] : [keyOf('box', body.boxId)])];
}

/** Records that a fact names besides those that it touches, where a wrong one would do harm: as few as may be, each is a request. */
function besideKeysOf({ kind, body }: NewFact): readonly string[] {
  const person = (id: string | null): readonly string[] => (id === null ? [] : [keyOf('person', id)]);
  if (kind === 'workNoted.v1' || kind === 'representsStated.v1') return person(String(body.workdayId).slice(0, 12));
  if (kind === 'measurementReported.v1') return person(body.workerId);
  if (kind === 'recordsRequested.v1') return person(body.personId);
  const beside = besideKeysOfSeason({ kind, body } as NewFact);
  if (beside !== null) return beside;
  return kind === 'measurementReliedOn.v1' ? [measurementKey(String(body.measurementId))] : [];
}

/** What must be read before deciding. */
export function needs(wanted: readonly NewFact[]): Needs {
  const keys = wanted.flatMap((fact) =>
    [...fact.about, subjectOf(fact) ?? [], ...sampleKeysIn(fact), ...besideKeysOf(fact)].flat(),
  );
  return {
    keys: [...new Set(keys)],
    runningSamples: wanted.some(startsRunning),
    sampleNumbers: wanted.flatMap(numberIn),
    boxesOfSamples: wanted.flatMap((fact) => (fact.kind === 'boxPacked.v1' ? fact.body.sampleIds : [])),
    noticesOf: wanted.flatMap((fact) => (fact.kind === 'noticeIssued.v1' ? [fact.body.measurementId] : [])),
    takingIn: wanted.some(relaxes),
    missing: wanted.some(({ kind }) => kind === 'missingEntriesAccepted.v1'),
    facts: wanted.flatMap(({ kind, body }) => (kind === 'valueCorrected.v1' ? [String(body.replaces)] : [])),
  };
}

const onWorkerCases = {
  'pumpLookedAt.v1': onWorker,
  'leadAreaLeft.v1': onWorker,
  'leadAreaEntered.v1': onWorker,
  'pumpTakenOff.v1': onWorker,
  'pumpPutBackOn.v1': onWorker,
  'pumpFaulted.v1': onWorker,
};

/** Kinds whose fact comes back with something that only the book can tell. */
const filling: { readonly [K in FactKind]?: (ask: Ask<K>) => NewFact } = {
  'valueCorrected.v1': correctionDecided,
  'correctionSettled.v1': settlementDecided,
  'voidReviewed.v1': voidReviewDecided,
  'nameChanged.v1': (ask) => nameSuperseding(ask as Ask),
  'workStruck.v1': strikeDecided,
  'employmentStated.v1': employmentDecided,
  'limitsChosen.v1': limitsDecided,
  'dutyReopened.v1': reopeningDecided,
  'measurementPlanned.v1': planDecided,
  'planDropped.v1': dropDecided,
  'dayPrepared.v1': dayPreparedDecided,
  'gearHeld.v1': heldDecided,
  'certificateEntered.v1': certificateDecided,
  'gearDoubtSettled.v1': settlingDecided,
  'pricesStated.v1': pricesDecided,
  'spendingStruck.v1': spendingStruckDecided,
};

type FilledKind =
  | 'valueCorrected.v1'
  | 'correctionSettled.v1'
  | 'nameChanged.v1'
  | 'voidReviewed.v1'
  | 'workStruck.v1'
  | 'employmentStated.v1'
  | 'limitsChosen.v1'
  | 'dutyReopened.v1'
  | 'measurementPlanned.v1'
  | 'planDropped.v1'
  | 'dayPrepared.v1'
  | 'gearHeld.v1'
  | 'certificateEntered.v1'
  | 'gearDoubtSettled.v1'
  | 'pricesStated.v1'
  | 'spendingStruck.v1';
type OtherKind = Exclude<FactKind, FilledKind>;
const cases: { readonly [K in OtherKind]: (ask: Ask<K>) => void } = {
  ...registerCases,
  ...dayCases,
  ...sampleCases,
  ...onWorkerCases,
  ...resultCases,
  ...boxCases,
  ...keepingCases,
  ...rosterCases,
  ...measurementCases,
  ...tellingCases,
  ...dutyCases,
  ...seasonCases,
  ...gearCases,
  ...moneyCases,
};

/** Runs the case of one fact; the fact comes back with what only the book can tell filled in. */
function decided(ask: Ask): NewFact {
  const { fact } = ask;
  const fill = filling[fact.kind] as ((ask: Ask) => NewFact) | undefined;
  if (fill) return fill(ask);
  (cases[fact.kind as OtherKind] as (ask: Ask) => void)(ask);
  return fact;
}

const withSubject = (fact: NewFact): NewFact => {
  const key = subjectOf(fact);
  return key === null || fact.about.includes(key) ? fact : { ...fact, about: [key, ...fact.about] };
};

function decideOne(fact: NewFact, index: number, view: View, context: DecideContext, answers: Answers): NewFact {
  const ask = (about: NewFact): Ask => askOf(about, index, view, context, answers);
  const entry = checkedEntry(ask(withSubject(fact)));
  if (!entry) return fact;
  refuseFuture(ask(entry));
  refuseSocialSecurityNumber(ask(entry));
  refuseClockSetBack(ask(entry));
  refuseWhileTakingIn(ask(entry));
  const result = decided(ask(entry));
  afterwards(ask(result));
  return result;
}

/** Decides all or nothing: the facts of one call are one act. */
export function decide(wanted: readonly NewFact[], fresh: Fresh, context: DecideContext): Decision {
  const view = viewOf(fresh);
  const answers: Answers = { refusals: [], cautions: [] };
  const facts = wanted.map((fact, index) => decideOne(fact, index, view, context, answers));
  for (const [index, fact] of facts.entries()) {
    if (!startsRunning(fact)) continue;
    const key = subjectOf(fact) ?? fact.about.find((about) => about.startsWith('sample:')) ?? '';
    refuseTwice(askOf(fact, index, view, context, answers), key.slice(key.indexOf(':') + 1));
  }
  return answers.refusals.length > 0
    ? { kind: 'refused', refusals: answers.refusals }
    : { kind: 'facts', facts, cautions: answers.cautions };
}
