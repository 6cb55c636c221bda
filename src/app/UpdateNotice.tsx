/**
 * Tells of a newer version, and that the app is kept on the device. At the foot it appears at once; at the top only with a new page, so
 * that no row moves away from under a finger.
 */
import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { Notice } from '#parts/Notice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { changeNow } from '#store/appUpdates.ts';
import { useUpdates } from '#store/hooks/useUpdates.ts';
import { useBookMeta, useBookState } from '#store/hooks.ts';
import { en as words } from '#words/shell.ts';
import styles from './shell.module.css';
import { type UpdateOffer, updateOffer } from './updatePolicy.ts';

let postponed = false;

function useOffer(): UpdateOffer {
  const updates = useUpdates();
  const state = useBookState();
  const meta = useBookMeta();
  const runningCount = state.kind === 'open' ? (meta?.runningCount ?? null) : state.kind === 'opening' ? null : 0;
  return updateOffer({ ...updates, runningCount, postponed });
}

/** True once the address has changed since `offer` came up. */
function useTurnedSince(offer: UpdateOffer): boolean {
  const [location] = useLocation();
  const [seen, setSeen] = useState({ offer, location });
  useEffect(() => {
    if (seen.offer !== offer) setSeen({ offer, location });
  }, [seen.offer, offer, location]);
  return seen.offer === offer && seen.location !== location;
}

export function UpdateNotice({ place }: { readonly place: 'top' | 'foot' }) {
  const updates = useUpdates();
  const offer = useOffer();
  const atTop = useTurnedSince(offer) && (offer === 'offer' || offer === 'elsewhere');
  const [, again] = useState(0);
  const [location] = useLocation();
  if (location.startsWith('/worker/')) return null;
  if (atTop !== (place === 'top')) return null;
  if (offer === 'nothing')
    return updates.ready ? (
      <div className={styles.notice}>
        <Notice>{words.ready}</Notice>
      </div>
    ) : null;
  const later = () => {
    postponed = true;
    again((n) => n + 1);
  };
  return (
    <div className={styles.notice}>
      <Notice actions={<Answers offer={offer} onLater={later} />}>{textByOffer[offer]}</Notice>
    </div>
  );
}

const textByOffer = { tell: words.update.waiting, offer: words.update.offer, elsewhere: words.update.elsewhere };

function Answers({ offer, onLater }: { readonly offer: UpdateOffer; readonly onLater: () => void }) {
  if (offer === 'elsewhere') return <QuietAction onClick={() => void changeNow()}>{words.update.again}</QuietAction>;
  if (offer !== 'offer') return null;
  return (
    <>
      <QuietAction onClick={() => void changeNow()}>{words.update.now}</QuietAction>
      <QuietAction onClick={onLater}>{words.update.later}</QuietAction>
    </>
  );
}
