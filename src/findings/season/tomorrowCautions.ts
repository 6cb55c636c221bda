/** What is still missing for a day, or wrong with what lies ready for it. Told on screen and paper; stops nobody. */
import { addDays, dayOf } from '#core/calendar.ts';
import type { Book } from '#records/book.ts';
import { isDoubtedOn } from '../gear/doubtsOf.ts';
import type { Tomorrow, TomorrowCaution, TomorrowCautionKey, TomorrowLot, TomorrowPump } from './tomorrowDay.ts';
import type { Wearer } from './tomorrowWearers.ts';

type Bare = Omit<Tomorrow, 'cautions'>;
type Params = TomorrowCaution['params'];
const caution = (key: TomorrowCautionKey, workerId: string | null = null, params: Params = {}): TomorrowCaution => ({
  key,
  workerId,
  params,
});

function ofPump(
  book: Book,
  day: string,
  { pumpId, serial, chargedAt }: TomorrowPump,
  workerId: string | null,
  zone: string,
) {
  const pump = book.pumps.get(pumpId);
  const about = { serial };
  const chargedOn = chargedAt === null ? null : dayOf(chargedAt, zone);
  const backOn = pump?.held?.backOn ?? null;
  return [
    ...(chargedOn === null || chargedOn < addDays(day, -1) ? [caution('pumpNotCharged', workerId, about)] : []),
    ...(isDoubtedOn(pump, day) ? [caution('pumpDoubted', workerId, about)] : []),
    ...(pump?.held?.retired ? [caution('pumpRetired', workerId, about)] : []),
    ...(backOn !== null && backOn < day ? [caution('pumpGoesBack', workerId, { ...about, onDay: backOn })] : []),
  ];
}

function ofLot(book: Book, day: string, lot: TomorrowLot | null, workerId: string): TomorrowCaution[] {
  if (lot === null) return [caution('lotNone', workerId)];
  const { lotId, lotNumber, expiresOn } = lot;
  const expired = expiresOn !== null && expiresOn < day;
  return [
    ...(expired ? [caution('lotExpired', workerId, { lotNumber, onDay: expiresOn })] : []),
    ...(isDoubtedOn(book.lots.get(lotId), day) ? [caution('lotDoubted', workerId, { lotNumber })] : []),
  ];
}

function ofWearers(book: Book, day: Bare, zone: string): TomorrowCaution[] {
  const seen = new Set<string>();
  const pumpSeen = (pump: TomorrowPump): boolean => {
    const before = seen.has(pump.pumpId);
    seen.add(pump.pumpId);
    return before;
  };
  return day.wearers.flatMap(({ workerId, pump, lot, sampleNumber }) => [
    ...(pump ? ofPump(book, day.workOn, pump, workerId, zone) : [caution('pumpNone', workerId)]),
    ...(pump && pumpSeen(pump) ? [caution('pumpTwice', workerId, { serial: pump.serial })] : []),
    ...ofLot(book, day.workOn, lot, workerId),
    ...(sampleNumber === null ? [caution('labelNone', workerId)] : []),
  ]);
}

function ofMeters(book: Book, { meters, workOn }: Bare): TomorrowCaution[] {
  if (meters.length === 0) return [caution('meterNone')];
  return meters.flatMap(({ meterId, serial, dueOn }) => [
    ...(dueOn === null ? [caution('meterDueNotKnown', null, { serial })] : []),
    ...(dueOn !== null && dueOn < workOn ? [caution('meterOutOfDate', null, { serial, onDay: dueOn })] : []),
    ...(isDoubtedOn(book.meters.get(meterId), workOn) ? [caution('meterDoubted', null, { serial })] : []),
  ]);
}

function ofSpares(book: Book, day: Bare, zone: string): TomorrowCaution[] {
  const lacking = day.blanks.count - day.blankNumbers.length;
  return [
    ...(day.sparePumps.length === 0 ? [caution('sparePumpNone')] : []),
    ...day.sparePumps.flatMap((pump) => ofPump(book, day.workOn, pump, null, zone)),
    ...(day.spareCassettesCount === 0 ? [caution('spareCassettesNone')] : []),
    ...(lacking > 0 ? [caution('blankLabelsFew', null, { count: lacking })] : []),
    ...(day.chargedById === null ? [caution('chargedByNone')] : []),
  ];
}

/** In the order of the evening: the people, their gear, what lies beside, the flow meter. */
export function tomorrowCautions(book: Book, day: Bare, notPrepared: readonly Wearer[]): TomorrowCaution[] {
  const zone = book.sites.get(day.siteId)?.zone ?? 'UTC';
  const meters = ofMeters(book, day);
  if (day.wearers.length === 0) return [caution('nobodyYet'), ...meters];
  return [
    ...(day.asked === 'morning' ? [] : [caution('askInTheMorning')]),
    ...notPrepared.map(({ workerId }) => caution('plannedNotPrepared', workerId)),
    ...ofWearers(book, day, zone),
    ...ofSpares(book, day, zone),
    ...meters,
  ];
}
