/** Files that came from outside, for pages: what waits, and one of them to be looked into. */
import { useCallback, useEffect, useState } from 'react';
import { forgetReceived, onReceived, type Received, receivedFile, receivedFiles } from '../received.ts';

/** null while the device is asked. Where it cannot say, nothing waits. */
export function useReceived(): readonly Received[] | null {
  const [waiting, setWaiting] = useState<readonly Received[] | null>(null);
  useEffect(() => {
    let here = true;
    const look = () =>
      void receivedFiles()
        .catch(() => [])
        .then((found) => {
          if (here) setWaiting(found);
        });
    look();
    const leave = onReceived(look);
    return () => {
      here = false;
      leave();
    };
  }, []);
  return waiting;
}

export interface ReceivedHere {
  /** undefined: still asked for. null: none was named, or it waits no longer. */
  readonly file: File | null | undefined;
  /** It was taken in, or refused: it is let go. The file in hand stays readable. */
  readonly done: () => void;
}

/** The file that the address of a page names: `/take-in?received=<key>`. */
export function useReceivedFile(key: string | null): ReceivedHere {
  const [file, setFile] = useState<File | null | undefined>(key === null ? null : undefined);
  useEffect(() => {
    let here = true;
    if (key === null) return setFile(null);
    setFile(undefined);
    receivedFile(key)
      .catch(() => null)
      .then((found) => {
        if (here) setFile(found);
      });
    return () => {
      here = false;
    };
  }, [key]);
  const done = useCallback(() => {
    if (key !== null) void forgetReceived(key).catch(() => undefined);
  }, [key]);
  return { file, done };
}
