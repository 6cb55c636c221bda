/** Journals of several writers, made by hand: entries as any device of a book could have written them. Nothing here is an expected value. */
import { createHash } from 'node:crypto';
import type { JournalRow } from '#store/database.ts';

const hex = (text: string): string => createHash('sha256').update(text, 'utf8').digest('hex');

export interface EntryWish {
  readonly kind?: string;
  readonly about?: string;
  readonly body?: Readonly<Record<string, unknown>>;
}

/** One writer's entries from the first on, each link by Node's own SHA-256 over the last. */
export function chainOf(writer: string, wishes: readonly EntryWish[]): JournalRow[] {
  let previous = '';
  return wishes.map(({ kind = 'windowOiled.v1', about = 'site:s00000000001', body = {} }, index) => {
    const id = `${writer}.${String(index + 1).padStart(8, '0')}`;
    const at = `2026-11-${String(1 + (index % 24)).padStart(2, '0')}T11:00:00.000Z`;
    const happened = { at, zone: 'America/New_York', offsetMin: -300, entry: 'tapped', from: null };
    const recorded = `${at}-0000`;
    const text = JSON.stringify({ about: [about], body, by: null, happened, id, kind, recorded, why: null });
    previous = hex(previous + hex(text));
    return { id, about: [about], text, link: previous };
  });
}

export const blank = (count: number): EntryWish[] => Array.from({ length: count }, () => ({}));

/** A book's text read without our own reader: header, ids in order, and whether the end mark tells the truth. */
export function readText(text: string) {
  const lines = text.split('\n');
  const end = JSON.parse(lines.at(-2) ?? '') as { end: string; factsCount: number; hash: string };
  const before = text.slice(0, text.length - (lines.at(-2)?.length ?? 0) - 1);
  const facts = lines.slice(1, -2);
  return {
    header: JSON.parse(lines[0] ?? ''),
    facts: facts.map((line) => ({ link: line.slice(0, 64), text: line.slice(65) })),
    ids: facts.map((line) => (JSON.parse(line.slice(65)) as { id: string }).id),
    endIsTrue: end.end === 'fullshift-book' && end.factsCount === facts.length && end.hash === hex(before),
  };
}
