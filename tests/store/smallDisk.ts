/** A disk that is full at a number of bytes: what is put beyond it is refused as a browser refuses it, and what is deleted makes room again. */
import { IDBObjectStore } from 'fake-indexeddb';
import { databaseNames } from '#store/database.ts';
import type { TestDevice } from './device.ts';
import { rowsIn } from './deviceCopy.ts';
import { diskFull } from './faults.ts';

type Method = (...args: unknown[]) => unknown;

const sizeOf = (value: unknown): number =>
  JSON.stringify(value, (_, inner) => (inner instanceof Uint8Array ? 'x'.repeat(inner.length) : inner)).length;

/** Bytes on the device now, of some of its tables or of all. */
export function bytesOn(device: TestDevice, only?: (table: string) => boolean): number {
  let bytes = 0;
  for (const [table, rows] of rowsIn(device, databaseNames.book))
    if (only?.(table) !== false) for (const row of rows) bytes += sizeOf(row);
  return bytes;
}

/** Runs `work` on a disk of so many bytes. `refusedCount`: how often there was no room. */
export async function onDiskOf<T>(
  device: TestDevice,
  mostBytes: number,
  work: () => Promise<T>,
): Promise<{ readonly result: T; readonly refusedCount: number }> {
  let refusedCount = 0;
  const methods = IDBObjectStore.prototype as unknown as Record<string, Method>;
  const originals = ['add', 'put'].map((name) => [name, methods[name] as Method] as const);
  for (const [name, original] of originals) {
    methods[name] = function withinDisk(this: unknown, ...args: unknown[]) {
      if (bytesOn(device) + sizeOf(args[0]) > mostBytes) {
        refusedCount += 1;
        throw diskFull();
      }
      return original.apply(this, args);
    };
  }
  try {
    return { result: await work(), refusedCount };
  } finally {
    for (const [name, original] of originals) methods[name] = original;
  }
}
