/** Anything else that can be done here. 48 px high, in ink. */
import { Action } from './Action.tsx';
import styles from './Actions.module.css';
import type { ActionProps } from './actionProps.ts';

export function QuietAction(props: ActionProps) {
  return <Action {...props} kind="quiet" className={styles.quiet} />;
}
