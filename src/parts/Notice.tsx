/** Something to know. Quiet ones are told when convenient; an alert is told at once and stands between two ink rules. */
import type { ReactNode } from 'react';
import styles from './Notice.module.css';

export interface NoticeProps {
  readonly kind?: 'quiet' | 'alert' | undefined;
  readonly children: ReactNode;
  /** Actions that belong to the notice. */
  readonly actions?: ReactNode;
}

export function Notice({ kind = 'quiet', children, actions }: NoticeProps) {
  return (
    <div className={kind === 'alert' ? styles.alert : styles.quiet}>
      <div role={kind === 'alert' ? 'alert' : 'status'}>{children}</div>
      {actions && <div className={styles.actions}>{actions}</div>}
    </div>
  );
}
