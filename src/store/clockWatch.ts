/**
 * A clock that was set back is written on every sample that runs, once. While one runs, the later time stays the one to beat, so that
 * taps on it are refused and its times are typed from a watch; with nothing running the clock is simply taken as it stands.
 */
import { minutesBetween } from '#core/calendar.ts';
import type { SampleRecord } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import { clockWentBack, keptSeenMs, lastSeenAt, trustClock } from './clock.ts';
import type { BookDatabase, Which } from './database.ts';
import { deviceZone, happenedNow } from './device.ts';
import { byIndex, fromJournal, samplesOf } from './lookup.ts';
import { derivedIsComplete, readMark, writeMark } from './marks.ts';
import { newFact } from './newFact.ts';

const notice = ({ id }: SampleRecord, seenAt: string): NewFact => {
  const happened = { ...happenedNow(deviceZone()), entry: 'typed' as const, from: 'device' };
  const setBackMin = minutesBetween(happened.at, seenAt);
  return newFact('clockSetBackNoticed.v1', { sampleId: id, setBackMin }, { happened, by: null });
};
/** What is to be written down because the clock went back; empty when it did not, or when that was noticed before. */
export async function clockNotices(db: BookDatabase, which: Which): Promise<readonly NewFact[]> {
  const seenAt = lastSeenAt();
  if (seenAt === null || !clockWentBack()) return [];
  const lookup = derivedIsComplete(which) ? byIndex(db) : await fromJournal(db);
  const running = samplesOf(await lookup.linked('running'));
  if (running.length === 0) trustClock();
  const noticed = readMark('clockNoticed') === String(keptSeenMs());
  return noticed ? [] : running.map((sample) => notice(sample, seenAt));
}

/** The notices are on the disk. */
export const clockNoticed = (): void => writeMark('clockNoticed', String(keptSeenMs()));
