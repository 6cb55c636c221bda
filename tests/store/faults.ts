/** Makes the database engine fail at a chosen request, once or for ever, with the error that a phone would throw. */
import { IDBCursor, IDBDatabase, IDBFactory, IDBIndex, IDBObjectStore } from 'fake-indexeddb';

type Method = (...args: unknown[]) => unknown;
type Methods = Record<string, Method | undefined>;

const everything = ['get', 'getAll', 'getKey', 'getAllKeys', 'getAllRecords', 'openCursor', 'openKeyCursor', 'count'];
const changes = ['add', 'put', 'delete', 'clear'];

export interface Fault {
  /** The request that fails, counted from 1. */
  readonly at: number;
  readonly forEver: boolean;
  readonly error: () => Error;
  /** Only requests that change something: a full disk still reads. */
  readonly changesOnly?: boolean;
  /** One more, so many requests after the first: it falls into the recovery. */
  readonly then?: number;
  /** Also the opening and deleting of a database, the beginning of a transaction, and each step of a cursor. */
  readonly widely?: boolean;
  /** The request is made, and the engine aborts its transaction with the error: so a browser tells of a full disk. */
  readonly byAbort?: boolean;
}

export interface Faulted<T> {
  readonly result: T;
  /** False when the work was done before the fault's turn came. */
  readonly struck: boolean;
  /** How many times it failed. */
  readonly struckCount: number;
}

type Owner = readonly [prototype: Methods, names: readonly string[]];

function owners({ changesOnly = false, widely = false }: Fault): readonly Owner[] {
  const names = [...(changesOnly ? [] : everything), ...changes];
  const stores = [IDBObjectStore, IDBIndex].map(({ prototype }): Owner => [prototype as unknown as Methods, names]);
  if (!widely) return stores;
  const more: Owner[] = [
    [IDBCursor.prototype as unknown as Methods, ['continue', 'continuePrimaryKey', 'advance', 'update', 'delete']],
    [IDBDatabase.prototype as unknown as Methods, ['transaction']],
    [IDBFactory.prototype as unknown as Methods, ['open', 'deleteDatabase']],
  ];
  return [...stores, ...more];
}

/** The engine's own abort, with the name of the error; false where the request belongs to no transaction. */
function abortBehind(owner: unknown, { name }: Error): boolean {
  const { transaction, objectStore } = owner as Record<string, { transaction?: unknown } | undefined>;
  const found = (objectStore?.transaction ?? transaction) as { _abort?: (name: string) => void } | undefined;
  if (typeof found?._abort !== 'function') return false;
  found._abort(name);
  return true;
}

/** Counts requests and says which of them fail. */
function turns({ at, then, forEver }: Fault): () => boolean {
  let count = 0;
  const second = then === undefined ? Number.NaN : at + then;
  return () => {
    count += 1;
    return count === at || count === second || (forEver && count > at);
  };
}

/** Runs `work` with the fault in place. */
export async function withFault<T>(fault: Fault, work: () => Promise<T>): Promise<Faulted<T>> {
  const isItsTurn = turns(fault);
  let struckCount = 0;
  const undo: (() => void)[] = [];
  const wrap = (owner: Methods, name: string, original: Method): void => {
    owner[name] = function failing(this: unknown, ...args: unknown[]) {
      // That one is the engine's own, while it makes a database.
      if (args[1] === 'versionchange' || !isItsTurn()) return original.apply(this, args);
      if (fault.byAbort !== true) {
        struckCount += 1;
        throw fault.error();
      }
      const request = original.apply(this, args);
      if (abortBehind(this, fault.error())) struckCount += 1;
      return request;
    };
    undo.push(() => {
      owner[name] = original;
    });
  };
  for (const [owner, names] of owners(fault)) {
    for (const name of names) if (owner[name] !== undefined) wrap(owner, name, owner[name]);
  }
  try {
    return { result: await work(), struck: struckCount > 0, struckCount };
  } finally {
    for (const restore of undo) restore();
  }
}

export const lostConnection = (): Error =>
  new DOMException('Connection to Indexed Database server lost. Refresh the page to try again', 'UnknownError');
export const invalidState = (): Error => new DOMException('The database connection is closing.', 'InvalidStateError');
export const diskFull = (): Error => new DOMException('The quota has been exceeded.', 'QuotaExceededError');
