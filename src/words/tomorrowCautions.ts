/** What is still missing for tomorrow, in sentences: on the screen of the evening and on its paper. Read by the supervisor. */
import type { TomorrowCaution, TomorrowCautionKey } from '#findings/season/tomorrow.ts';
import { formatDay } from './quantity.ts';

interface About {
  /** The worker's name; null = it is about the whole day. */
  readonly who: string | null;
  readonly params: TomorrowCaution['params'];
}

const pump = ({ params }: About): string => `Pump ${params.serial}`;
const day = ({ params }: About): string => formatDay(String(params.onDay));
const forWhom = ({ who }: About): string => (who === null ? '' : ` for ${who}`);

const sentences: Readonly<Record<TomorrowCautionKey, (about: About) => string>> = {
  nobodyYet: () => 'Nobody wears a pump yet. Say who does.',
  plannedNotPrepared: (about) => `A plan names ${about.who ?? 'a worker'} for this day: not among the wearers.`,
  askInTheMorning: () => 'Ask again in the morning: who came, who works at what, what the weather does.',
  pumpNone: (about) => `No pump is chosen${forWhom(about)}.`,
  pumpTwice: (about) => `${pump(about)} stands for two workers.`,
  pumpNotCharged: (about) => `${pump(about)}: nobody wrote down that it was charged to the full since the day before.`,
  pumpDoubted: (about) => `${pump(about)} is in doubt: a low result with it proves nothing. Take another.`,
  pumpGoesBack: (about) => `${pump(about)} was to go back on ${day(about)}.`,
  pumpRetired: (about) => `${pump(about)} is no longer in use.`,
  lotNone: (about) => `No lot of cassettes is chosen${forWhom(about)}.`,
  lotExpired: (about) => `Lot ${about.params.lotNumber} expired on ${day(about)}.`,
  lotDoubted: (about) =>
    `Lot ${about.params.lotNumber} is in doubt: a low result with it proves nothing. Take another.`,
  labelNone: (about) => `No label is made${forWhom(about)}.`,
  blankLabelsFew: ({ params }) =>
    params.count === 1 ? 'One more field blank needs a label.' : `${params.count} more field blanks need labels.`,
  sparePumpNone: () => 'No spare pump. If one stops, that day is lost for its worker.',
  spareCassettesNone: () => 'No spare cassettes.',
  chargedByNone: () => 'Nobody is named who charges the pumps.',
  meterNone: () => 'There is no flow meter in the book.',
  meterOutOfDate: (about) =>
    `Flow meter ${about.params.serial} was due for calibration on ${day(about)}: a low result with it proves nothing.`,
  meterDueNotKnown: ({ params }) =>
    `Flow meter ${params.serial}: it is not written down when it is next due for calibration.`,
  meterDoubted: ({ params }) => `Flow meter ${params.serial} is in doubt: a low result with it proves nothing.`,
};

/** One caution, with a capital and a full stop. `nameOf` gives the name of a worker, as the reader may see it. */
export const tomorrowCautionText = (
  { key, workerId, params }: TomorrowCaution,
  nameOf: (workerId: string) => string,
): string => sentences[key]({ who: workerId === null ? null : nameOf(workerId), params });
