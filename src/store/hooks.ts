/**
 * What screens read. Live: a hook answers again after every write, in this tab or another. undefined = still loading, null = there is
 * no such record. Reads go by index to derived rows; nothing here writes but a draft.
 */
import { useLiveQuery } from 'dexie-react-hooks';
import { useCallback, useEffect, useRef, useState, useSyncExternalStore } from 'react';
import type {
  Book,
  BoxRecord,
  JobClassificationRecord,
  LaboratoryRecord,
  LotRecord,
  MeterRecord,
  PersonRecord,
  PumpRecord,
  SampleRecord,
  ShiftRecord,
  SiteRecord,
} from '#records/book.ts';
import { type BookCounts, type BookMeta, bookCounts, bookMeta } from './bookMeta.ts';
import type { BookDatabase } from './database.ts';
import { now } from './device.ts';
import { clearDraft, flushDraft, loadDraft, setDraft } from './drafts.ts';
import {
  awaitingResults,
  boxBook,
  boxes,
  newestShifts,
  registerRows,
  type SamplePage,
  sampleBook,
  samplePage,
  shiftBook,
  workdayBook,
} from './reading.ts';
import { readTwice } from './reopening.ts';
import { type RunSheet, runSheet } from './runSheet.ts';
import { type BookState, bookState, onBookState, openSession, type Session } from './session.ts';
import { bookOf } from './slices.ts';

/** How the book stands on this device. */
export const useBookState = (): BookState => useSyncExternalStore(onBookState, bookState);

const useSession = (): Session | null => useSyncExternalStore(onBookState, openSession);

/** Runs `query` on the open book, again after each change. `deps` as in an effect. */
function useQuery<T>(query: (db: BookDatabase) => Promise<T>, deps: readonly unknown[]): T | undefined {
  const session = useSession();
  return useLiveQuery(() => (session === null ? undefined : readTwice(session.db, query)), [session, ...deps]);
}

export const useBookMeta = (): BookMeta | undefined => useQuery(bookMeta, []);

/** Counts over the whole book: they come later than the rest of a page. */
export const useBookCounts = (): BookCounts | undefined => useQuery(bookCounts, []);

/** One register: in order of entry, and by id. */
export interface Register<T> {
  readonly list: readonly T[];
  readonly byId: ReadonlyMap<string, T>;
}

export interface Registers {
  readonly sites: Register<SiteRecord>;
  readonly people: Register<PersonRecord>;
  readonly jobClassifications: Register<JobClassificationRecord>;
  readonly pumps: Register<PumpRecord>;
  readonly meters: Register<MeterRecord>;
  readonly lots: Register<LotRecord>;
  readonly laboratories: Register<LaboratoryRecord>;
}

const register = <T>(byId: ReadonlyMap<string, T>): Register<T> => ({ list: [...byId.values()], byId });

async function registers(db: BookDatabase): Promise<Registers> {
  const book = bookOf(await registerRows(db));
  return {
    sites: register(book.sites),
    people: register(book.people),
    jobClassifications: register(book.jobClassifications),
    pumps: register(book.pumps),
    meters: register(book.meters),
    lots: register(book.lots),
    laboratories: register(book.laboratories),
  };
}

/** People, places and gear. */
export const useRegisters = (): Registers | undefined => useQuery(registers, []);

/** The newest shifts, at most `limit`. */
export const useShifts = (limit: number): readonly ShiftRecord[] | undefined =>
  useQuery((db) => newestShifts(db, limit), [limit]);

export const useShiftBook = (shiftId: string): Book | null | undefined =>
  useQuery((db) => shiftBook(db, shiftId), [shiftId]);

export const useSampleBook = (sampleId: string): Book | null | undefined =>
  useQuery((db) => sampleBook(db, sampleId), [sampleId]);

export const useWorkdayBook = (workdayId: string): Book | null | undefined =>
  useQuery((db) => workdayBook(db, workdayId), [workdayId]);

export const useBoxBook = (boxId: string): Book | null | undefined => useQuery((db) => boxBook(db, boxId), [boxId]);

/** Every sample, newest first, a page at a time: hand `older` of one page as `before` of the next. */
export const useSampleList = (page: { limit: number; before?: string | null }): SamplePage | undefined =>
  useQuery((db) => samplePage(db, page.limit, page.before ?? null), [page.limit, page.before ?? null]);

export const useBoxes = (): readonly BoxRecord[] | undefined => useQuery(boxes, []);

/** Samples and blanks without a result, oldest first. */
export const useAwaitingResults = (): readonly SampleRecord[] | undefined => useQuery(awaitingResults, []);

/** All that the home screen needs; `today` is the calendar day at the site. */
export const useRunSheet = (today: string): RunSheet | undefined => useQuery((db) => runSheet(db, today), [today]);

/** The instant now, renewed every `everyMs` (at least one second), and when the page comes back into view. */
export function useNow(everyMs: number): string {
  const [instant, setInstant] = useState(now);
  useEffect(() => {
    const renew = (): void => setInstant(now());
    const timer = setInterval(renew, Math.max(1000, everyMs));
    document.addEventListener('visibilitychange', renew);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', renew);
    };
  }, [everyMs]);
  return instant;
}

export interface Draft<T> {
  readonly value: T;
  readonly set: (value: T) => void;
  /** Everything typed so far is on the disk. */
  readonly kept: boolean;
  /** False until an earlier draft has been looked for. */
  readonly loaded: boolean;
  readonly clear: () => void;
}

/**
 * What is being typed. `key` names record and screen (`sample:<id>/stop`); the tab is added. Hand the same key to `write` as draftKey,
 * and the draft goes in the transaction that makes it good.
 */
export function useDraft<T>(key: string, initial: T): Draft<T> {
  const session = useSession();
  const [held, setHeld] = useState<{ value: T; kept: boolean; loaded: boolean }>({
    value: initial,
    kept: true,
    loaded: false,
  });
  const typed = useRef(false);
  const first = useRef(initial);
  const blank = useRef(initial);
  blank.current = initial;
  useEffect(() => {
    typed.current = false;
    first.current = blank.current;
    setHeld({ value: first.current, kept: true, loaded: false });
    let here = true;
    if (session === null) return;
    void loadDraft(session.db, key)
      .catch(() => null)
      .then((found) => {
        if (!here || typed.current) return;
        setHeld({ value: found === null ? first.current : (found.value as T), kept: true, loaded: true });
      });
    return () => {
      here = false;
      void flushDraft(key);
    };
  }, [session, key]);
  const set = useCallback(
    (value: T) => {
      typed.current = true;
      setHeld({ value, kept: false, loaded: true });
      setDraft(key, value, (kept) => setHeld((now) => (now.value === value ? { ...now, kept } : now)));
    },
    [key],
  );
  const clear = useCallback(() => {
    typed.current = true;
    setHeld({ value: first.current, kept: true, loaded: true });
    void clearDraft(key);
  }, [key]);
  return { ...held, set, clear };
}
