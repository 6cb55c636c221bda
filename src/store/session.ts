/** Which book is open in this tab, and how it stands. One per tab; screens hear of changes through hooks.ts. */
import { BookDatabase, databaseNames, type Which } from './database.ts';

/**
 * What screens show first. `none`: nothing was ever held here: new book, or restore. `evicted`: the device held a book and it is gone.
 * `newerVersion`: a newer version wrote here; nothing is written until this page is updated.
 */
export type BookState =
  | { readonly kind: 'opening' }
  | { readonly kind: 'none'; readonly which: Which }
  | {
      readonly kind: 'open';
      readonly which: Which;
      readonly bookId: string;
      /** Lists are being rebuilt from the journal: not complete until then. */
      readonly rebuilding: { readonly done: number; readonly total: number } | null;
      /** Ids of journal rows that could not be read: kept, left out, told. */
      readonly unreadable: readonly string[];
    }
  | { readonly kind: 'evicted'; readonly which: Which }
  | { readonly kind: 'newerVersion'; readonly which: Which }
  | { readonly kind: 'failed'; readonly which: Which; readonly why: 'blocked' | 'closedElsewhere' | 'unknown' };

/** This tab's hold on an open book. */
export interface Session {
  readonly which: Which;
  readonly db: BookDatabase;
  readonly bookId: string;
  /** Another one from the moment on that a copy of this device is seen to write as it does. */
  writer: string;
  /** The highest own sequence that this tab has seen committed; 0 when the writer is new. */
  lastSequence: number;
  /** The two digits that sample numbers made here begin with. */
  prefix: string;
}

let state: BookState = { kind: 'opening' };
let session: Session | null = null;
const listeners = new Set<() => void>();

export const bookState = (): BookState => state;
export const openSession = (): Session | null => session;

/** Throws when no book is open: screens that write are only shown in an open book. */
export function theSession(): Session {
  if (session === null) throw new Error('No book is open');
  return session;
}

/** Sets state and session together, so that nobody sees one without the other. */
export function setBookState(next: BookState, held: Session | null = session): void {
  state = next;
  session = held;
  for (const listener of listeners) listener();
}

/** Tells `listener` of every change until the returned function is called. */
export function onBookState(listener: () => void): () => void {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

export const databaseOf = (which: Which): BookDatabase => new BookDatabase(databaseNames[which]);
