/** How old the last file with everything is, as a sentence. */
import { dayOf } from '#core/calendar.ts';
import type { BookCounts } from '#store/bookMeta.ts';
import { deviceZone, now } from '#store/device.ts';
import type { Keeping } from '#store/hooks/useKeeping.ts';
import { en as words } from '#words/keep.ts';
import { formatDayFrom } from '#words/quantity.ts';

export interface LastFileProps {
  readonly keeping: Keeping | undefined;
  readonly counts: BookCounts | undefined;
}

export function LastFile({ keeping, counts }: LastFileProps) {
  if (keeping === undefined || counts === undefined) return null;
  return <p>{sentence(keeping, counts)}</p>;
}

function sentence({ lastBackupAt, lastSentAt }: Keeping, { factsSinceBackup }: BookCounts): string {
  if (lastBackupAt === null) return lastSentAt === null ? words.last.never : words.last.onlyNews;
  const zone = deviceZone();
  const when = formatDayFrom(dayOf(now(), zone), dayOf(lastBackupAt, zone));
  return factsSinceBackup > 0 ? words.last.old(when, factsSinceBackup) : words.last.fresh(when);
}
