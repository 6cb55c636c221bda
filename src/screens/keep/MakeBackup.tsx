/** How the backup stands: being made, ready, handed out or not, and how old the last one is. */
import { dayOf } from '#core/calendar.ts';
import { Notice } from '#parts/Notice.tsx';
import type { BookCounts, BookMeta } from '#store/bookMeta.ts';
import { deviceZone, now } from '#store/device.ts';
import type { Delivery } from '#store/handOver/delivery.ts';
import { useBookCounts } from '#store/hooks.ts';
import { en as words } from '#words/keep.ts';
import { formatDayFrom } from '#words/quantity.ts';
import styles from './keep.module.css';
import type { BackupHere } from './useBackup.ts';

export interface MakeBackupProps {
  readonly backup: BackupHere;
  readonly meta: BookMeta | undefined;
}

const text = words.make;

export function MakeBackup({ backup: { made, failed, outcome }, meta }: MakeBackupProps) {
  const counts = useBookCounts();
  return (
    <section className={styles.section}>
      <h2>{text.heading}</h2>
      {meta && counts && <p>{lastText(meta, counts)}</p>}
      {failed ? (
        <Notice kind="alert">{text.failed}</Notice>
      ) : (
        <p role="status">{made === null ? text.preparing : text.ready(made.factsCount, made.blob.size)}</p>
      )}
      {outcome && <Notice kind={outcome.kind === 'failed' ? 'alert' : 'quiet'}>{outcomeText(outcome)}</Notice>}
    </section>
  );
}

const outcomeText = (outcome: Delivery): string =>
  outcome.kind === 'failed' ? text.outcome[outcome.why] : text.outcome[outcome.kind];

function lastText({ lastBackupAt }: BookMeta, { factsSinceBackup }: BookCounts): string {
  if (lastBackupAt === null) return words.last.never;
  const zone = deviceZone();
  const when = formatDayFrom(dayOf(now(), zone), dayOf(lastBackupAt, zone));
  return factsSinceBackup > 0 ? words.last.old(when, factsSinceBackup) : words.last.fresh(when);
}
