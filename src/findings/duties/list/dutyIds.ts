/**
 * The id of a duty: kind '.' subjects, so that two devices mean the same one and a done duty stays done. It is the id of the record
 * that says so, and the UID of its date in a calendar: letters, digits, dots and hyphens only, 120 at most.
 */

const digits = '0123456789abcdefghjkmnpqrstvwxyz';
const plain = /^[0-9a-zA-Z-]{1,24}(\.\d{4}-\d\d-\d\d)?$/;
const mask = 0xffffffffffffffffn;

/** FNV-1a over the letters, 64 bits, in 13 letters of base 32: tells two group keys apart, proves nothing. */
export function shortHash(text: string): string {
  let hash = 0xcbf29ce484222325n;
  for (const character of text) {
    hash ^= BigInt(character.codePointAt(0) ?? 0);
    hash = (hash * 0x100000001b3n) & mask;
  }
  let written = '';
  for (let shift = 60n; shift >= 0n; shift -= 5n) written += digits[Number((hash >> shift) & 31n)];
  return written;
}

/** A record id or a work day stands as it is; a group key, or a name out of a day file, as its hash. */
export const subjectOf = (id: string): string => (plain.test(id) ? id : `h${shortHash(id)}`);

/** Stable for the same kind and subjects, in this order. */
export const dutyIdOf = (kind: string, subjects: readonly string[]): string =>
  [kind, ...subjects.map(subjectOf)].join('.');
