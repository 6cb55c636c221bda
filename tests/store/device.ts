/** A device for a test: an empty in-memory database engine, an empty localStorage, a clock that the test moves. */
import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb';
import { setPorts } from '#store/device.ts';
import { closeBook } from '#store/opening.ts';

export interface TestDevice {
  indexedDB: IDBFactory;
  storage: Map<string, string>;
}

export const newDevice = (): TestDevice => ({ indexedDB: new IDBFactory(), storage: new Map() });

const storageOf = (kept: Map<string, string>): Storage => ({
  get length() {
    return kept.size;
  },
  key: (at) => [...kept.keys()][at] ?? null,
  getItem: (key) => kept.get(key) ?? null,
  setItem: (key, value) => void kept.set(key, value),
  removeItem: (key) => void kept.delete(key),
  clear: () => kept.clear(),
});

/** Picks up a device: everything after this happens on it, until another is picked up. The book open before is closed. */
export async function pickUp(device: TestDevice): Promise<void> {
  await closeBook();
  Dexie.dependencies.indexedDB = device.indexedDB;
  Dexie.dependencies.IDBKeyRange = IDBKeyRange;
  Object.defineProperty(globalThis, 'indexedDB', { value: device.indexedDB, configurable: true, writable: true });
  Object.defineProperty(globalThis, 'localStorage', { value: storageOf(device.storage), configurable: true });
}

export interface TestClock {
  atMs: number;
  monotonicMs: number;
  /** Both clocks go on. */
  forward: (ms: number) => void;
}

/** A clock that stands still until the test moves it. */
export function testClock(at = '2026-11-25T11:00:00.000Z'): TestClock {
  const clock: TestClock = {
    atMs: Date.parse(at),
    monotonicMs: 1000,
    forward(ms) {
      clock.atMs += ms;
      clock.monotonicMs += ms;
    },
  };
  setPorts({ wallMs: () => clock.atMs, monotonicMs: () => clock.monotonicMs });
  return clock;
}
