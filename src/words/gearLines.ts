/** How pumps, flow meters and lots stand, one sentence each; and the sentence wherever something rests on one that was found bad. */

import type { GearHeadStanding, LotStanding, MeterStanding, PumpStanding } from '#findings/gear/gearStanding.ts';
import type { GearDoubtOf } from '#findings/gear/touched.ts';
import { en as gear } from './gear.ts';
import { restsOn, restsWithin } from './gearDoubt.ts';
import { en } from './gearScreen.ts';
import { formatDay, inSentence } from './quantity.ts';

type MeterKind = keyof typeof gear.meter.kinds;

export const lines = {
  doubt: (name: string, day: string, standing: string) => `${name} was found bad on ${formatDay(day)}; ${standing}`,
  certificateOverdue: (name: string, day: string) => `${name} was due for calibration on ${formatDay(day)}`,
  certificateSoon: (name: string, day: string) => `${name} is due for calibration on ${formatDay(day)}`,
  certificateUnknown: (name: string) => `${name}: when its next calibration is due is not written down`,
  backOverdue: (name: string, day: string, from: string | null) =>
    `${name} is to go back${from === null ? '' : ` to ${from}`}: ${formatDay(day)}`,
  expired: (name: string, day: string) => `${name} ran out on ${formatDay(day)}`,
  expiresSoon: (name: string, day: string) => `${name} is to be used before ${formatDay(day)}`,
  notCharged: (name: string, day: string) =>
    `${name}: no charge to the full is written down since it was worn on ${formatDay(day)}`,
  twelveMonths: 'twelve months after its certificate: the day itself is not written down',
  lastWorn: (day: string) => `last worn ${formatDay(day)}`,
  neverWorn: 'not worn yet',
  charged: 'charged to the full',
  neverCharged: 'no charge to the full is written down',
  chargedSince: 'charged to the full since',
  notChargedSince: 'no charge to the full since is written down',
  due: (day: string) => `calibration due ${formatDay(day)}`,
  overdue: (day: string) => `calibration was due ${formatDay(day)}`,
  dueUnknown: 'calibration due date not written down',
  expires: (day: string) => `use before ${formatDay(day)}`,
  ranOut: (day: string) => `ran out ${formatDay(day)}`,
  used: (used: number, blanks: number) => en.lot.usedText(used, blanks),
  doubtful: 'found bad',
  disputed: 'two decisions about it differ',
};

/** 'Rented from Tool Loft, goes back on 3 December 2026'; said too where nobody said it. */
export function heldText({ held }: Pick<GearHeadStanding, 'held'>): string {
  if (held === null) return en.held.notSaid;
  const whose = en.held.said[held.held];
  const text = typeof whose === 'string' ? whose : whose(held.from);
  return held.backOn === null ? text : `${text}, ${en.held.backOn(held.backOn)}`;
}

/** Over the page of one of them; nothing where nothing was said. */
export const heldOver = (held: GearHeadStanding['held'] | undefined): string | undefined => {
  if (held === null || held === undefined) return undefined;
  return held.retired ? en.held.retired : heldText({ held });
};

const joined = (parts: readonly (string | null)[]): string => parts.filter((part) => part !== null).join(', ');
const bad = ({ doubtful }: GearHeadStanding): string | null => (doubtful ? lines.doubtful : null);

/** 'Since' is said only of one that was worn. */
function chargeText({ chargedSinceWorn, lastWornOn }: PumpStanding): string | null {
  if (chargedSinceWorn === null) return null;
  if (lastWornOn === null) return chargedSinceWorn ? lines.charged : lines.neverCharged;
  return chargedSinceWorn ? lines.chargedSince : lines.notChargedSince;
}

export const pumpDetail = (pump: PumpStanding): string =>
  joined([
    bad(pump),
    pump.make,
    pump.lastWornOn === null ? lines.neverWorn : lines.lastWorn(pump.lastWornOn),
    chargeText(pump),
    pump.held === null ? null : inSentence(heldText(pump)),
  ]);

function dueDetail({ dueOn, due }: MeterStanding): string {
  if (dueOn === null) return lines.dueUnknown;
  return due === 'overdue' ? lines.overdue(dueOn) : lines.due(dueOn);
}

export const meterDetail = (meter: MeterStanding): string =>
  joined([
    bad(meter),
    gear.meter.kinds[meter.meterKind as MeterKind] ?? null,
    dueDetail(meter),
    meter.held === null ? null : inSentence(heldText(meter)),
  ]);

export const lotDetail = (lot: LotStanding): string =>
  joined([
    bad(lot),
    lot.media,
    lot.expiresOn === null
      ? null
      : lot.expiry === 'passed'
        ? lines.ranOut(lot.expiresOn)
        : lines.expires(lot.expiresOn),
    lines.used(lot.usedCount, lot.blanksCount),
  ]);

export interface RestsLine {
  readonly text: string;
  readonly to: string;
  /** What was found, and why it was decided as it was. */
  readonly detail: string;
}

/** The sentence wherever a doubt is touched, with the way to its page. */
export const restsLines = (doubts: readonly GearDoubtOf[]): readonly RestsLine[] =>
  doubts.map(({ gear: kind, gearId, gearNumber, doubt, effect }) => ({
    text: restsOn(kind, gearNumber, doubt, effect),
    to: `/gear/${kind}/${gearId}?doubt=${doubt.doubtId}`,
    detail: joined([doubt.found, effect === 'open' ? null : (doubt.settled?.why ?? null)]),
  }));

/** The same within a line, all in one; empty where there is none: 'rests on flow meter ROTA-7, found bad on 12 March 2026 (not settled)'. */
export const restsText = (doubts: readonly GearDoubtOf[]): string =>
  doubts.map(({ gear: kind, gearNumber, doubt, effect }) => restsWithin(kind, gearNumber, doubt, effect)).join('; ');
