/** A number that matters: large, with its unit and what it is. Opens in place to show how it came about. */
import type { ReactNode } from 'react';
import styles from './Figure.module.css';
import { usePartsWords } from './language.ts';

export interface FigureProps {
  readonly label: string;
  /** The number as printed, from src/words/quantity.ts. */
  readonly value: string;
  readonly unit?: string | undefined;
  /** A line under the number: where it stands, how sure it is. */
  readonly note?: ReactNode;
  /** What opens: as a rule a WorkingView. */
  readonly children?: ReactNode;
  readonly openText?: string | undefined;
  readonly startOpen?: boolean | undefined;
}

export function Figure({ label, value, unit, note, children, openText, startOpen }: FigureProps) {
  const words = usePartsWords();
  return (
    <div className={styles.figure}>
      <p className={styles.label}>{label}</p>
      <p className={styles.number}>
        <span className={styles.value}>{value}</span>
        {unit !== undefined && unit !== '' && <span className={styles.unit}> {unit}</span>}
      </p>
      {note && <div className={styles.note}>{note}</div>}
      {children && (
        <details className={styles.details} open={startOpen}>
          <summary className={styles.summary}>
            {openText ?? words.showWorking}
            <span className={styles.heard}>: {label}</span>
          </summary>
          <div className={styles.inside}>{children}</div>
        </details>
      )}
    </div>
  );
}
