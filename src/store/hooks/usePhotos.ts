/** Pictures for a screen: one that is being chosen, those on their way into the book, and those that are there. */
import { useLiveQuery } from 'dexie-react-hooks';
import { useCallback, useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import {
  forgetKept,
  handIn,
  letGo,
  type OutgoingPhoto,
  onOutgoingPhotos,
  outgoingPhotos,
  type PhotoWish,
  tryAgain,
} from '../photos/outgoing.ts';
import type { PhotoRefusedWhy, Prepared } from '../photos.ts';
import { onBookState, openSession } from '../session.ts';

const urlOf = (bytes: Uint8Array): string =>
  // Never by the type that a file claims: only ever shown as a picture.
  URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'image/jpeg' }));

export interface PhotoChoice {
  readonly state: 'none' | 'preparing' | 'ready' | 'refused';
  readonly why: PhotoRefusedWhy | null;
  /** Of the picture as it will be kept; revoked when it is removed, handed in or the page goes. */
  readonly url: string | null;
  readonly choose: (file: Blob) => void;
  readonly remove: () => void;
  /** Hands it in, ready or not, and is free for the next one. Without a picture it does nothing. Never awaited by a form. */
  readonly handIn: (wish: PhotoWish) => void;
}

const nothing = { state: 'none', why: null, url: null } as const;

function usePhotoChoice(): PhotoChoice {
  const [held, setHeld] = useState<Pick<PhotoChoice, 'state' | 'why' | 'url'>>(nothing);
  const coming = useRef<Promise<Prepared> | null>(null);
  const { url } = held;
  useEffect(() => () => (url === null ? undefined : URL.revokeObjectURL(url)), [url]);
  useEffect(
    () => () => {
      coming.current = null;
    },
    [],
  );
  const choose = useCallback((file: Blob) => {
    forgetKept();
    const prepared = import('../photos.ts').then(({ preparePhoto }) => preparePhoto(file));
    coming.current = prepared;
    setHeld({ ...nothing, state: 'preparing' });
    const isStillWanted = (): boolean => coming.current === prepared;
    prepared.then(
      (photo) => {
        if (!isStillWanted()) return;
        if (photo.kind === 'photo') return setHeld({ state: 'ready', why: null, url: urlOf(photo.file.bytes) });
        coming.current = null;
        setHeld({ ...nothing, state: 'refused', why: photo.why });
      },
      (error: unknown) => {
        console.error(error);
        if (!isStillWanted()) return;
        coming.current = null;
        setHeld({ ...nothing, state: 'refused', why: 'cannotRead' });
      },
    );
  }, []);
  const remove = useCallback(() => {
    coming.current = null;
    setHeld(nothing);
  }, []);
  const give = useCallback((wish: PhotoWish) => {
    if (coming.current !== null) void handIn(coming.current, wish);
    coming.current = null;
    // What was said of a file that is no picture is not said of the next one.
    setHeld(nothing);
  }, []);
  return { ...held, choose, remove, handIn: give };
}

/** Addresses of pictures by hash: null where this device does not hold the bytes; absent while it is looked for. */
function usePhotoUrls(hashes: readonly string[]): ReadonlyMap<string, string | null> {
  const session = useSyncExternalStore(onBookState, openSession);
  const asked = hashes.join(' ');
  const found = useLiveQuery(async () => {
    if (session === null || asked === '') return [];
    const wanted = asked.split(' ');
    const rows = await session.db.files.bulkGet(wanted);
    return wanted.map((hash, index) => [hash, rows[index]?.bytes ?? null] as const);
  }, [session, asked]);
  const [urls, setUrls] = useState<ReadonlyMap<string, string | null>>(new Map());
  const none = useMemo(() => new Map<string, string | null>(), []);
  useEffect(() => {
    const made = new Map((found ?? []).map(([hash, bytes]) => [hash, bytes === null ? null : urlOf(bytes)] as const));
    setUrls(made);
    return () => {
      for (const url of made.values()) if (url !== null) URL.revokeObjectURL(url);
    };
  }, [found]);
  return found === undefined ? none : urls;
}

export interface Pictures {
  readonly choice: PhotoChoice;
  readonly urls: ReadonlyMap<string, string | null>;
  /** On their way, from this page or another. */
  readonly outgoing: readonly OutgoingPhoto[];
  readonly onTryAgain: (id: string) => void;
  readonly onLetGo: (id: string) => void;
}

const again = (id: string): void => void tryAgain(id);

/** All that a page with pictures needs; what is kept is told once, and forgotten when the page goes. */
export function usePictures(photos: readonly { readonly hash: string }[]): Pictures {
  const choice = usePhotoChoice();
  const urls = usePhotoUrls(photos.map(({ hash }) => hash));
  const outgoing = useSyncExternalStore(onOutgoingPhotos, outgoingPhotos);
  useEffect(() => forgetKept, []);
  return { choice, urls, outgoing, onTryAgain: again, onLetGo: letGo };
}
