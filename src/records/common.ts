/** Shapes that many facts share. Schemas are loose: unknown keys of a newer version are kept and carried. */
import { z } from 'zod';

/** A random record id: 12 Crockford base-32 characters, 60 bits. Never a label, never shown as one. */
export const recordId = z.string().regex(/^[0-9a-hjkmnp-tv-z]{12}$/);
/** writer (60 random bits) + '.' + sequence in eight digits. Sorts in writer order. */
export const factId = z.string().regex(/^[0-9a-hjkmnp-tv-z]{12}\.\d{8}$/);
/** An instant in UTC, to the millisecond: 2026-11-25T10:12:00.000Z */
export const instant = z.iso.datetime({ precision: 3 });
/** A calendar day at the job: 2026-11-25 */
export const day = z.iso.date();
export const text = z.string().trim().min(1).max(400);
export const note = z.string().max(2000);
export const language = z.enum(['en', 'es']);
export const yesNoNotStated = z.enum(['yes', 'no', 'notStated']);

/** One worker's work day. Deterministic, so that two devices mean the same record: workerId '.' work day. */
export const workdayId = z.string().regex(/^[0-9a-hjkmnp-tv-z]{12}\.\d{4}-\d{2}-\d{2}$/);
/** One site's day: siteId '.' day. */
export const shiftId = workdayId;

/** `kind:id`, the name of the record that a fact touches. Facts carry it openly, so that an unknown kind still reaches its record. */
export const recordKey = z.string().regex(/^[a-zA-Z]+:[0-9a-zA-Z.-]+$/);

export { keyOf, type RecordKey, type RecordKind, recordKinds } from './recordKinds.ts';
