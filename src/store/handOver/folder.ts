/**
 * A folder that the firm shares, where the browser can open one: hand-over files are written into it, and those of other devices are
 * noticed. The browser asks the person again after a restart, by a tap. Where it cannot, every other way goes on working.
 */

import { now } from '../device.ts';
import { theSession } from '../session.ts';
import { type DirectoryHandle, keepHandle, keptHandle, nameOfError } from './folderHandle.ts';
import type { HandOver } from './handOver.ts';
import { noteSeen, type SeenFile } from './seenFiles.ts';

export type FolderState =
  | { readonly kind: 'none' }
  /** The browser wants a tap before it opens the folder again. */
  | { readonly kind: 'askAgain' | 'ready' | 'gone'; readonly name: string };

/** `locked`: another program holds the file; `full`: no room. */
export type FolderFault = 'none' | 'permission' | 'gone' | 'locked' | 'full' | 'unknown';

type Chooser = (options: { mode: 'readwrite'; id: string }) => Promise<DirectoryHandle>;
const chooser = (): Chooser | undefined =>
  (globalThis as { showDirectoryPicker?: Chooser }).showDirectoryPicker?.bind(globalThis) as Chooser | undefined;

export const canChooseFolder = (): boolean => chooser() !== undefined;

export function folderFaultOf(error: unknown): FolderFault {
  const name = nameOfError(error);
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'permission';
  if (name === 'NotFoundError') return 'gone';
  if (name === 'NoModificationAllowedError' || name === 'NotReadableError' || name === 'InvalidStateError')
    return 'locked';
  return name === 'QuotaExceededError' ? 'full' : 'unknown';
}

/** A folder that was moved or renamed is there no more under its handle: the first look into it tells. */
async function stateOf(handle: DirectoryHandle): Promise<FolderState> {
  const { name } = handle;
  if ((await handle.queryPermission({ mode: 'readwrite' })) !== 'granted') return { kind: 'askAgain', name };
  try {
    await handle.keys().next();
    return { kind: 'ready', name };
  } catch (error) {
    return { kind: folderFaultOf(error) === 'permission' ? 'askAgain' : 'gone', name };
  }
}

/** How the chosen folder stands. Asks the person nothing. */
export async function folderState(): Promise<FolderState> {
  const handle = await keptHandle(theSession());
  return handle === null ? { kind: 'none' } : stateOf(handle);
}

/** In a tap: the browser's own dialog. null when the person closed it. Throws where no folder can be chosen: do not offer it there. */
export async function chooseFolder(): Promise<FolderState | null> {
  const choose = chooser();
  if (choose === undefined) throw new Error('This browser opens no folders');
  const session = theSession();
  try {
    const handle = await choose({ mode: 'readwrite', id: 'fullshift' });
    await keepHandle(session, handle);
    return await stateOf(handle);
  } catch (error) {
    if (nameOfError(error) === 'AbortError') return null;
    throw error;
  }
}

/** In a tap: the browser asks whether the folder may be used again. */
export async function askAgain(): Promise<FolderState> {
  const handle = await keptHandle(theSession());
  if (handle === null) return { kind: 'none' };
  await handle.requestPermission({ mode: 'readwrite' });
  return stateOf(handle);
}

/** The folder is left as it is; only the book forgets it. */
export const forgetFolder = (): Promise<void> => keepHandle(theSession(), null);

export type WrittenInto =
  | { readonly kind: 'written'; readonly name: string }
  | { readonly kind: 'failed'; readonly why: FolderFault };

/** Two devices may make a file in the same minute: the mark of the writer keeps them apart, a number what one device makes twice. */
async function freeName(handle: DirectoryHandle, name: string, writer: string): Promise<string> {
  const [, stem = name, rest = ''] = /^(.*?)(\.zip(?:\.age)?)$/.exec(name) ?? [];
  for (let count = 1; ; count += 1) {
    const tried = `${stem}-${writer.slice(0, 4)}${count === 1 ? '' : `-${count}`}${rest}`;
    try {
      await handle.getFileHandle(tried);
    } catch (error) {
      if (nameOfError(error) === 'NotFoundError') return tried;
      throw error;
    }
  }
}

/** The browser writes beside the file and puts it in its place when it is closed; until then the name holds no bytes at all. */
async function writeWhole(handle: DirectoryHandle, name: string, blob: Blob): Promise<SeenFile> {
  const fileHandle = await handle.getFileHandle(name, { create: true });
  try {
    const writable = await fileHandle.createWritable();
    try {
      await writable.write(blob);
    } catch (error) {
      await writable.abort();
      throw error;
    }
    await writable.close();
    const { size, lastModified } = await fileHandle.getFile();
    return { name, size, lastModified };
  } catch (error) {
    // The empty name is taken away again, if the folder still lets us; what went wrong is told either way.
    await handle.removeEntry(name).catch(() => undefined);
    throw error;
  }
}

/** Writes a file into the folder. What is there is never overwritten, and a file that could not be written whole is not there. */
export async function writeInto({ blob, name }: Pick<HandOver, 'blob' | 'name'>): Promise<WrittenInto> {
  const session = theSession();
  const handle = await keptHandle(session);
  if (handle === null) return { kind: 'failed', why: 'none' };
  try {
    const free = await freeName(handle, name, session.writer);
    const own = await writeWhole(handle, free, blob);
    await noteSeen(session.db, [own]);
    await session.db.meta.put({ key: 'folderWritten', value: { at: now(), name: free } });
    return { kind: 'written', name: free };
  } catch (error) {
    return { kind: 'failed', why: folderFaultOf(error) };
  }
}
