/**
 * The text of a fact: one line of JSON with sorted keys. The text is what is stored, hashed, backed up and handed over; a text that
 * came from elsewhere is kept byte for byte, whatever the order of its keys.
 */
import { type Envelope, envelope, type Fact, type FactKind, factBodies } from './fact.ts';
import { fitted } from './fitting.ts';

/** A fact as the journal holds it. */
export interface StoredFact {
  readonly id: string;
  readonly text: string;
}

/** Decided here: a fact is a page of a notebook at most, and nothing in it nests deeper than a custody sheet's rows. */
export const factLimits = { bytesCount: 256 * 1024, depthCount: 20 } as const;

export type UnreadableReason =
  | 'tooLong'
  | 'notOneLine'
  | 'notJson'
  | 'tooDeep'
  | 'forbiddenKey'
  | 'notAFact'
  | 'badCharacters';

export type ReadFact =
  | { readonly kind: 'known'; readonly fact: Fact }
  /** Of a newer version, or with a body that this version cannot read. Kept and carried. */
  | { readonly kind: 'unknown'; readonly envelope: Envelope; readonly mustUnderstand: boolean }
  | { readonly kind: 'refused'; readonly reason: UnreadableReason };

const forbiddenKeys = new Set(['__proto__', 'constructor', 'prototype']);

/** JSON with sorted keys, without white space. Refuses (throws on) what JSON cannot hold: that would be a bug of ours. */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const entries = Object.entries(value).filter(([, inner]) => inner !== undefined);
    entries.sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${entries.map(([key, inner]) => `${JSON.stringify(key)}:${canonicalJson(inner)}`).join(',')}}`;
  }
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error('a fact holds a number that is not finite');
  const text = JSON.stringify(value);
  if (text === undefined) throw new Error(`a fact holds a ${typeof value}`);
  return text;
}

/** The one line that is stored of a fact written here. */
export const factText = (fact: Fact | Envelope): string => canonicalJson(fact);

function treeFault(value: unknown, depthCount: number): 'tooDeep' | 'forbiddenKey' | null {
  if (typeof value !== 'object' || value === null) return null;
  if (depthCount > factLimits.depthCount) return 'tooDeep';
  for (const key of Object.keys(value)) {
    if (forbiddenKeys.has(key)) return 'forbiddenKey';
    const fault = treeFault((value as Record<string, unknown>)[key], depthCount + 1);
    if (fault !== null) return fault;
  }
  return null;
}

const isTooLong = (text: string): boolean =>
  text.length > factLimits.bytesCount ||
  (text.length * 3 > factLimits.bytesCount && new TextEncoder().encode(text).length > factLimits.bytesCount);

/** What no line may be, whatever stands in it. */
function textFault(text: string): UnreadableReason | null {
  if (isTooLong(text)) return 'tooLong';
  if (/[\r\n]/.test(text)) return 'notOneLine';
  return /\p{Surrogate}/u.test(text) ? 'badCharacters' : null;
}

const isKnownKind = (kind: string): kind is FactKind => Object.hasOwn(factBodies, kind);

/**
 * Reads one line. Refuses only what cannot be carried: no JSON, no envelope, keys that poison prototypes, beyond the limits. A known
 * kind with a body that does not fit is carried like an unknown one that must be understood: its records become doubtful.
 */
export function readFact(text: string): ReadFact {
  const fault = textFault(text);
  if (fault !== null) return { kind: 'refused', reason: fault };
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { kind: 'refused', reason: 'notJson' };
  }
  return readValue(value);
}

/** The same for whoever has parsed the text already: a large file is parsed once. */
export function readParsed(text: string, value: unknown): ReadFact {
  const fault = textFault(text);
  return fault === null ? readValue(value) : { kind: 'refused', reason: fault };
}

function readValue(value: unknown): ReadFact {
  const fault = treeFault(value, 1);
  if (fault !== null) return { kind: 'refused', reason: fault };
  const checked = fitted(envelope, value);
  if (!checked.success) return { kind: 'refused', reason: 'notAFact' };
  const { data } = checked;
  if (!isKnownKind(data.kind)) return { kind: 'unknown', envelope: data, mustUnderstand: data.mustUnderstand === true };
  const body = fitted(factBodies[data.kind], data.body);
  if (!body.success) return { kind: 'unknown', envelope: data, mustUnderstand: true };
  return { kind: 'known', fact: { ...data, body: body.data } as Fact };
}
