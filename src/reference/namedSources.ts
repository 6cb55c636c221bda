/** Sources by name inside a file of shared/. Apart from the schemas, for the one rule that the first page reads without them. */

/**
 * A file of shared/ names each source once, in `sources`, and its values name the source by key. Gives the same data with every
 * key replaced by the source itself; an unknown key throws.
 */
export function withSources(file: object): unknown {
  const { sources, ...rest } = file as { sources?: Record<string, unknown> };
  return putSources(rest, sources ?? {});
}

function putSources(value: unknown, sources: Record<string, unknown>): unknown {
  if (Array.isArray(value)) return value.map((one) => putSources(one, sources));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => {
      if (key !== 'source' || typeof inner !== 'string') return [key, putSources(inner, sources)];
      if (!(inner in sources)) throw new Error(`no source named ${inner}`);
      return [key, sources[inner]];
    }),
  );
}
