/** What this device says of itself: whether the browser keeps the book, whether the app is installed, and how much room it takes. */
import { useEffect, useState } from 'react';
import { Particulars } from '#parts/Lines.tsx';
import type { BookMeta } from '#store/bookMeta.ts';
import { estimate } from '#store/device.ts';
import { isInstalled } from '#store/handOver/delivery.ts';
import { useBookCounts } from '#store/hooks.ts';
import { en as words } from '#words/keep.ts';
import styles from './keep.module.css';

const text = words.storage;

export function Storage({ meta }: { readonly meta: BookMeta | undefined }) {
  const counts = useBookCounts();
  const [usedBytes, setUsedBytes] = useState<number | null>(null);
  useEffect(() => {
    void estimate().then((found) => setUsedBytes(found.usedBytes));
  }, []);
  const persisted = meta?.persisted ?? null;
  const promise = persisted === null ? text.notSaid : persisted ? text.persisted : text.notPersisted;
  return (
    <section className={styles.section}>
      <h2>{text.heading}</h2>
      <Particulars
        items={[
          promise,
          [text.installed, isInstalled() ? text.installedYes : text.installedNo],
          [text.used, usedBytes === null ? text.usedNotSaid : text.usedValue(usedBytes)],
          [text.samples, counts === undefined ? '' : String(counts.sampleCount)],
        ]}
      />
    </section>
  );
}
