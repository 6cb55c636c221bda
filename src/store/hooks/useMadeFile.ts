/** A file made on the tap and handed out at once: a sign, a blank form, a calendar file. Nothing of it goes into the book. */
import { useCallback, useRef, useState } from 'react';
import { type Delivery, deliver } from '../handOver/delivery.ts';
import { noteError } from '../lastErrors.ts';

export interface MadeFile {
  readonly state: 'none' | 'making' | 'ready' | 'failed';
  readonly outcome: Delivery | null;
  /** Makes it unless it was made, and hands it out. Where the device waited too long for that, the next tap hands it out. */
  readonly handOut: () => Promise<void>;
}

export interface FileWish {
  readonly name: string;
  readonly type: string;
  readonly make: () => Promise<Uint8Array | string>;
  /** What it is made from: a file made from something else is made anew. */
  readonly of: string;
}

export function useMadeFile({ name, type, make, of }: FileWish): MadeFile {
  const [state, setState] = useState<MadeFile['state']>('none');
  const [outcome, setOutcome] = useState<Delivery | null>(null);
  const held = useRef<{ readonly of: string; readonly blob: Blob } | null>(null);
  const handOut = useCallback(async () => {
    try {
      if (held.current?.of !== of) {
        setState('making');
        setOutcome(null);
        held.current = { of, blob: new Blob([(await make()) as Uint8Array<ArrayBuffer> | string], { type }) };
      }
      setState('ready');
    } catch (error) {
      noteError(error);
      console.error(error);
      return setState('failed');
    }
    setOutcome(await deliver(held.current.blob, name));
  }, [name, type, make, of]);
  return { state, outcome, handOut };
}
