/** A number to be written by hand on a label: very large, digit by digit. */
import { spacedDigits } from '#words/digits.ts';
import styles from './BigNumber.module.css';

export interface BigNumberProps {
  readonly label: string;
  readonly digits: string;
  readonly note?: string | undefined;
}

export function BigNumber({ label, digits, note }: BigNumberProps) {
  return (
    <div>
      <p className={styles.label}>{label}</p>
      <p className={styles.digits}>{spacedDigits(digits)}</p>
      {note !== undefined && <p className={styles.note}>{note}</p>}
    </div>
  );
}
