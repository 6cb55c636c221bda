/** How far a longer piece of work has come. What is being done is told once; the count is there for who looks or asks. */
import styles from './ProgressLine.module.css';

export interface ProgressLineProps {
  /** What is being done, as a sentence: heard when it changes. */
  readonly text: string;
  readonly done: number;
  /** 0 while it is not known. */
  readonly total: number;
}

export function ProgressLine({ text, done, total }: ProgressLineProps) {
  return (
    <div className={styles.line}>
      <p role="status">{text}</p>
      <progress
        className={styles.bar}
        aria-label={text}
        max={Math.max(1, total)}
        value={total > 0 ? Math.min(done, total) : undefined}
      />
    </div>
  );
}
