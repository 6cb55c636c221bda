/** JSON pointers (RFC 6901, READ-2: only `~0` and `~1` are escapes) into the body of a fact. Nothing is changed in place. */

const forbidden = new Set(['__proto__', 'constructor', 'prototype']);

export const segmentsOf = (path: string): readonly string[] =>
  path
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));

/** Is `inner` the same place as `outer`, or inside it? */
export const isWithin = (inner: string, outer: string): boolean => inner === outer || inner.startsWith(`${outer}/`);

type Found = { readonly value: unknown } | null;

function child(value: unknown, key: string): Found {
  if (typeof value !== 'object' || value === null || forbidden.has(key) || !Object.hasOwn(value, key)) return null;
  if (Array.isArray(value) && !/^(0|[1-9]\d*)$/.test(key)) return null;
  return { value: (value as Record<string, unknown>)[key] };
}

/** What stands at a place; null when there is no such place. */
export function valueAt(value: unknown, segments: readonly string[]): Found {
  let found: Found = { value };
  for (const key of segments) {
    found = child(found.value, key);
    if (found === null) return null;
  }
  return found;
}

/** A copy with another value at a place that exists already; null when it does not. */
export function withValueAt(value: unknown, segments: readonly string[], replacement: unknown): Found {
  const [key, ...rest] = segments;
  if (key === undefined) return { value: replacement };
  const found = child(value, key);
  if (found === null) return null;
  const inner = withValueAt(found.value, rest, replacement);
  if (inner === null) return null;
  if (Array.isArray(value)) return { value: value.map((item, at) => (at === Number(key) ? inner.value : item)) };
  return { value: { ...(value as object), [key]: inner.value } };
}
