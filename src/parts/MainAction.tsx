/** The one thing this page is for. 60 px high; one to a page. */
import { Action } from './Action.tsx';
import styles from './Actions.module.css';
import type { ActionProps } from './actionProps.ts';

export function MainAction(props: ActionProps) {
  return <Action {...props} kind="main" className={styles.main} />;
}
