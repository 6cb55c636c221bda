/** Whether the browser has promised to keep the book; and the way to ask it again. */
import { useEffect, useState } from 'react';
import { Particulars } from '#parts/Lines.tsx';
import { Notice } from '#parts/Notice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { estimate } from '#store/device.ts';
import { isInstalled } from '#store/handOver/delivery.ts';
import { askToPersistNow } from '#store/persistence.ts';
import { en } from '#words/storage.ts';
import styles from './keep.module.css';

const words = en.kept;

export function PromiseOf({ persisted }: { readonly persisted: boolean | null }) {
  const [usedBytes, setUsedBytes] = useState<number | null>(null);
  const [asked, setAsked] = useState<{ readonly answer: boolean | null } | null>(null);
  const [busy, setBusy] = useState(false);
  useEffect(() => {
    void estimate()
      .then((found) => setUsedBytes(found.usedBytes))
      .catch(() => undefined);
  }, []);
  const ask = async () => {
    setBusy(true);
    const answer = await askToPersistNow().catch(() => null);
    setAsked({ answer });
    setBusy(false);
  };
  const promise = persisted === null ? words.notSaid : persisted ? words.persisted : words.notPersisted;
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      <Particulars
        items={[
          promise,
          [words.installed, isInstalled() ? words.installedYes : words.installedNo],
          [words.used, usedBytes === null ? words.usedNotSaid : words.usedValue(usedBytes)],
        ]}
      />
      {persisted !== true && (
        <div>
          <QuietAction busy={busy} onClick={() => void ask()}>
            {words.ask}
          </QuietAction>
        </div>
      )}
      {asked && <Notice>{words.asked(asked.answer)}</Notice>}
    </section>
  );
}
