/**
 * Files that came from outside: shared to the installed app, or opened with it from the desktop. They wait in Cache Storage, where the
 * worker can put them without touching the book's database, until a page takes them up: `/take-in?received=<key>`. A file goes as soon
 * as it was taken in, refused or put aside, and after a day in any case. Shared by the worker and the pages.
 */
import { newId, now, nowMs } from './device.ts';

/** Decided here: half of what the file picker takes, since a share passes through the worker; one file, rarely a handful. */
export const receivedLimits = { fileBytes: 200_000_000, filesCount: 4, keptHours: 24 } as const;

/** Why a file that was sent does not wait here. `tooMany`: the first ones do. */
export type NotReceived = 'noFile' | 'tooLarge' | 'tooMany' | 'noSpace';
export const notReceivedReasons: readonly NotReceived[] = ['noFile', 'tooLarge', 'tooMany', 'noSpace'];

export interface Received {
  readonly key: string;
  /** Cleaned: no folder, no controls, at most 120 letters. */
  readonly name: string;
  readonly bytesCount: number;
  readonly receivedAt: string;
}

const cacheName = 'fullshift-received-v1';
/** Only a name inside the cache: nothing is ever asked of this address. */
const addressOf = (key: string): string => `received/${key}`;
const keyPattern = /^[0-9a-z]{12}$/;
const nameHeader = 'x-file-name';
const atHeader = 'x-received-at';

/** Wipes what makes a name lie or break a line: folders, controls, marks that turn the direction of writing, halves of letters. */
export function cleanName(name: string): string {
  const last = name.split(/[\\/]/).at(-1) ?? '';
  const plain = last
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, '')
    .replace(/[\p{Surrogate}\uFFFD]/gu, '')
    .trim();
  const letters = [...plain];
  return letters.length <= 120 ? plain : `${letters.slice(0, 80).join('')}…${letters.slice(-39).join('')}`;
}

const responseOf = (file: File): Response =>
  new Response(file, {
    headers: {
      'content-type': /^[\w.+-]+\/[\w.+-]+$/.test(file.type) ? file.type : 'application/octet-stream',
      [nameHeader]: encodeURIComponent(cleanName(file.name)),
      [atHeader]: now(),
    },
  });

const keyIn = (address: string): string => address.slice(address.lastIndexOf('/') + 1);

const isOld = (at: string): boolean => {
  const ageMs = nowMs() - Date.parse(at);
  return !(ageMs >= -receivedLimits.keptHours * 3_600_000 && ageMs <= receivedLimits.keptHours * 3_600_000);
};

function nameIn(response: Response): string {
  try {
    return cleanName(decodeURIComponent(response.headers.get(nameHeader) ?? ''));
  } catch {
    return '';
  }
}

const listeners = new Set<() => void>();
const tell = (): void => {
  for (const listener of listeners) listener();
};

/** Tells `listener` of what this window puts by or lets go, until the returned function is called. */
export function onReceived(listener: () => void): () => void {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

/** Puts files by. What waited longest makes room, so that a flood of them never fills the device. Never throws for what was sent. */
export async function park(files: readonly File[]): Promise<{ parkedCount: number; not: NotReceived | null }> {
  if (files.length === 0) return { parkedCount: 0, not: 'noFile' };
  const taken = files.filter(({ size }) => size <= receivedLimits.fileBytes).slice(0, receivedLimits.filesCount);
  try {
    const cache = await caches.open(cacheName);
    const waiting = await receivedFiles();
    const room = receivedLimits.filesCount - taken.length;
    for (const { key } of waiting.slice(0, Math.max(0, waiting.length - room))) await cache.delete(addressOf(key));
    for (const file of taken) await cache.put(addressOf(newId()), responseOf(file));
  } catch {
    return { parkedCount: 0, not: 'noSpace' };
  }
  tell();
  const tooLarge = files.some(({ size }) => size > receivedLimits.fileBytes);
  return { parkedCount: taken.length, not: tooLarge ? 'tooLarge' : taken.length < files.length ? 'tooMany' : null };
}

/** What waits, the oldest first. What waited for more than a day is gone. */
export async function receivedFiles(): Promise<readonly Received[]> {
  if (typeof caches === 'undefined' || !(await caches.has(cacheName))) return [];
  const cache = await caches.open(cacheName);
  const found: Received[] = [];
  for (const request of await cache.keys()) {
    const response = await cache.match(request);
    const receivedAt = response?.headers.get(atHeader) ?? '';
    if (response === undefined || isOld(receivedAt)) {
      await cache.delete(request);
      continue;
    }
    const { size } = await response.blob();
    found.push({ key: keyIn(request.url), name: nameIn(response), bytesCount: size, receivedAt });
  }
  return found.sort((a, b) => (a.receivedAt < b.receivedAt ? -1 : 1));
}

/** One of them as a file; null when it was taken up before, or waited too long. It stays until `forgetReceived`. */
export async function receivedFile(key: string): Promise<File | null> {
  if (typeof caches === 'undefined' || !keyPattern.test(key)) return null;
  const response = await (await caches.open(cacheName)).match(addressOf(key));
  if (response === undefined || isOld(response.headers.get(atHeader) ?? '')) return null;
  const blob = await response.blob();
  return new File([blob], nameIn(response), { type: blob.type });
}

/** It was taken in, refused, or put aside. */
export async function forgetReceived(key: string): Promise<void> {
  if (typeof caches === 'undefined' || !keyPattern.test(key)) return;
  await (await caches.open(cacheName)).delete(addressOf(key));
  tell();
}
