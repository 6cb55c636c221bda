/** CRC-32 as zip archives carry it (PKWARE APPNOTE, section 4.4.7); reversed polynomial 0xEDB88320, all bits turned over at both ends. */

const table = Uint32Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit += 1) value = (value & 1) === 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/** Of `bytes`, going on from `before`: the checksum of all bytes ahead of them, 0 at the beginning. */
export function checksum(bytes: Uint8Array, before = 0): number {
  let value = ~before;
  for (let at = 0; at < bytes.length; at += 1) value = (table[(value ^ (bytes[at] ?? 0)) & 255] ?? 0) ^ (value >>> 8);
  return ~value >>> 0;
}
