/** One sentence for every kind of fact about plans, days made ready, gear and money. See storyFacts.ts. */
import type { Fact, FactKind } from '#records/fact.ts';
import { labelOf } from './fieldNames.ts';
import { formatDay, formatList } from './quantity.ts';
import { type Naming, valueText } from './valueText.ts';

type KindOfSeason =
  | 'measurementPlanned.v1'
  | 'plannedDayMissed.v1'
  | 'planDropped.v1'
  | 'dayPrepared.v1'
  | 'labelsMade.v1'
  | 'gearHeld.v1'
  | 'pumpCharged.v1'
  | 'certificateEntered.v1'
  | 'gearDoubted.v1'
  | 'gearDoubtSettled.v1'
  | 'pricesStated.v1'
  | 'moneySpent.v1'
  | 'spendingStruck.v1';
type Sentence<K extends FactKind> = (fact: Fact<K>, say: Naming) => string;

const notHere = 'a record that is not on this device';
const named = (id: string, { nameOf }: Naming): string => nameOf(id) ?? notHere;
const tasks = (ids: readonly string[], { nameOf }: Naming): string => formatList(ids.map((id) => nameOf(id) ?? id));
const dayAt = (shiftId: string, say: Naming): string =>
  `${named(shiftId.slice(0, 12), say)} on ${formatDay(shiftId.slice(13))}`;
const after = (text: string | null): string => (text === null || text === '' ? '' : `: ${text}`);
const values = (body: object, keys: readonly string[], say: Naming): string =>
  keys
    .map((key) => `${labelOf(`/${key}`)}: ${valueText(`/${key}`, (body as Record<string, unknown>)[key], say)}`)
    .join('; ');

interface Slot {
  readonly workerId: string;
  readonly workOn: string | null;
}
const slotText = ({ workerId, workOn }: Slot, say: Naming): string =>
  `${named(workerId, say)} ${workOn === null ? 'on a day still open' : `on ${formatDay(workOn)}`}`;

interface Wearer {
  readonly workerId: string;
  readonly pumpId: string | null;
  readonly lotId: string | null;
  readonly taskIds: readonly string[];
}
const wearerText = ({ workerId, pumpId, lotId, taskIds }: Wearer, say: Naming): string =>
  [
    `${named(workerId, say)} for ${tasks(taskIds, say)}`,
    pumpId === null ? 'no pump chosen' : `pump ${named(pumpId, say)}`,
    lotId === null ? 'no lot chosen' : `lot ${named(lotId, say)}`,
  ].join(', ');

const gearNames = { pump: 'Pump', meter: 'Flow meter', lot: 'Lot' };
interface Gear {
  readonly gear: keyof typeof gearNames;
  readonly gearId: string;
}
const gearText = ({ gear, gearId }: Gear, say: Naming): string => `${gearNames[gear]} ${named(gearId, say)}`;

const plannedKeys = ['setting', 'jobClassificationId', 'siteId', 'season', 'crewCount', 'choice', 'reason', 'methodId'];
const plannedMore = ['reportingLimitUg', 'flowLPerMin', 'cassettesCount'];
const certificateKeys = ['dueOn', 'calibrationTemperatureC', 'calibrationPressureKPa', 'pairs'];
const priceKeys = ['analysisUsd', 'blankUsd', 'cassetteUsd', 'courierUsd', 'rushUsd', 'pumpRentalUsd'];
const priceMore = ['meterRentalUsd', 'consultantUsd'];

export const en: { readonly [K in KindOfSeason]: Sentence<K> } = {
  'measurementPlanned.v1': ({ body }, say) =>
    `Planned for ${tasks(body.taskIds, say)}: ${formatList(body.slots.map((slot) => slotText(slot, say)))}. ${values(
      body,
      [...plannedKeys, ...plannedMore],
      say,
    )}${after(body.remark)}`,
  'plannedDayMissed.v1': ({ body }, say) =>
    `The planned measurement of ${slotText(body, say)} did not come about, because ${valueText('/because', body.because, say)}; it is still to do${after(body.remark)}`,
  'planDropped.v1': () => 'The plan was given up. What the rule asks stays',
  'dayPrepared.v1': ({ body }, say) =>
    `Asked ${valueText('/asked', body.asked, say)} who wears what at ${dayAt(body.shiftId, say)}. ${
      body.wearers.length === 0 ? 'Nobody' : body.wearers.map((wearer) => wearerText(wearer, say)).join('; ')
    }. ${values(body, ['sparePumpIds', 'spareCassettesCount', 'chargedById'], say)}${after(body.remark)}`,
  'labelsMade.v1': ({ body }, say) =>
    `Labels were printed for ${dayAt(body.shiftId, say)}: ${formatList(body.labels.map(({ sampleNumber }) => sampleNumber))}`,
  'gearHeld.v1': ({ body }, say) =>
    `${gearText(body, say)}. ${values(body, ['held', 'from', 'backOn', 'retired'], say)}`,
  'pumpCharged.v1': ({ body }, say) =>
    `Pump ${named(body.pumpId, say)} ${body.full ? 'was charged to the full' : 'was put on its charger'}${after(body.remark)}`,
  'certificateEntered.v1': ({ body }, say) =>
    `Flow meter ${named(body.meterId, say)} has a certificate of ${formatDay(body.certificateOn)}${
      body.by === null ? '' : ` by ${body.by}`
    }. ${values(body, certificateKeys, say)}`,
  'gearDoubted.v1': ({ body }, say) =>
    `${gearText(body, say)} was found bad on ${formatDay(body.foundOn)}: ${body.found}. Doubtful ${
      body.fromOn === null ? 'ever since it was entered' : `from ${formatDay(body.fromOn)} on`
    }, ${body.untilOn === null ? 'without a last day' : `up to ${formatDay(body.untilOn)}`}`,
  'gearDoubtSettled.v1': ({ body }, say) =>
    `Decided on ${gearText(body, say)}: ${valueText('/decision', body.decision, say)}${
      body.trueOverRead === null ? '' : `, true flow ${body.trueOverRead} times the flow read`
    }`,
  'pricesStated.v1': ({ body }, say) =>
    `Prices from ${formatDay(body.fromOn)} on. ${values(body, [...priceKeys, ...priceMore], say)}`,
  'moneySpent.v1': ({ body }, say) =>
    `${valueText('/amountUsd', body.amountUsd, say)} was spent on ${formatDay(body.spentOn)} for ${valueText(
      '/spentFor',
      body.spentFor,
      say,
    )}. ${values(body, ['count', 'siteId', 'boxId', 'bill'], say)}${after(body.remark)}`,
  'spendingStruck.v1': () => 'An entry of money was struck',
};
