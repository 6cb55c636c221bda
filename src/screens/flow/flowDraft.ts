/** What is typed at a flow check, and reading it: into the facts to write, or the sentences of what stands in the way. */

import type { FloatReading } from '#parts/FloatField.tsx';
import { readFloats } from '#parts/FloatReadings.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { emptyLot, type LotText, readLot } from '#parts/LotLines.tsx';
import { emptyMeter, type MeterText, pressureRange, readMeter, temperatureRange } from '#parts/meterText.ts';
import { addingNew } from '#parts/PickOrAdd.tsx';
import { emptyPump, type PumpText, readPump } from '#parts/PumpLines.tsx';
import type { MomentDraft } from '#parts/parseMoment.ts';
import type { Book, FlowCheckRecord, MeterRecord } from '#records/book.ts';
import type { FactBody } from '#records/fact.ts';
import { en as words } from '#words/flow.ts';
import { en as gear } from '#words/gear.ts';
import { en as partsWords } from '#words/parts.ts';

type Body = FactBody<'flowChecked.v1'>;
export type Purpose = Body['purpose'];

export interface FlowDraft {
  readonly pumpId: string | null;
  readonly pump: PumpText;
  readonly meterId: string | null;
  readonly meter: MeterText;
  readonly lotId: string | null;
  readonly lot: LotText;
  readonly inLine: Body['inLine'];
  readonly purpose: Purpose;
  readonly readings: readonly FloatReading[];
  readonly temperature: string;
  readonly pressure: string;
  readonly remark: string;
  /** null: checked now. */
  readonly moment: MomentDraft | null;
}

/** Where nothing was checked yet: the only flow meter in use, and the lot that all wearers of the day made ready have. */
export function usualGear(shiftId: string, { dayPlans, meters }: Pick<Book, 'dayPlans' | 'meters'>) {
  const wearers = dayPlans.get(shiftId)?.prepared?.wearers;
  if (wearers === undefined) return { meterId: null, lotId: null };
  const inUse = [...meters.values()].filter(({ held }) => held?.retired !== true);
  const lotIds = new Set(wearers.map(({ lotId }) => lotId));
  const only = <T>(ones: readonly T[]): T | null => (ones.length === 1 ? (ones[0] ?? null) : null);
  return { meterId: only(inUse)?.id ?? null, lotId: only([...lotIds]) };
}

/** Flow meter, lot and what was in line stay as they were at the last check; before it, what `usual` says. */
export const flowDraft = (
  last: FlowCheckRecord | undefined,
  usual: ReturnType<typeof usualGear>,
  pumpId: string | null,
  purpose: Purpose,
): FlowDraft => ({
  pumpId,
  pump: emptyPump,
  meterId: last === undefined ? usual.meterId : last.meterId,
  meter: emptyMeter,
  lotId: last === undefined ? usual.lotId : last.lotId,
  lot: emptyLot,
  inLine: last === undefined || last.inLine === 'nothing' ? 'representativeCassette' : last.inLine,
  purpose,
  readings: [],
  temperature: '',
  pressure: '',
  remark: '',
  moment: null,
});

export const meterKindOf = (
  draft: FlowDraft,
  meters: ReadonlyMap<string, MeterRecord>,
): MeterRecord['meterKind'] | null =>
  draft.meterId === addingNew ? draft.meter.meterKind : (meters.get(draft.meterId ?? '')?.meterKind ?? null);

/** Only a float in a tube reads differently in warm, cold or thin air. */
export const asksForAir = (kind: MeterRecord['meterKind'] | null): boolean => kind === 'rotameter' || kind === 'other';

export function readAir(read: FieldReader, draft: FlowDraft, asked: boolean) {
  const optional = { optional: true } as const;
  return {
    temperatureC: asked
      ? read.quantity('temperature', words.temperature, '°C', draft.temperature, { ...temperatureRange, ...optional })
      : null,
    pressureKPa: asked
      ? read.quantity('pressure', words.pressure, 'kPa', draft.pressure, { ...pressureRange, ...optional })
      : null,
  };
}

/** Everything typed, read once for saving. Registers that are new come back as values, without ids. */
export function readFlow(draft: FlowDraft, meters: ReadonlyMap<string, MeterRecord>, today: string) {
  const read = fieldReader(partsWords);
  read.chosen('pump', gear.pump.pick, draft.pumpId);
  const pump = draft.pumpId === addingNew ? readPump(read, draft.pump) : null;
  read.chosen('meter', gear.meter.pick, draft.meterId);
  const meter = draft.meterId === addingNew ? readMeter(read, draft.meter, today) : null;
  const wantsLot = draft.inLine !== 'nothing';
  if (wantsLot) read.chosen('lot', gear.lot.pick, draft.lotId);
  const lot = wantsLot && draft.lotId === addingNew ? readLot(read, draft.lot, today) : null;
  const before = read.errors.length;
  const readings = readFloats(read, draft.readings);
  if (readings.length === 0 && read.errors.length === before) read.add('reading-0', words.readingMissing);
  const air = readAir(read, draft, asksForAir(meterKindOf(draft, meters)));
  const remark = read.text('remark', words.remark, draft.remark, { optional: true, most: 2000 });
  return { errors: read.errors, pump, meter, lot, wantsLot, readings, air, remark };
}

export type ReadFlow = ReturnType<typeof readFlow>;
