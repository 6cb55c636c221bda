/**
 * A device as it stands, copied: the same start for thousands of runs without writing the book each time. The copy is made of the test
 * engine's own maps, so nothing of the store's code takes part in it.
 */
import { IDBFactory } from 'fake-indexeddb';
import type { TestDevice } from './device.ts';

interface RawRecords {
  values: () => Iterable<{ readonly key: unknown; readonly value: unknown }>;
  put: (record: { key: unknown; value: unknown }) => unknown;
}
interface RawIndex {
  readonly name: string;
  readonly keyPath: unknown;
  readonly multiEntry: boolean;
  readonly unique: boolean;
  readonly records: RawRecords;
  initialized: boolean;
}
interface RawStore {
  readonly name: string;
  readonly keyPath: unknown;
  readonly autoIncrement: boolean;
  readonly records: RawRecords;
  readonly rawIndexes: Map<string, RawIndex>;
}
interface RawDatabase {
  readonly name: string;
  readonly version: number;
  readonly rawObjectStores: Map<string, RawStore>;
}

type Made<T> = new (...args: readonly unknown[]) => T;
const anew = <T extends object>(like: T, ...args: readonly unknown[]): T => new (like.constructor as Made<T>)(...args);

const rawIn = (factory: IDBFactory): Map<string, RawDatabase> =>
  (factory as unknown as { _databases: Map<string, RawDatabase> })._databases;

function copyRecords(from: RawRecords, to: RawRecords): void {
  for (const { key, value } of from.values()) to.put({ key, value });
}

function copyStore(database: RawDatabase, store: RawStore): RawStore {
  const copy = anew(store, database, store.name, store.keyPath, store.autoIncrement);
  copyRecords(store.records, copy.records);
  for (const [name, index] of store.rawIndexes) {
    const twin = anew(index, copy, name, index.keyPath, index.multiEntry, index.unique);
    copyRecords(index.records, twin.records);
    twin.initialized = true;
    copy.rawIndexes.set(name, twin);
  }
  return copy;
}

/** Values are shared: the engine clones what goes in and what comes out. The device must be closed. */
export function copyOf({ indexedDB, storage }: TestDevice): TestDevice {
  const factory = new IDBFactory();
  for (const [name, database] of rawIn(indexedDB)) {
    const copy = anew(database, database.name, database.version);
    for (const [storeName, store] of database.rawObjectStores)
      copy.rawObjectStores.set(storeName, copyStore(copy, store));
    rawIn(factory).set(name, copy);
  }
  return { indexedDB: factory, storage: new Map(storage) };
}

/** Every row of every store, read out of the engine itself: whatever the page's code believes. */
export function rowsIn({ indexedDB }: TestDevice, database: string): ReadonlyMap<string, readonly unknown[]> {
  const stores = rawIn(indexedDB).get(database)?.rawObjectStores ?? new Map<string, RawStore>();
  return new Map([...stores].map(([name, store]) => [name, [...store.records.values()].map(({ value }) => value)]));
}
