/** One pump, flow meter or lot with all that its pages need: the book, what follows from it, the day, and whose hands the device is in. */
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Book, GearDoubt, LotRecord, MeterRecord, PumpRecord } from '#records/book.ts';
import { type GearKind, gearName, gearTitle } from '#words/gearScreen.ts';

export type GearRecord = PumpRecord | MeterRecord | LotRecord;

export interface GearHere<R extends GearRecord = GearRecord> {
  readonly gear: GearKind;
  readonly record: R;
  /** As it is called in the middle of a sentence, and at its beginning. */
  readonly name: string;
  readonly title: string;
  readonly book: Book;
  readonly duties: DutiesOfBook;
  readonly today: string;
  /** That of the device: gear belongs to no site. */
  readonly zone: string;
  /** Person id of whoever holds the device. */
  readonly by: string | null;
}

const isGear = (kind: string): kind is GearKind => kind === 'pump' || kind === 'meter' || kind === 'lot';

const recordsOf = (gear: GearKind, { pumps, meters, lots }: Book): ReadonlyMap<string, GearRecord> =>
  ({ pump: pumps, meter: meters, lot: lots })[gear];

export const numberOf = (record: GearRecord): string =>
  String('lotNumber' in record ? record.lotNumber : record.serial);

/** null when this device holds no such gear. */
export function gearHere(
  kind: string,
  id: string,
  around: Pick<GearHere, 'book' | 'duties' | 'today' | 'zone' | 'by'>,
): GearHere | null {
  if (!isGear(kind)) return null;
  const record = recordsOf(kind, around.book).get(id);
  if (record === undefined) return null;
  const number = numberOf(record);
  return { ...around, gear: kind, record, name: gearName(kind, number), title: gearTitle(kind, number) };
}

export const pathOf = ({ gear, record }: Pick<GearHere, 'gear' | 'record'>): string => `/gear/${gear}/${record.id}`;

export const doubtPath = (here: Pick<GearHere, 'gear' | 'record'>, { doubtId }: GearDoubt): string =>
  `${pathOf(here)}?doubt=${doubtId}`;
