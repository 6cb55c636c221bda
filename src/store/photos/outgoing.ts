/**
 * Pictures on their way into the book. A form that is saved hands its picture in here and goes on; what could not be kept stays, to be
 * tried again from any page, for as long as the app is not loaded anew. Nothing here can hold up or undo what was saved before.
 */
import type { Entry } from '../newFact.ts';
import type { PhotoOf, PhotoRefusedWhy, Prepared, PreparedPhoto } from '../photos.ts';
import { openSession } from '../session.ts';
import type { FailedWhy } from '../write.ts';

export interface PhotoWish {
  readonly recordKey: string;
  readonly of: PhotoOf;
  /** What it is a picture of, in words, for whoever reads of it on another page. */
  readonly title: string;
  readonly entry: Entry;
}

export type NotKeptWhy = PhotoRefusedWhy | FailedWhy | 'refused' | 'otherBook';

export interface OutgoingPhoto extends PhotoWish {
  readonly id: string;
  readonly bookId: string | null;
  readonly state: 'keeping' | 'kept' | 'notKept';
  readonly why: NotKeptWhy | null;
  /** null while it is made small, and when it cannot be: then there is nothing to try again. */
  readonly photo: PreparedPhoto | null;
}

let photos: readonly OutgoingPhoto[] = [];
let count = 0;
const listeners = new Set<() => void>();

export const outgoingPhotos = (): readonly OutgoingPhoto[] => photos;

export function onOutgoingPhotos(listener: () => void): () => void {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

function set(next: readonly OutgoingPhoto[]): void {
  photos = next;
  for (const listener of listeners) listener();
}

const change = (id: string, part: Partial<OutgoingPhoto>): void =>
  set(photos.map((each) => (each.id === id ? { ...each, ...part } : each)));

/** A person goes on without it, or has seen that it is kept. */
export const letGo = (id: string): void => set(photos.filter((each) => each.id !== id));

/** What is kept need not be told twice. */
export const forgetKept = (): void => {
  if (photos.some(({ state }) => state === 'kept')) set(photos.filter(({ state }) => state !== 'kept'));
};

async function writeDown(id: string, photo: PreparedPhoto): Promise<void> {
  const wish = photos.find((each) => each.id === id);
  if (wish === undefined) return;
  if (openSession()?.bookId !== wish.bookId) return change(id, { state: 'notKept', why: 'otherBook' });
  const { keepPhoto } = await import('../photos.ts');
  const written = await keepPhoto(wish.recordKey, wish.of, photo, wish.entry);
  if (written.kind === 'written') return change(id, { state: 'kept', why: null, photo: null });
  change(id, { state: 'notKept', why: written.kind === 'refused' ? 'refused' : written.why });
}

async function goOn(id: string, coming: Promise<Prepared>): Promise<void> {
  try {
    const prepared = await coming;
    if (prepared.kind === 'refused') return change(id, { state: 'notKept', why: prepared.why });
    change(id, { photo: prepared });
    await writeDown(id, prepared);
  } catch (error) {
    // A bug is shown where bugs are looked for, and the picture stays to be tried again.
    console.error(error);
    change(id, { state: 'notKept', why: 'unknown' });
  }
}

/** Hands a picture in, made small already or still on the way there. Resolves when it is kept or known not to be. */
export function handIn(coming: Promise<Prepared>, wish: PhotoWish): Promise<void> {
  count += 1;
  const id = `photo${count}`;
  const bookId = openSession()?.bookId ?? null;
  set([
    ...photos.filter(({ state }) => state !== 'kept'),
    { ...wish, id, bookId, state: 'keeping', why: null, photo: null },
  ]);
  return goOn(id, coming);
}

export async function tryAgain(id: string): Promise<void> {
  const photo = photos.find((each) => each.id === id)?.photo;
  if (photo == null) return;
  change(id, { state: 'keeping', why: null });
  await goOn(id, Promise.resolve(photo));
}
