/**
 * Which lines of a book's text a journal may carry: written here once more from the data dictionary (shared/dictionary.md, "A fact"),
 * without the app's schemas, and the union that must come of it.
 */
import { sha } from './making.ts';

type Json = Readonly<Record<string, unknown>>;
const isText = (value: unknown, most: number): boolean =>
  typeof value === 'string' && value.trim().length > 0 && value.trim().length <= most;
const matches = (value: unknown, shape: RegExp): boolean => typeof value === 'string' && shape.test(value);
const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function isInstant(value: unknown): boolean {
  if (!matches(value, /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/)) return false;
  const ms = Date.parse(value as string);
  // The platform takes the 31st of a short month for the first of the next.
  return Number.isFinite(ms) && new Date(ms).toISOString() === value;
}

function isHappened(value: unknown): boolean {
  if (!isObject(value)) return false;
  const { at, zone, offsetMin, entry, from } = value;
  const isOffset = Number.isInteger(offsetMin) && Math.abs(offsetMin as number) <= 900;
  return (
    isInstant(at) &&
    isText(zone, 400) &&
    isOffset &&
    (entry === 'tapped' || entry === 'typed') &&
    (from === null || isText(from, 400))
  );
}

/** Nothing nests deeper than 20, and no key poisons. */
function isTame(value: unknown, depth = 1): boolean {
  if (typeof value !== 'object' || value === null) return true;
  if (depth > 20) return false;
  return Object.keys(value).every(
    (key) => !['__proto__', 'constructor', 'prototype'].includes(key) && isTame((value as Json)[key], depth + 1),
  );
}

const isFact = (fact: Json): boolean =>
  matches(fact.kind, /^[a-zA-Z]+\.v\d+$/) &&
  Array.isArray(fact.about) &&
  fact.about.length >= 1 &&
  fact.about.length <= 40 &&
  fact.about.every((key) => matches(key, /^[a-zA-Z]+:[0-9a-zA-Z.-]+$/)) &&
  isHappened(fact.happened) &&
  matches(fact.recorded, /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z-[0-9a-f]{4}$/) &&
  (fact.by === null || matches(fact.by, /^[0-9a-hjkmnp-tv-z]{12}$/)) &&
  (fact.why === null || (typeof fact.why === 'string' && fact.why.length <= 2000)) &&
  (fact.mustUnderstand === undefined || typeof fact.mustUnderstand === 'boolean') &&
  isObject(fact.body);

export function mayBeCarried(text: string): boolean {
  if (new TextEncoder().encode(text).length > 256 * 1024 || /[\r\n]/.test(text) || !text.isWellFormed()) return false;
  const fact: unknown = JSON.parse(text);
  return isObject(fact) && isTame(fact) && isFact(fact);
}

export type Journal = ReadonlyMap<string, string>;

/** Id -> line. What was held, and each line of the text whose id is new and that may be carried. */
export function unionWith(held: Journal, bookText: string): Journal {
  const union = new Map(held);
  for (const line of bookText
    .replace(/^\ufeff/, '')
    .split('\n')
    .slice(1, -2)) {
    const text = line.slice(65);
    const { id } = JSON.parse(text) as { id: string };
    if (!union.has(id) && mayBeCarried(text)) union.set(id, line);
  }
  return union;
}

/** The first line of the journal whose link does not follow from the fact before it; null when all do. */
export function firstBroken(journal: Journal): string | null {
  for (const [id, line] of journal) {
    const before = `${id.slice(0, 13)}${String(Number(id.slice(13)) - 1).padStart(8, '0')}`;
    const sequence = Number(id.slice(13));
    const previous = sequence === 1 ? '' : journal.get(before)?.slice(0, 64);
    if (previous !== undefined && line.slice(0, 64) !== sha(previous + sha(line.slice(65)))) return id;
  }
  return null;
}
