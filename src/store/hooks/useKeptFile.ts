/** The bytes of an issued paper, fetched before the tap that hands them out: a share sheet opens only within seconds of a tap. */
import { useEffect, useState } from 'react';
import { getFile } from '../files.ts';
import { type Delivery, deliver } from '../handOver/delivery.ts';

export interface KeptFile {
  /** `none`: no paper yet. `missing`: this device holds the fact, not the bytes. */
  readonly state: 'none' | 'loading' | 'ready' | 'missing';
  readonly outcome: Delivery | null;
  readonly handOut: (name: string) => Promise<void>;
}

export function useKeptFile(hash: string | null): KeptFile {
  const [blob, setBlob] = useState<Blob | null | undefined>(undefined);
  const [outcome, setOutcome] = useState<Delivery | null>(null);
  useEffect(() => {
    let here = true;
    setBlob(undefined);
    setOutcome(null);
    if (hash === null) return;
    getFile(hash)
      .catch(() => null)
      .then((file) => {
        if (here) setBlob(file && new Blob([file.bytes as Uint8Array<ArrayBuffer>], { type: file.type }));
      });
    return () => {
      here = false;
    };
  }, [hash]);
  return {
    state: hash === null ? 'none' : blob === undefined ? 'loading' : blob === null ? 'missing' : 'ready',
    outcome,
    handOut: async (name) => {
      if (blob) setOutcome(await deliver(blob, name));
    },
  };
}
