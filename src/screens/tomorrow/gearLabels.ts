/** How pumps and lots stand in the picker: what is in use first by number, with its charge or its last day. */
import { dayOf } from '#core/calendar.ts';
import { gearNumberOf, isDoubtedOn } from '#findings/gear/doubtsOf.ts';
import type { LotRecord, PumpRecord } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/tomorrowScreen.ts';

type Gear = PumpRecord | LotRecord;

/** Those in use, and the one that is chosen whatever became of it; by the numbers painted on them. */
export const inUse = <T extends Gear>(all: ReadonlyMap<string, T>, chosenId: string | null): readonly T[] =>
  [...all.values()]
    .filter(({ id, held }) => id === chosenId || held?.retired !== true)
    .sort((a, b) => gearNumberOf(a).localeCompare(gearNumberOf(b), 'en', { numeric: true }));

/** On that day: the number, that it was found bad, and what else is known. */
const labelOf = (gear: Gear, day: string, known: string | null): string =>
  [gearNumberOf(gear), isDoubtedOn(gear, day) ? words.bad : null, known].filter((part) => part !== null).join(', ');

export function pumpLabel(pump: PumpRecord, day: string): string {
  const full = pump.charges?.findLast((charge) => charge.full);
  return labelOf(pump, day, full === undefined ? null : words.charged(dayOf(full.at, deviceZone())));
}

export const lotLabel = (lot: LotRecord, day: string): string =>
  labelOf(lot, day, lot.expiresOn === null ? null : words.until(formatDay(lot.expiresOn)));
