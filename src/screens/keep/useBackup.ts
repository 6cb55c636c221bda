/** The backup is made as soon as the page opens, so that the tap only hands it out: a share sheet opens only within seconds of a tap. */
import { useEffect, useRef, useState } from 'react';
import { type Delivery, deliver } from '#store/handOver/delivery.ts';
import type { HandOver } from '#store/handOver/handOver.ts';
import { makeHandOver, noteHandedOut } from '#store/handOver/making.ts';
import { appVersion } from '#store/version.ts';

/** With the data dictionary, for whoever reads the book without the app. Its schemas are loaded here, out of the first page's way. */
async function backupWithPapers(): Promise<HandOver> {
  const { dataDictionary } = await import('#records/dictionary.ts');
  const papers = [{ name: 'md', text: dataDictionary() }];
  return makeHandOver({ part: 'everything', partner: null, passphrase: null, writtenBy: appVersion, papers });
}

export interface BackupHere {
  readonly made: HandOver | null;
  readonly failed: boolean;
  readonly busy: boolean;
  readonly outcome: Delivery | null;
  readonly handedOut: boolean;
  readonly handOut: () => Promise<void>;
}

const left = (outcome: Delivery): boolean => ['shared', 'saved', 'downloaded'].includes(outcome.kind);

/** Made anew for another book. */
export function useBackup(bookId: string | null): BackupHere {
  const [made, setMade] = useState<HandOver | null>(null);
  const [failed, setFailed] = useState(false);
  const [outcome, setOutcome] = useState<Delivery | null>(null);
  const [busy, setBusy] = useState(false);
  const running = useRef(false);
  useEffect(() => {
    let here = true;
    setMade(null);
    setFailed(false);
    setOutcome(null);
    if (bookId === null) return;
    backupWithPapers()
      .then((backup) => here && setMade(backup))
      .catch(() => here && setFailed(true));
    return () => {
      here = false;
    };
  }, [bookId]);
  const handOut = async () => {
    if (made === null || running.current) return;
    running.current = true;
    setBusy(true);
    const delivery = await deliver(made.blob, made.name);
    if (left(delivery)) await noteHandedOut(made);
    setOutcome(delivery);
    setBusy(false);
    running.current = false;
  };
  return { made, failed, busy, outcome, handedOut: outcome !== null && left(outcome), handOut };
}
