/** Looking into a file and taking it in, with progress and a way to stop. Shared by the office's page and the first page of a device. */
import { useEffect, useRef, useState } from 'react';
import type { Looked, LookOptions, Preview, Progress } from '../handOver/handOver.ts';
import { noteError } from '../lastErrors.ts';

type Taken = Awaited<ReturnType<typeof import('../handOver/taking.ts').takeIn>>;

export interface Looking {
  readonly busy: boolean;
  readonly progress: Progress | null;
  readonly looked: Looked | null;
  readonly taken: Taken | null;
  readonly look: (file: Blob, options?: Pick<LookOptions, 'passphrase' | 'salvage'>) => Promise<Looked | null>;
  readonly take: (preview: Preview) => Promise<Taken | null>;
  /** Of a take-in, what was taken stays. */
  readonly stop: () => void;
  /** Another file was chosen. */
  readonly forget: () => void;
}

export function useLooking(): Looking {
  const [busy, setBusy] = useState(false);
  const [progress, setProgress] = useState<Progress | null>(null);
  const [looked, setLooked] = useState<Looked | null>(null);
  const [taken, setTaken] = useState<Taken | null>(null);
  const stopper = useRef<AbortController | null>(null);
  const here = useRef(true);
  const taking = useRef(false);
  useEffect(() => {
    here.current = true;
    return () => {
      here.current = false;
      // A look is of no use to a page that is gone; what is being taken in goes on to its end.
      if (!taking.current) stopper.current?.abort();
    };
  }, []);

  async function run<T>(work: (options: { signal: AbortSignal; onProgress: (p: Progress) => void }) => Promise<T>) {
    if (stopper.current !== null) return null;
    const stop = new AbortController();
    stopper.current = stop;
    setBusy(true);
    try {
      return await work({
        signal: stop.signal,
        onProgress: (now) => {
          if (here.current && !stop.signal.aborted) setProgress(now);
        },
      });
    } catch (error) {
      noteError(error);
      throw error;
    } finally {
      stopper.current = null;
      if (here.current) {
        setBusy(false);
        setProgress(null);
      }
    }
  }
  const look: Looking['look'] = async (file, options = {}) => {
    setLooked(null);
    setTaken(null);
    const { lookInto } = await import('../handOver/looking.ts');
    const found = await run(async (told) => {
      const seen = await lookInto(file, { ...options, ...told });
      if (seen.kind === 'preview') await (await import('../handOver/taking.ts')).noteNothingNew(seen);
      return seen;
    });
    if (here.current && found !== null) setLooked(found);
    return found;
  };
  const take: Looking['take'] = async (preview) => {
    const { takeIn } = await import('../handOver/taking.ts');
    taking.current = true;
    try {
      const outcome = await run((told) => takeIn(preview, told));
      if (here.current && outcome !== null) setTaken(outcome);
      return outcome;
    } finally {
      taking.current = false;
    }
  };
  return {
    busy,
    progress,
    looked,
    taken,
    look,
    take,
    stop: () => stopper.current?.abort(),
    forget: () => {
      setLooked(null);
      setTaken(null);
    },
  };
}
