/** Whether a file with the whole book should leave the device: told, never in the middle of a shift. */
import { minutesBetween } from '#core/calendar.ts';
import { backupEveryDays, backupEveryDaysUnkept } from './practice.ts';

export interface BackupStanding {
  /** An instant. */
  readonly now: string;
  /** Instant at which the last file with everything left; null when none did. */
  readonly lastBackupAt: string | null;
  /** The browser's promise to keep the book; null where it gave none. */
  readonly persisted: boolean | null;
  readonly samplesCount: number;
  readonly runningCount: number;
  /** Entries written since. */
  readonly newCount: number;
}

const minutesOfDay = 1440;

/** After seven days, after one where the browser has not promised to keep the book. With nothing new there is nothing to lose. */
export function backupIsDue(standing: BackupStanding): boolean {
  const { now, lastBackupAt, persisted, samplesCount, runningCount, newCount } = standing;
  if (samplesCount === 0 || runningCount > 0 || newCount === 0) return false;
  if (lastBackupAt === null) return true;
  const days = persisted === true ? backupEveryDays.value : backupEveryDaysUnkept.value;
  return minutesBetween(lastBackupAt, now) >= days * minutesOfDay;
}
