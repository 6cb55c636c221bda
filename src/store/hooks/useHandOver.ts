/** A file made ahead of the tap that hands it out, anew for each wish; what was being made for another wish is stopped. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { type Delivery, deliver } from '../handOver/delivery.ts';
import type { HandOver, HandOverWish, Progress } from '../handOver/handOver.ts';
import { makeHandOver } from '../handOver/making.ts';
import { noteError } from '../lastErrors.ts';
import { noteHandedOut } from '../sending.ts';

export type Making =
  | { readonly kind: 'idle' }
  | { readonly kind: 'making'; readonly progress: Progress | null }
  | { readonly kind: 'made'; readonly file: HandOver }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed' };

export interface HandOverHere {
  readonly making: Making;
  readonly outcome: Delivery | null;
  /** Being handed out now. */
  readonly busy: boolean;
  readonly stop: () => void;
  readonly again: () => void;
  /** Inside a tap. Resolves to what became of it; null while another one runs or no file is there. */
  readonly handOut: (way?: (file: HandOver) => Promise<Delivery>) => Promise<Delivery | null>;
}

export type WishedFor = Pick<HandOverWish, 'part' | 'partner' | 'passphrase' | 'writtenBy' | 'filesFrom'>;

/** Loaded when a file is made: schemas are not in the way of the page. */
const papers = async (): Promise<HandOverWish['papers']> => {
  const { dataDictionary } = await import('#records/dictionary.ts');
  return [{ name: 'md', text: dataDictionary() }];
};

export const hasLeft = (outcome: Delivery | null): boolean =>
  outcome !== null && (outcome.kind === 'shared' || outcome.kind === 'saved' || outcome.kind === 'downloaded');

/** `wish` null: nothing is made yet. `bookId`: another book, another file. */
export function useHandOver(bookId: string | null, wish: WishedFor | null): HandOverHere {
  const [making, setMaking] = useState<Making>({ kind: 'idle' });
  const [outcome, setOutcome] = useState<Delivery | null>(null);
  const [busy, setBusy] = useState(false);
  const [round, setRound] = useState(0);
  const running = useRef(false);
  const stopper = useRef<AbortController | null>(null);
  const asked = bookId === null || wish === null ? null : JSON.stringify([bookId, wish, round]);
  useEffect(() => {
    setOutcome(null);
    if (asked === null) return setMaking({ kind: 'idle' });
    const [, wanted] = JSON.parse(asked) as [string, WishedFor];
    const stop = new AbortController();
    stopper.current = stop;
    setMaking({ kind: 'making', progress: null });
    const onProgress = (progress: Progress): void => {
      if (!stop.signal.aborted) setMaking({ kind: 'making', progress });
    };
    papers()
      .then(async (carried) => makeHandOver({ ...wanted, papers: carried, onProgress, signal: stop.signal }))
      .then((file) => {
        if (!stop.signal.aborted) setMaking({ kind: 'made', file });
      })
      .catch((error: unknown) => {
        if (stop.signal.aborted) return;
        noteError(error);
        setMaking({ kind: 'failed' });
      });
    return () => stop.abort();
  }, [asked]);
  const stop = useCallback(() => {
    stopper.current?.abort();
    setMaking({ kind: 'stopped' });
  }, []);
  const again = useCallback(() => setRound((before) => before + 1), []);
  const handOut: HandOverHere['handOut'] = async (way = ({ blob, name }) => deliver(blob, name)) => {
    if (making.kind !== 'made' || running.current) return null;
    running.current = true;
    setBusy(true);
    try {
      const delivery = await way(making.file);
      if (hasLeft(delivery)) await noteHandedOut(making.file);
      setOutcome(delivery);
      return delivery;
    } finally {
      setBusy(false);
      running.current = false;
    }
  };
  return { making, outcome, busy, stop, again, handOut };
}
