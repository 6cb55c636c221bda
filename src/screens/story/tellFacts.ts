/** Every fact about a record as one sentence, in the order in which things happened. As many sentences as facts: none is left out. */
import { dayOf, wallTimeOf } from '#core/calendar.ts';
import { namesIn } from '#findings/naming.ts';
import type { Book, Strike } from '#records/book.ts';
import { readFact, type StoredFact } from '#records/canonical.ts';
import { sequenceOf, writerOf } from '#records/chain.ts';
import { corrected } from '#records/corrections.ts';
import type { Envelope, Fact } from '#records/fact.ts';
import { segmentsOf, valueAt } from '#records/pointer.ts';
import type { Devices } from '#store/hooks/useFactsAbout.ts';
import { en as words } from '#words/story.ts';
import { en as sentences, type Telling } from '#words/storyFacts.ts';
import { momentText, valueText } from '#words/valueText.ts';

export interface ToldFact {
  readonly factId: string;
  /** null: it cannot be read. */
  readonly on: string | null;
  readonly time: string | null;
  readonly sentence: string;
  /** Who, how known, when written down, on which device, why. */
  readonly details: readonly string[];
  readonly strikes: readonly Strike[];
}

export interface TellingOf {
  readonly book: Book;
  readonly devices: Devices;
  readonly zone: string;
}

interface Placed extends ToldFact {
  readonly order: readonly [at: string, recorded: string, id: string];
}

/** Sorts after every instant. */
const noTime = '\uffff';

const deviceOf = (writer: string, { here, names }: Devices): string => {
  if (writer === here) return words.whole.thisDevice;
  const name = names.get(writer);
  return name === undefined ? words.whole.otherDevice(writer.slice(0, 4)) : words.whole.device(name);
};

const recordedAt = ({ recorded }: Pick<Envelope, 'recorded'>): string => recorded.slice(0, 24);

/** Written down within the same minute needs no second time. */
const writtenLater = ({ happened, recorded }: Pick<Envelope, 'happened' | 'recorded'>): boolean =>
  happened.entry === 'typed' || happened.at.slice(0, 16) !== recorded.slice(0, 16);

function detailsOf(fact: Pick<Envelope, 'id' | 'happened' | 'recorded' | 'by' | 'why'>, around: TellingOf): string[] {
  const { book, devices, zone } = around;
  const { happened, by, why } = fact;
  const { whole } = words;
  const who = by === null ? whole.nobody : whole.by(book.people.get(by)?.name ?? words.notHere);
  return [
    ...(why === null || why.trim() === '' ? [] : [whole.because(why)]),
    who,
    ...(happened.entry === 'typed' ? [whole.typedFrom(happened.from)] : []),
    ...(writtenLater(fact) ? [whole.writtenAt(momentText(recordedAt(fact), zone))] : []),
    deviceOf(writerOf(fact.id), devices),
  ];
}

/** What a candidate of a dispute says, from the fact itself. */
function saidBy(facts: readonly Fact[], id: string, path: string, naming: Omit<Telling, 'saidBy'>): string | undefined {
  const fact = facts.find((one) => one.id === id);
  if (fact === undefined) return undefined;
  if (fact.kind === 'valueCorrected.v1') return valueText(path, fact.body.new, naming);
  const found = valueAt({ ...fact.body, happened: { at: fact.happened.at } }, segmentsOf(path));
  return found === null ? undefined : valueText(path, found.value, naming);
}

const placed = (told: ToldFact, at: string, recorded: string): Placed => ({
  ...told,
  order: [at, recorded, told.factId],
});

function known(fact: Fact, say: Telling, strikes: readonly Strike[], around: TellingOf): Placed {
  const { day, time } = wallTimeOf(fact.happened.at, around.zone);
  const sentence = (sentences[fact.kind] as (fact: Fact, say: Telling) => string)(fact, say);
  const own = strikes.filter(({ factId }) => factId === fact.id);
  const told = { factId: fact.id, on: day, time, sentence, details: detailsOf(fact, around), strikes: own };
  return placed(told, fact.happened.at, fact.recorded);
}

function newer(envelope: Envelope, mustUnderstand: boolean, around: TellingOf): Placed {
  const { at } = envelope.happened;
  const told: ToldFact = {
    factId: envelope.id,
    on: dayOf(at, around.zone),
    time: wallTimeOf(at, around.zone).time,
    sentence: words.whole.newer,
    details: [...(mustUnderstand ? [words.whole.newerHolds] : []), ...detailsOf(envelope, around)],
    strikes: [],
  };
  return placed(told, at, envelope.recorded);
}

function unreadable(id: string, around: TellingOf): Placed {
  const details = [deviceOf(writerOf(id), around.devices)];
  const told = { factId: id, on: null, time: null, sentence: words.whole.unreadable, details, strikes: [] };
  return placed(told, noTime, String(sequenceOf(id)).padStart(8, '0'));
}

const before = (a: readonly string[], b: readonly string[]): number => {
  const at = a.findIndex((part, index) => part !== b[index]);
  return at < 0 ? 0 : (a[at] ?? '') < (b[at] ?? '') ? -1 : 1;
};

/** Standing values in the sentences, struck ones beside them; equal moments in the order in which they were written down. */
export function tellFacts(stored: readonly StoredFact[], around: TellingOf): readonly ToldFact[] {
  const read = stored.map(({ id, text }) => ({ id, is: readFact(text) }));
  const facts = read.flatMap(({ is }) => (is.kind === 'known' ? [is.fact] : []));
  const sorted = facts.toSorted((a, b) => before([a.recorded, a.id], [b.recorded, b.id]));
  const standing = corrected(sorted);
  const standingById = new Map(standing.facts.map((fact) => [fact.id, fact]));
  const naming = { nameOf: namesIn(around.book), zone: around.zone };
  const say: Telling = { ...naming, saidBy: (id, path) => saidBy(facts, id, path, naming) };
  const told = read.map(({ id, is }) => {
    if (is.kind === 'refused') return unreadable(id, around);
    if (is.kind === 'unknown') return newer(is.envelope, is.mustUnderstand, around);
    return known(standingById.get(is.fact.id) ?? is.fact, say, standing.strikes, around);
  });
  return told.sort((a, b) => before(a.order, b.order));
}
