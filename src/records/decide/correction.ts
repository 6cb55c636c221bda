/**
 * A correction names the fact, the place, the value that stands now, the new one and why. What it supersedes is filled in here, from
 * what is in the book at this moment: that is how two corrections made without knowledge of each other are told from one after another.
 */
import { subjectOf } from '../about.ts';
import type { AnyRecord, SampleRecord, Strike } from '../book.ts';
import { canonicalJson, readFact } from '../canonical.ts';
import { instant } from '../common.ts';
import { type Fact, type FactBody, type FactKind, factBodies, type NewFact } from '../fact.ts';
import { fitted } from '../fitting.ts';
import { isWithin, segmentsOf, valueAt, withValueAt } from '../pointer.ts';
import { type Ask, momentParams, needsWhy } from './ask.ts';
import { refuseOnDuties } from './correctionOfDuties.ts';
import { refuseOnSeason } from './correctionOfSeason.ts';
import { wrongPieces } from './day.ts';
import { refuseNumber } from './sample.ts';

type Correcting = Ask<'valueCorrected.v1'>;

const touches = (a: string, b: string): boolean => isWithin(a, b) || isWithin(b, a);

const recordsOf = ({ fact, view }: Ask): readonly AnyRecord[] => fact.about.flatMap((key) => view.record(key) ?? []);

/** The replaced fact; null, and a refusal, when this book does not hold it or cannot read it. */
function replacedFact(ask: Ask, id: string): Fact | null {
  const text = ask.view.fresh.facts.get(id);
  const read = text === undefined ? null : readFact(text);
  const fixed = read?.kind === 'known' && /^(valueCorrected|correctionSettled)\./.test(read.fact.kind);
  if (read?.kind === 'known' && !fixed) return read.fact;
  ask.refuse(fixed ? 'fieldFixed' : 'factUnknown', ['body/replaces'], { factId: id });
  return null;
}

/** A fact's values as corrections so far leave them. */
function standingPlaces(fact: Fact, strikes: readonly Strike[]): unknown {
  let places: unknown = { ...fact.body, happened: { at: fact.happened.at } };
  for (const strike of strikes) places = withValueAt(places, segmentsOf(strike.path), strike.new)?.value ?? places;
  return places;
}

/** The place names the record itself: another value there would be another record. */
function isIdentity(fact: Fact, path: string): boolean {
  const key = subjectOf(fact as unknown as NewFact);
  const found = valueAt(fact.body, segmentsOf(path));
  return key !== null && found !== null && typeof found.value === 'string' && key.endsWith(`:${found.value}`);
}

function fits(fact: Fact, places: unknown, path: string, value: unknown): boolean {
  if (path === '/happened/at') return fitted(instant, value).success;
  const changed = withValueAt(places, segmentsOf(path), value);
  if (!changed) return false;
  const { happened: _, ...body } = changed.value as Record<string, unknown>;
  return fitted(factBodies[fact.kind as FactKind], body).success;
}

/** A corrected time must leave the stop after the start. */
function refuseOrder(ask: Correcting, fact: Fact, sample: SampleRecord): void {
  const { path, new: value } = ask.fact.body;
  if (path !== '/happened/at' || typeof value !== 'string') return;
  const { putOn, stopped, sampleNumber } = sample;
  const [from, to] =
    fact.kind === 'pumpPutOn.v1' ? [value, stopped?.at] : fact.kind === 'pumpStopped.v1' ? [putOn?.at, value] : [];
  if (from === undefined || to === undefined || from < to) return;
  const key = from === to ? 'zeroMinutes' : 'stopBeforeStart';
  ask.refuse(key, ['body/new'], { sampleNumber, ...momentParams(from, ask.fact.happened.zone) });
}

function refuseOnSample(ask: Correcting, fact: Fact): void {
  const sample = recordsOf(ask as Ask).find(({ key }) => key.startsWith('sample:')) as SampleRecord | undefined;
  if (!sample) return;
  refuseOrder(ask, fact, sample);
  const { path, new: value } = ask.fact.body;
  if (path === '/sampleNumber' && typeof value === 'string') refuseNumber(ask as Ask, value, 'body/new', sample);
}

function refuseValue(ask: Correcting, fact: Fact, places: unknown): void {
  const { path, old, new: value } = ask.fact.body;
  const now = valueAt(places, segmentsOf(path));
  if (now === null) {
    ask.refuse('fieldUnknown', ['body/path'], { path });
    return;
  }
  if (isIdentity(fact, path)) {
    ask.refuse('fieldFixed', ['body/path'], { path });
    return;
  }
  if (canonicalJson(now.value) !== canonicalJson(old)) {
    ask.refuse('valueChangedMeanwhile', ['body/old'], { now: canonicalJson(now.value) });
    return;
  }
  if (canonicalJson(now.value) === canonicalJson(value)) {
    ask.refuse('sameValue', ['body/new']);
    return;
  }
  if (!fits(fact, places, path, value)) {
    ask.refuse('entryNotComplete', ['body/new']);
    return;
  }
  refuseOnSample(ask, fact);
  const changed = withValueAt(places, segmentsOf(path), value)?.value;
  refuseOnDay(ask, fact, changed);
  refuseOnDuties(ask, fact, changed, recordsOf(ask as Ask));
  refuseOnSeason(ask, fact, changed);
}

/** Hours and minutes that arrive by correction keep the order and the room that they were asked to have when first stated. */
function refuseOnDay(ask: Correcting, { kind }: Fact, changed: unknown): void {
  if (kind === 'workHoursStated.v1') {
    const { pieces } = changed as FactBody<'workHoursStated.v1'>;
    for (const key of new Set(wrongPieces(pieces).map((wrong) => wrong.key))) ask.refuse(key, ['body/new']);
  }
  if (kind !== 'minutesExplained.v1') return;
  const { fromAt, toAt, as, reason } = changed as FactBody<'minutesExplained.v1'>;
  if (toAt <= fromAt) ask.refuse('endBeforeStart', ['body/new']);
  if (as !== 'unknown' && reason === null) ask.refuse('whyNeeded', ['body/new']);
}

/** The correction with what it supersedes, and about every record that the replaced fact is about. */
export function correctionDecided(ask: Correcting): NewFact {
  const { replaces, path } = ask.fact.body;
  needsWhy(ask as Ask);
  const fact = replacedFact(ask as Ask, replaces);
  if (!fact) return ask.fact;
  const records = recordsOf(ask as Ask);
  const conflict = records
    .flatMap(({ conflicts }) => conflicts)
    .find((open) => open.factId === replaces && touches(open.path, path));
  if (conflict) ask.refuse('conflictOpen', ['body/path'], { path: conflict.path });
  const strikes = (records[0]?.strikes ?? []).filter((strike) => strike.factId === replaces && strike.path !== '/name');
  refuseValue(ask, fact, standingPlaces(fact, strikes));
  const supersedes = strikes.findLast((strike) => touches(strike.path, path))?.correctionId ?? null;
  const about = [...new Set([...ask.fact.about, ...fact.about])];
  return { ...ask.fact, about, body: { ...ask.fact.body, supersedes } };
}

/** A settlement chooses among the candidates of an open conflict, or the value from before it, and names all it chose over. */
export function settlementDecided(ask: Ask<'correctionSettled.v1'>): NewFact {
  needsWhy(ask as Ask);
  const { replaces, path, chosen } = ask.fact.body;
  const conflict = recordsOf(ask as Ask)
    .flatMap(({ conflicts }) => conflicts)
    .find((open) => open.factId === replaces && open.path === path);
  const candidates = conflict?.candidates.map(({ correctionId }) => correctionId) ?? [];
  if (!conflict) ask.refuse('noConflict', ['body/path'], { path });
  else if (![...candidates, replaces].includes(chosen)) ask.refuse('noConflict', ['body/chosen'], { path });
  return { ...ask.fact, body: { ...ask.fact.body, over: [...candidates, ...(conflict?.besides ?? [])] } };
}
