/** How pumps and lots stand in the picker: what is in use first by number, with its charge or its last day. */
import { dayOf } from '#core/calendar.ts';
import type { LotRecord, PumpRecord } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/tomorrowScreen.ts';

type Held = { readonly id: string; readonly held?: { readonly retired: boolean } | null };

/** Those in use, and the one that is chosen whatever became of it. */
export const inUse = <T extends Held>(all: ReadonlyMap<string, T>, chosenId: string | null): readonly T[] =>
  [...all.values()].filter(({ id, held }) => id === chosenId || held?.retired !== true);

export function pumpLabel({ serial, charges }: PumpRecord): string {
  const full = charges?.findLast((charge) => charge.full);
  return full === undefined ? serial : `${serial}, ${words.charged(dayOf(full.at, deviceZone()))}`;
}

export const lotLabel = ({ lotNumber, expiresOn }: LotRecord): string =>
  expiresOn === null ? lotNumber : `${lotNumber}, ${words.until(formatDay(expiresOn))}`;
