/**
 * The one file that reads the device's clock and random numbers. Everything else is handed an instant or an id.
 * Instants are ISO strings in UTC to the millisecond; ids are 60 random bits in Crockford's base 32.
 */
import { offsetMinAt } from '#core/calendar.ts';
import type { Happened } from '#records/fact.ts';

const alphabet = '0123456789abcdefghjkmnpqrstvwxyz';

interface Ports {
  wallMs: () => number;
  monotonicMs: () => number;
  random: (bytes: Uint8Array<ArrayBuffer>) => void;
}

const ownPorts: Ports = {
  wallMs: () => Date.now(),
  monotonicMs: () => performance.now(),
  random: (bytes) => void crypto.getRandomValues(bytes),
};
let ports = ownPorts;

/** Tests hand in a clock or a seeded source; without an argument the device's own come back. */
export function setPorts(changed: Partial<Ports> = {}): void {
  ports = { ...ownPorts, ...changed };
}

/** Wall clock, milliseconds since 1970 in UTC. */
export const nowMs = (): number => ports.wallMs();

/** The instant now, UTC, to the millisecond. */
export const now = (): string => new Date(ports.wallMs()).toISOString();

/** Milliseconds of a clock that nobody can set back; stops during sleep on most phones. Only compared with itself, in one run. */
export const monotonicMs = (): number => ports.monotonicMs();

/** 60 random bits, 12 characters: a record id. */
export function newId(): string {
  const bytes = new Uint8Array(12);
  ports.random(bytes);
  return Array.from(bytes, (byte) => alphabet[byte & 31]).join('');
}

/** A whole number from 0 up to, not with, `count` (at most 65,536), each as likely as any other: what would tip the scale is drawn again. */
export function drawBelow(count: number): number {
  const even = 65_536 - (65_536 % count);
  const bytes = new Uint8Array(2);
  for (;;) {
    ports.random(bytes);
    const drawn = (bytes[0] ?? 0) * 256 + (bytes[1] ?? 0);
    if (drawn < even) return drawn % count;
  }
}

/** A writer is drawn anew whenever a database is created, restored into or found emptied. */
export const newWriter = newId;

/** The zone the device is set to: an IANA name. */
export const deviceZone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC';

/** A tap: it happened now, at the site's zone. Throws on a zone that the device does not know. */
export function happenedNow(zone: string): Happened {
  const at = now();
  return { at, zone, offsetMin: offsetMinAt(at, zone), entry: 'tapped', from: null };
}

/** Asks the browser not to evict this origin. null where the browser has no such question. */
export async function persist(): Promise<boolean | null> {
  return typeof navigator !== 'undefined' && navigator.storage?.persist ? navigator.storage.persist() : null;
}

/** Whether the browser has promised not to evict this origin; null where it does not say. */
export async function persisted(): Promise<boolean | null> {
  return typeof navigator !== 'undefined' && navigator.storage?.persisted ? navigator.storage.persisted() : null;
}

/** Bytes in use; null where the browser does not say. Its quota is no warning light and is left out on purpose. */
export async function estimate(): Promise<{ usedBytes: number | null }> {
  if (typeof navigator === 'undefined' || !navigator.storage?.estimate) return { usedBytes: null };
  return { usedBytes: (await navigator.storage.estimate()).usage ?? null };
}
