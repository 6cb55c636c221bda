/** Makes the database engine fail at a chosen request, once or for ever, with the error that a phone would throw. */
import { IDBIndex, IDBObjectStore } from 'fake-indexeddb';

type Method = (...args: unknown[]) => unknown;
type Methods = Record<string, Method | undefined>;

const everything = ['get', 'getAll', 'getKey', 'getAllKeys', 'openCursor', 'openKeyCursor', 'count'];
const changes = ['add', 'put', 'delete', 'clear'];

export interface Fault {
  /** The request that fails, counted from 1. */
  readonly at: number;
  readonly forEver: boolean;
  readonly error: () => Error;
  /** Only requests that change something: a full disk still reads. */
  readonly changesOnly?: boolean;
}

export interface Faulted<T> {
  readonly result: T;
  /** False when the work was done before the fault's turn came. */
  readonly struck: boolean;
}

/** Runs `work` with the fault in place. */
export async function withFault<T>(fault: Fault, work: () => Promise<T>): Promise<Faulted<T>> {
  let count = 0;
  let struck = false;
  const undo: (() => void)[] = [];
  for (const owner of [IDBObjectStore.prototype, IDBIndex.prototype] as unknown as Methods[]) {
    for (const name of [...(fault.changesOnly ? [] : everything), ...changes]) {
      const original = owner[name];
      if (original === undefined) continue;
      owner[name] = function failing(this: unknown, ...args: unknown[]) {
        count += 1;
        if (count === fault.at || (fault.forEver && count > fault.at)) {
          struck = true;
          throw fault.error();
        }
        return original.apply(this, args);
      };
      undo.push(() => {
        owner[name] = original;
      });
    }
  }
  try {
    return { result: await work(), struck };
  } finally {
    for (const restore of undo) restore();
  }
}

export const lostConnection = (): Error =>
  new DOMException('Connection to Indexed Database server lost. Refresh the page to try again', 'UnknownError');
export const invalidState = (): Error => new DOMException('The database connection is closing.', 'InvalidStateError');
export const diskFull = (): Error => new DOMException('The quota has been exceeded.', 'QuotaExceededError');
