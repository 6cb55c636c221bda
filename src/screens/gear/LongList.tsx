/** A list of which the first lines are shown, and the rest when asked for. */
import { type ReactNode, useState } from 'react';
import { Lines } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { en } from '#words/gearDoubt.ts';
import styles from './gear.module.css';

export interface LongListProps {
  readonly heading?: string | undefined;
  readonly whenEmpty?: string | undefined;
  readonly children: readonly ReactNode[];
  readonly shownCount: number;
}

export function LongList({ heading, whenEmpty, children, shownCount }: LongListProps) {
  const [whole, setWhole] = useState(false);
  const restCount = children.length - shownCount;
  return (
    <div className={styles.section}>
      <Lines heading={heading} whenEmpty={whenEmpty}>
        {whole ? children : children.slice(0, shownCount)}
      </Lines>
      {!whole && restCount > 0 && (
        <div>
          <QuietAction onClick={() => setWhole(true)}>{en.page.more(restCount)}</QuietAction>
        </div>
      )}
    </div>
  );
}
