/** A fact as somebody wants to write it down: kind, body, and the occasion it was said on. */
import { subjectOf } from './about.ts';
import type { FactBody, FactKind, Happened, NewFact } from './fact.ts';

/** When it happened, who held the device, and why where a reason was asked for. */
export interface Occasion {
  readonly happened: Happened;
  readonly by: string | null;
  readonly why?: string | null;
}

/** `about` is only given where the body does not name the record: names, notes, corrections. */
export function newFact<K extends FactKind>(
  kind: K,
  body: FactBody<K>,
  { happened, by, why = null }: Occasion,
  about?: readonly string[],
): NewFact {
  const subject = subjectOf({ kind, body } as Pick<NewFact, 'kind' | 'body'>);
  return { kind, about: about ?? (subject === null ? [] : [subject]), happened, by, why, body } as unknown as NewFact;
}
