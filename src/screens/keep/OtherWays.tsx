/** The other ways out for a file that is ready: saved, downloaded, put into the folder that the firm shares. */
import { useEffect, useState } from 'react';
import { Notice } from '#parts/Notice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { WayOut } from '#store/handOver/delivery.ts';
import { askAgain, type FolderState, folderState, writeInto } from '#store/handOver/folder.ts';
import type { HandOver } from '#store/handOver/handOver.ts';
import type { HandOverHere } from '#store/hooks/useHandOver.ts';
import { folderFault } from '#words/folder.ts';
import { en as words } from '#words/handOver.ts';
import styles from './keep.module.css';

export interface OtherWaysProps {
  readonly file: HandOver;
  readonly ways: readonly WayOut[];
  readonly here: HandOverHere;
  readonly onWay: (way: WayOut) => void;
}

export function OtherWays({ file, ways, here, onWay }: OtherWaysProps) {
  const [folder, setFolder] = useState<FolderState>({ kind: 'none' });
  const [said, setSaid] = useState<{ readonly kind: 'quiet' | 'alert'; readonly text: string } | null>(null);
  useEffect(() => {
    void folderState()
      .then(setFolder)
      .catch(() => undefined);
  }, []);
  const intoFolder = async () => {
    const open = folder.kind === 'askAgain' ? await askAgain() : folder;
    setFolder(open);
    if (open.kind !== 'ready') return setSaid({ kind: 'alert', text: folderFault.permission });
    const delivery = await here.handOut(async () => {
      const written = await writeInto(file);
      setSaid(
        written.kind === 'written'
          ? { kind: 'quiet', text: words.intoFolder(written.name) }
          : { kind: 'alert', text: folderFault[written.why] },
      );
      return written.kind === 'written' ? { kind: 'saved' } : { kind: 'failed', why: 'unknown' };
    });
    if (delivery === null) setSaid(null);
  };
  const hasFolder = folder.kind === 'ready' || folder.kind === 'askAgain';
  if (ways.length === 0 && !hasFolder) return null;
  return (
    <>
      <div className={styles.actions}>
        {hasFolder && (
          <QuietAction busy={here.busy} onClick={() => void intoFolder()}>
            {words.ways.folder(folder.name)}
          </QuietAction>
        )}
        {ways.map((way) => (
          <QuietAction key={way} busy={here.busy} onClick={() => onWay(way)}>
            {words.ways[way]}
          </QuietAction>
        ))}
      </div>
      {said && <Notice kind={said.kind}>{said.text}</Notice>}
    </>
  );
}
