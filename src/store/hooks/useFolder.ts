/** The folder that the firm shares, as it stands, with the files in it that were not dealt with. Looked into while the page is in view. */
import { useCallback, useEffect, useState, useSyncExternalStore } from 'react';
import {
  askAgain,
  chooseFolder,
  type FolderFault,
  type FolderState,
  folderState,
  forgetFolder,
} from '../handOver/folder.ts';
import { type LookedInto, type NewFile, newFilesIn, watchFolder } from '../handOver/folderWatch.ts';
import { noteSeen } from '../handOver/seenFiles.ts';
import { noteError } from '../lastErrors.ts';
import { onBookState, openSession } from '../session.ts';

export interface FolderHere {
  /** null while it is asked for. */
  readonly state: FolderState | null;
  readonly files: readonly NewFile[];
  readonly waitingCount: number;
  readonly fault: FolderFault | null;
  /** Inside a tap: the browser's own dialog. */
  readonly choose: () => Promise<void>;
  /** Inside a tap: the browser asks whether the folder may be used again. */
  readonly openAgain: () => Promise<void>;
  readonly forget: () => Promise<void>;
  /** Taken in or put aside: it is not offered again. */
  readonly aside: (file: NewFile) => Promise<void>;
}

export function useFolder(): FolderHere {
  const session = useSyncExternalStore(onBookState, openSession);
  const [state, setState] = useState<FolderState | null>(null);
  const [looked, setLooked] = useState<LookedInto | null>(null);
  const [fault, setFault] = useState<FolderFault | null>(null);
  useEffect(() => {
    if (session === null) return setState({ kind: 'none' });
    folderState()
      .then(setState)
      .catch(() => setState({ kind: 'none' }));
  }, [session]);
  const ready = state?.kind === 'ready';
  useEffect(() => (ready ? watchFolder(setLooked) : undefined), [ready]);
  const tried = async (work: () => Promise<FolderState | null>): Promise<void> => {
    try {
      const next = await work();
      if (next !== null) setState(next);
      setFault(next?.kind === 'askAgain' ? 'permission' : null);
    } catch (error) {
      noteError(error);
      setFault('unknown');
    }
  };
  const aside = useCallback(
    async (file: NewFile) => {
      if (session === null) return;
      await noteSeen(session.db, [file]);
      setLooked((before) =>
        before?.kind === 'looked'
          ? { ...before, files: before.files.filter(({ name }) => name !== file.name) }
          : before,
      );
    },
    [session],
  );
  return {
    state,
    files: looked?.kind === 'looked' ? looked.files : [],
    waitingCount: looked?.kind === 'looked' ? looked.waiting.length : 0,
    fault: looked?.kind === 'failed' && looked.why !== 'none' ? looked.why : fault,
    choose: () => tried(chooseFolder),
    openAgain: () => tried(askAgain),
    forget: async () => {
      await forgetFolder();
      setState({ kind: 'none' });
      setLooked(null);
    },
    aside,
  };
}

/** One file of the folder by its name; undefined while it is asked for, null when it is not there or not whole yet. */
export function useFolderFile(name: string | null): NewFile | null | undefined {
  const [file, setFile] = useState<NewFile | null | undefined>(name === null ? null : undefined);
  useEffect(() => {
    let here = true;
    if (name === null) return setFile(null);
    void newFilesIn().then((looked) => {
      if (here) setFile(looked.kind === 'looked' ? (looked.files.find((each) => each.name === name) ?? null) : null);
    });
    return () => {
      here = false;
    };
  }, [name]);
  return file;
}
