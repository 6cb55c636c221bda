/** Every input of a day's facts left out once, and every value that may be blank made null once, while its sample or day stays. */
import { factText, readFact } from '#records/canonical.ts';
import type { JournalEntry } from '#records/chain.ts';
import { type Fact, type FactKind, factBodies } from '#records/fact.ts';

export const factOf = (entry: JournalEntry): Fact => {
  const read = readFact(entry.text);
  if (read.kind !== 'known') throw new Error(entry.text);
  return read.fact;
};

/** Facts that are inputs: without them less is known. Events (a fault, a void, a look) are not blanked, they did not happen then. */
const inputs: ReadonlySet<FactKind> = new Set<FactKind>([
  'siteAdded.v1',
  'meterAdded.v1',
  'lotAdded.v1',
  'shiftOpened.v1',
  'flowChecked.v1',
  'fittingChecked.v1',
  'pumpPutOn.v1',
  'pumpStopped.v1',
  'flowDecided.v1',
  'resultReceived.v1',
  'workHoursStated.v1',
  'otherWorkAsked.v1',
  'minutesExplained.v1',
  'dayDescribed.v1',
]);

/**
 * Not one input by itself: station pressure where the altitude stands beside it, the laboratory's own figures (a second witness), and
 * the earlier of two reports, which the later one replaced.
 */
const notAlone = /^\/(pressureKPa|laboratoryVolumeL|laboratoryConcentrationUgPerM3)$/;

export interface Variant {
  readonly what: string;
  readonly entries: readonly JournalEntry[];
}

/** Every place of a body that may be null, made null. */
function nulled(fact: Fact): { readonly path: string; readonly text: string }[] {
  const found: { path: string; text: string }[] = [];
  const body = fact.body as Record<string, unknown>;
  const see = (value: unknown, path: readonly string[], put: (inner: unknown) => unknown): void => {
    if (value === null) return;
    const changed = factBodies[fact.kind].safeParse(put(null));
    if (changed.success)
      found.push({ path: `/${path.join('/')}`, text: factText({ ...fact, body: put(null) } as Fact) });
    if (typeof value !== 'object') return;
    for (const [key, inner] of Object.entries(value)) {
      const within = (next: unknown): unknown =>
        Array.isArray(value) ? value.map((item, i) => (i === Number(key) ? next : item)) : { ...value, [key]: next };
      see(inner, [...path, key], (next) => put(within(next)));
    }
  };
  see(body, [], (next) => next);
  return found.filter(({ path }) => path !== '/' && !notAlone.test(path));
}

const isReplaced = (fact: Fact, facts: readonly Fact[]): boolean =>
  fact.kind === 'resultReceived.v1' &&
  facts.some(
    (other) =>
      other.kind === 'resultReceived.v1' &&
      other.body.sampleId === fact.body.sampleId &&
      other.body.reportNumber !== fact.body.reportNumber,
  );

export function blankedOnce(entries: readonly JournalEntry[]): Variant[] {
  const facts = entries.map(factOf);
  return entries.flatMap((entry, at): Variant[] => {
    const fact = facts[at] as Fact;
    if (!inputs.has(fact.kind)) return [];
    const without = isReplaced(fact, facts)
      ? []
      : [{ what: `${fact.kind} whole`, entries: entries.filter((other) => other !== entry) }];
    const variants = nulled(fact).map(({ path, text }) => ({
      what: `${fact.kind} ${path.replace(/\d+/g, 'n')}`,
      entries: entries.map((other) => (other === entry ? { ...entry, text } : other)),
    }));
    return [...without, ...variants];
  });
}
