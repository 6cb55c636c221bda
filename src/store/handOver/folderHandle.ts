/**
 * The handle of the chosen folder, kept in the book's meta table: browsers that open folders can store their handles there. One that
 * cannot be stored is held for this run of the app only.
 */
import type { Session } from '../session.ts';

export interface FileHandle {
  readonly kind: 'file';
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{
    write(data: Blob): Promise<void>;
    close(): Promise<void>;
    abort(): Promise<void>;
  }>;
}

/** What is used of a folder's handle (File System Access, Chromium): the library of browser types does not hold all of it. */
export interface DirectoryHandle {
  readonly kind: 'directory';
  readonly name: string;
  queryPermission(wish: { mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission(wish: { mode: 'readwrite' }): Promise<PermissionState>;
  keys(): AsyncIterableIterator<string>;
  getFileHandle(name: string, options?: { create: boolean }): Promise<FileHandle>;
  removeEntry(name: string): Promise<void>;
}

export const nameOfError = (error: unknown): string =>
  error instanceof Error || error instanceof DOMException ? error.name : '';

const heldOnly = new WeakMap<Session['db'], DirectoryHandle>();

/** null: none was chosen. */
export async function keptHandle({ db }: Session): Promise<DirectoryHandle | null> {
  const held = heldOnly.get(db);
  if (held !== undefined) return held;
  return ((await db.meta.get('folder'))?.value as DirectoryHandle | undefined) ?? null;
}

/** null forgets it. */
export async function keepHandle({ db }: Session, handle: DirectoryHandle | null): Promise<void> {
  heldOnly.delete(db);
  if (handle === null) return void (await db.meta.delete('folder'));
  try {
    await db.meta.put({ key: 'folder', value: handle });
  } catch (error) {
    if (nameOfError(error) !== 'DataCloneError') throw error;
    heldOnly.set(db, handle);
  }
}
