/** Counts what reaches the database engine: requests made, rows handed back, and the durability of each writing transaction. */
import { IDBCursor, IDBIndex, IDBObjectStore, type IDBRequest } from 'fake-indexeddb';

export interface Counted {
  readonly requests: string[];
  rows: number;
  readonly durabilities: string[];
}

const asking = ['get', 'getAll', 'getKey', 'getAllKeys', 'openCursor', 'openKeyCursor', 'count', 'getAllRecords'];
const writing = ['add', 'put', 'delete', 'clear'];

type Method = (...args: unknown[]) => unknown;
type Methods = Record<string, Method | undefined>;

const rowsIn = (result: unknown): number =>
  Array.isArray(result) ? result.length : result === undefined || result === null || typeof result === 'number' ? 0 : 1;

/** Counts while `work` runs. */
export async function counting<T>(work: () => Promise<T>): Promise<Counted & { result: T }> {
  const counted: Counted = { requests: [], rows: 0, durabilities: [] };
  const undo: (() => void)[] = [];
  const seen = new Set<IDBTransaction>();
  const wrap = (owner: object, label: string, names: readonly string[]): void => {
    const methods = owner as Methods;
    for (const name of names) {
      const original = methods[name];
      if (original === undefined) continue;
      methods[name] = function wrapped(this: unknown, ...args: unknown[]) {
        const request = original.apply(this, args) as IDBRequest | undefined;
        counted.requests.push(`${label}.${name}`);
        const { transaction } = this as { transaction?: IDBTransaction };
        if (transaction?.mode === 'readwrite' && !seen.has(transaction)) {
          seen.add(transaction);
          counted.durabilities.push(transaction.durability);
        }
        if (asking.includes(name)) {
          request?.addEventListener('success', () => {
            counted.rows += rowsIn(request.result);
          });
        }
        return request;
      };
      undo.push(() => {
        methods[name] = original;
      });
    }
  };
  wrap(IDBObjectStore.prototype, 'store', [...asking, ...writing]);
  wrap(IDBIndex.prototype, 'index', asking);
  wrap(IDBCursor.prototype, 'cursor', ['continue', 'continuePrimaryKey', 'advance', 'update', 'delete']);
  try {
    return Object.assign(counted, { result: await work() });
  } finally {
    for (const restore of undo) restore();
  }
}
