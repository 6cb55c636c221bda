/** New files in the shared folder: looked for at the start, when the page comes into view, and every half minute while it is in view. */
import { monotonicMs, nowMs } from '../device.ts';
import { openSession, type Session } from '../session.ts';
import { type FolderFault, folderFaultOf } from './folder.ts';
import { type DirectoryHandle, keptHandle, nameOfError } from './folderHandle.ts';
import { markOf, type SeenFile, seenMarks } from './seenFiles.ts';

/** A file of another device that was not dealt with yet. `file` as it was when it was looked at. */
export interface NewFile extends SeenFile {
  readonly file: File;
}

export type LookedInto =
  /** `waiting`: files that are still growing or locked: they are looked at again. */
  | { readonly kind: 'looked'; readonly files: readonly NewFile[]; readonly waiting: readonly string[] }
  | { readonly kind: 'failed'; readonly why: FolderFault };

const handOverName = /^fullshift-.{1,150}\.(?:zip|age|txt)$/;
/** Decided here: a folder with more names than this is not one of ours. */
const mostNames = 5000;
/** Decided here: a file that nobody wrote to for a minute has come whole; a younger one must look the same twice. */
const settledMs = 60_000;
const everyMs = 30_000;

/** What the last look found, to be compared with this one. */
const lastLookOf = new WeakMap<Session, ReadonlySet<string>>();

async function namesIn(handle: DirectoryHandle): Promise<readonly string[]> {
  const names: string[] = [];
  let count = 0;
  for await (const name of handle.keys()) {
    count += 1;
    if (count > mostNames) break;
    if (handOverName.test(name)) names.push(name);
  }
  return names.sort();
}

async function fileNamed(handle: DirectoryHandle, name: string): Promise<File | 'locked' | 'gone'> {
  try {
    return await (await handle.getFileHandle(name)).getFile();
  } catch (error) {
    if (nameOfError(error) === 'NotAllowedError') throw error;
    return nameOfError(error) === 'NotFoundError' ? 'gone' : 'locked';
  }
}

const isOld = ({ lastModified }: File): boolean => nowMs() - lastModified > settledMs;

async function lookInto(session: Session, handle: DirectoryHandle): Promise<LookedInto> {
  const seen = await seenMarks(session.db);
  const before = lastLookOf.get(session) ?? new Set<string>();
  const marks = new Set<string>();
  const files: NewFile[] = [];
  const waiting: string[] = [];
  for (const name of await namesIn(handle)) {
    const file = await fileNamed(handle, name);
    if (file === 'gone') continue;
    if (file === 'locked') {
      waiting.push(name);
      continue;
    }
    const found = { name, size: file.size, lastModified: file.lastModified, file };
    const mark = markOf(found);
    marks.add(mark);
    if (seen.has(mark)) continue;
    if (file.size > 0 && (before.has(mark) || isOld(file))) files.push(found);
    else waiting.push(name);
  }
  lastLookOf.set(session, marks);
  return { kind: 'looked', files, waiting };
}

/** Looks into the folder once. Never throws for what a folder can do to us. */
export async function newFilesIn(): Promise<LookedInto> {
  const session = openSession();
  const handle = session === null ? null : await keptHandle(session);
  if (session === null || handle === null) return { kind: 'failed', why: 'none' };
  try {
    return await lookInto(session, handle);
  } catch (error) {
    return { kind: 'failed', why: folderFaultOf(error) };
  }
}

/** Tells of each look until the returned function is called. Two looks are never less than half a minute apart; out of view there is none. */
export function watchFolder(onLooked: (looked: LookedInto) => void): () => void {
  let timer: ReturnType<typeof setTimeout> | null = null;
  let lastMs = Number.NEGATIVE_INFINITY;
  let ended = false;
  let looking = false;
  const inView = (): boolean => document.visibilityState === 'visible';
  const stop = (): void => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
  };
  const plan = (): void => {
    if (ended || looking || timer !== null || !inView()) return;
    timer = setTimeout(() => void look(), Math.max(0, lastMs + everyMs - monotonicMs()));
  };
  const look = async (): Promise<void> => {
    timer = null;
    looking = true;
    lastMs = monotonicMs();
    const looked = await newFilesIn();
    looking = false;
    if (ended) return;
    onLooked(looked);
    plan();
  };
  const onView = (): void => (inView() ? plan() : stop());
  document.addEventListener('visibilitychange', onView);
  plan();
  return () => {
    ended = true;
    stop();
    document.removeEventListener('visibilitychange', onView);
  };
}
