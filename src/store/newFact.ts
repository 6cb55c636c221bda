/** A fact as a screen wants to write it down. The journal gives it id, recorded time and writer; `about` follows from the body. */
import { subjectOf } from '#records/about.ts';
import type { FactBody, FactKind, Happened, NewFact } from '#records/fact.ts';

export interface Entry {
  readonly happened: Happened;
  /** Who holds the device; null before anyone said so. */
  readonly by: string | null;
  readonly why?: string | null;
  /** Only for kinds whose body does not name their record: names, notes, corrections. */
  readonly about?: readonly string[];
}

/** Throws (a bug) when the record it is about is neither in the body nor handed in. */
export function newFact<K extends FactKind>(kind: K, body: FactBody<K>, entry: Entry): NewFact {
  const subject = subjectOf({ kind, body } as Pick<NewFact, 'kind' | 'body'>);
  const about = entry.about ?? (subject === null ? [] : [subject]);
  if (about.length === 0) throw new Error(`${kind}: no record named`);
  return { kind, about, happened: entry.happened, by: entry.by, why: entry.why ?? null, body } as unknown as NewFact;
}
