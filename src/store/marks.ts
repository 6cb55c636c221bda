/**
 * A few words kept outside the database (localStorage), so that an emptied database is told from a first use, and one that went back
 * in time from one that did not. Where the browser refuses localStorage, every answer is "nothing known".
 */
import type { Which } from './database.ts';

export interface HeldMark {
  readonly bookId: string;
  readonly writer: string;
  /** The highest sequence of that writer that was told to be written. */
  readonly lastSequence: number;
}

const prefix = 'fullshift.';

export function readMark(name: string): string | null {
  try {
    return localStorage.getItem(prefix + name);
  } catch {
    return null;
  }
}

export function writeMark(name: string, value: string): void {
  try {
    localStorage.setItem(prefix + name, value);
  } catch {
    // A full or refused localStorage costs a warning later, never a record now.
  }
}

/** All of them, here and for this tab: the device is as it was before the first book. */
export function clearMarks(): void {
  incomplete = new Set();
  for (const storage of [localStorageHere(), sessionStorageHere()]) {
    if (storage === null) continue;
    const names = Array.from({ length: storage.length }, (_, at) => storage.key(at) ?? '');
    for (const name of names.filter((each) => each.startsWith(prefix))) storage.removeItem(name);
  }
}

const localStorageHere = (): Storage | null => {
  try {
    return localStorage;
  } catch {
    return null;
  }
};
const sessionStorageHere = (): Storage | null => (typeof sessionStorage === 'undefined' ? null : sessionStorage);

/** The mark that a database held a book; null when none was ever held here. */
export function heldMark(which: Which): HeldMark | null {
  const kept = readMark(`held.${which}`);
  if (kept === null) return null;
  try {
    const { bookId, writer, lastSequence } = JSON.parse(kept) as Record<string, unknown>;
    return { bookId: String(bookId), writer: String(writer), lastSequence: Number(lastSequence) || 0 };
  } catch {
    return { bookId: '', writer: '', lastSequence: 0 };
  }
}

export const setHeldMark = (which: Which, mark: HeldMark): void => writeMark(`held.${which}`, JSON.stringify(mark));

export const lastOpened = (): Which => (readMark('open') === 'practice' ? 'practice' : 'book');
export const setLastOpened = (which: Which): void => writeMark('open', which);

let incomplete = new Set<Which>();

/** Derived rows are given up or being rebuilt. Told to every tab at once, without a request to the database. */
export const derivedIsComplete = (which: Which): boolean =>
  !incomplete.has(which) && readMark(`derived.${which}`) !== 'incomplete';

export function setDerivedComplete(which: Which, complete: boolean): void {
  incomplete = new Set([...incomplete].filter((other) => other !== which));
  if (!complete) incomplete.add(which);
  writeMark(`derived.${which}`, complete ? 'complete' : 'incomplete');
}
