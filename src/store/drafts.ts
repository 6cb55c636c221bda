/**
 * What is being typed, apart from the facts: per record, screen and tab. Durable within a second of the last keystroke, at once when
 * the field or the page is left. A draft of a tab that is gone is taken over by the next tab that shows the same screen.
 */
import type { BookDatabase } from './database.ts';
import { newId, now } from './device.ts';
import { readTwice } from './reopening.ts';
import { openSession } from './session.ts';

const waitMs = 300;

interface Pending {
  readonly value: unknown;
  readonly timer: ReturnType<typeof setTimeout> | null;
}
const pending = new Map<string, Pending>();
const tabLock = (tab: string): string => `fullshift.tab.${tab}`;

let tab: string | null = null;
/** This tab's name: survives a reload, not a closed tab. */
export function tabId(): string {
  if (tab !== null) return tab;
  const kept = typeof sessionStorage === 'undefined' ? null : sessionStorage.getItem('fullshift.tab');
  tab = kept ?? newId();
  if (typeof sessionStorage !== 'undefined') sessionStorage.setItem('fullshift.tab', tab);
  if (typeof navigator !== 'undefined' && navigator.locks) {
    void navigator.locks.request(tabLock(tab), { ifAvailable: true }, () => new Promise(() => {}));
  }
  return tab;
}

export const draftKeyOf = (name: string): string => `${name}#${tabId()}`;

const keep = (db: BookDatabase, key: string, value: unknown): Promise<unknown> =>
  db.drafts.put({ key, value, savedAt: now() }) as unknown as Promise<unknown>;

/** Writes a waiting draft down now. True when nothing of it is left unwritten. */
export async function flushDraft(name: string): Promise<boolean> {
  const key = draftKeyOf(name);
  const waiting = pending.get(key);
  const session = openSession();
  if (waiting === undefined) return true;
  if (waiting.timer !== null) clearTimeout(waiting.timer);
  if (session === null) return false;
  try {
    await readTwice(session.db, async (db) => keep(db, key, waiting.value));
  } catch {
    return false;
  }
  if (pending.get(key)?.value === waiting.value) pending.delete(key);
  return true;
}

/** Every waiting draft: on leaving a field, hiding the page, closing it. */
export async function flushDrafts(): Promise<void> {
  const names = [...pending.keys()].map((key) => key.slice(0, key.lastIndexOf('#')));
  await Promise.all(names.map(flushDraft));
}

/** Takes a keystroke; `onKept` hears whether the value is durable, unless another keystroke came first. */
export function setDraft(name: string, value: unknown, onKept: (kept: boolean) => void = () => {}): void {
  const key = draftKeyOf(name);
  const before = pending.get(key);
  if (before?.timer != null) clearTimeout(before.timer);
  const timer = setTimeout(() => {
    void flushDraft(name).then((kept) => {
      if (pending.get(key) === undefined || pending.get(key)?.value === value) onKept(kept);
    });
  }, waitMs);
  pending.set(key, { value, timer });
}

/** While a write runs that makes this draft good, no timer may bring it back. */
export function holdDraft(name: string): void {
  const key = draftKeyOf(name);
  const waiting = pending.get(key);
  if (waiting?.timer == null) return;
  clearTimeout(waiting.timer);
  pending.set(key, { value: waiting.value, timer: null });
}

/** The write is complete and has deleted the row. */
export const forgetDraft = (name: string): void => void pending.delete(draftKeyOf(name));

/** Whoever wipes or throws away all that is being typed says so. */
export function forgetDrafts(): void {
  for (const { timer } of pending.values()) if (timer !== null) clearTimeout(timer);
  pending.clear();
}

const livingTabs = async (): Promise<ReadonlySet<string>> => {
  if (typeof navigator === 'undefined' || !navigator.locks?.query) return new Set();
  const { held = [] } = await navigator.locks.query();
  return new Set(held.map((lock) => lock.name ?? ''));
};

/** The draft for this screen: this tab's own, else the newest that a closed tab left. null when there is none. */
export async function loadDraft(db: BookDatabase, name: string): Promise<{ readonly value: unknown } | null> {
  const own = draftKeyOf(name);
  const waiting = pending.get(own);
  if (waiting !== undefined) return { value: waiting.value };
  const rows = await db.drafts.where('key').startsWith(`${name}#`).toArray();
  const mine = rows.find((row) => row.key === own);
  if (mine !== undefined) return { value: mine.value };
  const living = await livingTabs();
  const left = rows
    .filter((row) => !living.has(tabLock(row.key.slice(name.length + 1))))
    .sort((a, b) => (a.savedAt < b.savedAt ? 1 : -1));
  const newest = left[0];
  if (newest === undefined) return null;
  await db.transaction('rw', db.drafts, async () => {
    await db.drafts.put({ ...newest, key: own });
    await db.drafts.delete(newest.key);
  });
  return { value: newest.value };
}

/** Throws the draft away: only when someone says so. */
export async function clearDraft(name: string): Promise<void> {
  forgetDraft(name);
  await openSession()?.db.drafts.delete(draftKeyOf(name));
}

/** Drafts are written when the page is hidden, left, or loses the focus. Returns what undoes it. */
export function flushOnLeaving(): () => void {
  const flush = (): void => void flushDrafts();
  const events = [
    [document, 'visibilitychange'],
    [document, 'focusout'],
    [window, 'pagehide'],
    [window, 'blur'],
  ] as const;
  for (const [target, name] of events) target.addEventListener(name, flush);
  return () => {
    for (const [target, name] of events) target.removeEventListener(name, flush);
  };
}
