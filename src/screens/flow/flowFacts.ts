/** From what was read off the form to the facts: new pump, flow meter and lot first, then the check. */

import { addingNew } from '#parts/PickOrAdd.tsx';
import type { NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import type { FlowDraft, ReadFlow } from './flowDraft.ts';

export interface FlowFacts {
  readonly facts: readonly NewFact[];
  readonly flowCheckId: string;
  readonly pumpId: string;
  readonly meterId: string;
  readonly lotId: string | null;
}

const idOf = (picked: string | null): string => (picked === null || picked === addingNew ? newId() : picked);

export function flowFacts(draft: FlowDraft, read: ReadFlow, shiftId: string, entry: Entry): FlowFacts {
  const pumpId = idOf(draft.pumpId);
  const meterId = idOf(draft.meterId);
  const lotId = read.wantsLot ? idOf(draft.lotId) : null;
  const flowCheckId = newId();
  const facts: NewFact[] = [];
  if (read.pump) facts.push(newFact('pumpAdded.v1', { pumpId, ...read.pump }, entry));
  if (read.meter) facts.push(newFact('meterAdded.v1', { meterId, ...read.meter }, entry));
  if (read.lot && lotId !== null) facts.push(newFact('lotAdded.v1', { lotId, ...read.lot }, entry));
  const { inLine, purpose } = draft;
  const body = {
    flowCheckId,
    shiftId,
    pumpId,
    meterId,
    lotId,
    inLine,
    purpose,
    readings: read.readings,
    ...read.air,
    remark: read.remark,
  };
  facts.push(newFact('flowChecked.v1', body, entry));
  return { facts, flowCheckId, pumpId, meterId, lotId };
}
