/**
 * The last errors on this device, for a problem report: a small ring in memory and in localStorage. What is kept says where and what kind,
 * never what stood in the book: quoted text and digits are taken out of messages before anything is kept.
 */
import { now } from './device.ts';
import { readMark, writeMark } from './marks.ts';

export interface LastError {
  readonly at: string;
  readonly name: string;
  readonly message: string;
  /** Names of functions and files, innermost first. */
  readonly where: readonly string[];
}

const kept = 20;
const framesKept = 6;
const messageMost = 160;
const markName = 'errors';

/**
 * Browsers quote the value that was in the way, whole or cut, with quotes inside it: all from the first quote on goes. Digits may be the
 * number of a cassette.
 */
export const withoutValues = (message: string): string =>
  message
    .slice(0, 2000)
    .replace(/(?:["“‘`«]|(?<!\p{L})'|'(?!\p{L})).*$/su, '[…]')
    .replace(/\d+/g, '#')
    .replace(/\s+/g, ' ')
    .slice(0, messageMost);

/** `at write (http://…/assets/store-a1b2.js:1:2345)` becomes `write store-a1b2.js:1:2345`: the address of the site stays out. */
function frameOf(line: string): string | null {
  const file = /([\w.-]+\.(?:js|ts|tsx)(?:\?[^:)]*)?:\d+:\d+)/.exec(line)?.[1];
  if (file === undefined) return null;
  const called = /^\s*at (?:async )?([\w.$<>]+) \(/.exec(line)?.[1] ?? /^([\w.$<>/]*)@/.exec(line)?.[1];
  return called ? `${called} ${file.replace(/\?[^:]*/, '')}` : file.replace(/\?[^:]*/, '');
}

const wordFrom = (text: unknown): string => /^[A-Za-z]{1,40}$/.exec(String(text))?.[0] ?? 'Error';

function keptForm(error: unknown): LastError {
  const { name, message, stack } = (typeof error === 'object' && error !== null ? error : {}) as Partial<Error>;
  const lines = String(stack ?? '').split('\n');
  return {
    at: now(),
    name: wordFrom(name),
    message: withoutValues(String(message ?? (typeof error === 'string' ? error : ''))),
    where: lines
      .map(frameOf)
      .filter((frame) => frame !== null)
      .slice(0, framesKept),
  };
}

let ring: readonly LastError[] | null = null;

function readRing(): readonly LastError[] {
  if (ring !== null) return ring;
  try {
    const found: unknown = JSON.parse(readMark(markName) ?? '[]');
    ring = Array.isArray(found) ? (found as LastError[]).slice(-kept) : [];
  } catch {
    ring = [];
  }
  return ring;
}

/** Oldest first. */
export const lastErrors = (): readonly LastError[] => readRing();

/** Keeps an error; the same one again in a row is kept once. Never throws. */
export function noteError(error: unknown): void {
  try {
    const next = keptForm(error);
    const before = readRing();
    const last = before.at(-1);
    if (last && last.name === next.name && last.message === next.message && last.where[0] === next.where[0]) return;
    ring = [...before, next].slice(-kept);
    writeMark(markName, JSON.stringify(ring));
  } catch {
    // An error about an error helps nobody.
  }
}

/** Forgets them here; whoever wipes the device clears the mark as well. */
export function forgetErrors(): void {
  ring = [];
}

/** What nobody caught. Returns what undoes it. */
export function watchErrors(): () => void {
  const thrown = (event: ErrorEvent): void => noteError(event.error ?? event.message);
  const rejected = (event: PromiseRejectionEvent): void => noteError(event.reason);
  window.addEventListener('error', thrown);
  window.addEventListener('unhandledrejection', rejected);
  return () => {
    window.removeEventListener('error', thrown);
    window.removeEventListener('unhandledrejection', rejected);
  };
}
