/** What came of it: how much is new, and what somebody has to settle now. */
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Looking } from '#store/hooks/useLooking.ts';
import { useOpenMatterCount } from '#store/hooks/useOpenMatters.ts';
import { en } from '#words/takeIn.ts';
import styles from './keep.module.css';

const words = en.done;

export interface TakenInProps {
  readonly taken: Extract<NonNullable<Looking['taken']>, { kind: 'takenIn' }>;
  readonly onAnother: () => void;
}

export function TakenIn({ taken, onAnother }: TakenInProps) {
  const openCount = useOpenMatterCount() ?? 0;
  const { newCount, filesCount, sharedNumbers, bothChangedCount } = taken;
  const numbers = sharedNumbers.map(({ sampleNumber }) => sampleNumber).join(', ');
  const settle = openCount > 0 || bothChangedCount > 0 || numbers !== '';
  return (
    <Page
      heading={words.heading}
      back="/keep"
      backText={en.backKeep}
      action={
        settle ? <MainAction to="/settle">{words.settle}</MainAction> : <MainAction to="/">{words.today}</MainAction>
      }
    >
      <Notice>{words.text(newCount, filesCount)}</Notice>
      {bothChangedCount > 0 && <p>{words.bothChanged(bothChangedCount)}</p>}
      {numbers !== '' && <p>{words.shared(numbers)}</p>}
      {openCount > 0 && bothChangedCount === 0 && numbers === '' && <p>{words.open}</p>}
      <div className={styles.actions}>
        <QuietAction onClick={onAnother}>{words.another}</QuietAction>
        <QuietAction to="/send">{words.send}</QuietAction>
      </div>
    </Page>
  );
}
