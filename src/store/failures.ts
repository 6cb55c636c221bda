/** What a device's database throws, told apart. Quota errors arrive as AbortError with the real one inside. */

export type StorageFailure = 'quota' | 'lost' | 'unknown';

interface Nested {
  readonly name?: unknown;
  readonly message?: unknown;
  readonly inner?: unknown;
  readonly cause?: unknown;
}

/** The error and everything wrapped in it. */
function layersOf(error: unknown): readonly Nested[] {
  const layers: Nested[] = [];
  let next: unknown = error;
  while (typeof next === 'object' && next !== null && layers.length < 6) {
    layers.push(next as Nested);
    next = (next as Nested).inner ?? (next as Nested).cause;
  }
  return layers;
}

const lostNames = new Set(['UnknownError', 'InvalidStateError', 'DatabaseClosedError', 'TransactionInactiveError']);

/** Sorts an error; null when no database can have thrown it, so that a bug stays a bug. */
export function storageFailure(error: unknown): StorageFailure | null {
  const layers = layersOf(error);
  if (layers.some(({ name }) => name === 'QuotaExceededError')) return 'quota';
  if (
    layers.some(({ name, message }) => lostNames.has(String(name)) || /connection.*(lost|clos)/i.test(String(message)))
  ) {
    return 'lost';
  }
  const isBug = layers.some(({ name }) =>
    ['TypeError', 'ReferenceError', 'RangeError', 'Error'].includes(String(name)),
  );
  return isBug && layers.length === 1 ? null : 'unknown';
}
