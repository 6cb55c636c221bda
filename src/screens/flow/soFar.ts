/** What the flow check says while it is being typed: the same finding that the saved check will have. */
import { flowRangeOf } from '#findings/aim.ts';
import { type FlowCheckFinding, findFlowCheck } from '#findings/flow.ts';
import { readFloats } from '#parts/FloatReadings.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { readMeter } from '#parts/meterText.ts';
import { addingNew } from '#parts/PickOrAdd.tsx';
import type { Book, FlowCheckRecord, MeterRecord, RecordBase } from '#records/book.ts';
import type { Happened } from '#records/fact.ts';
import { en as partsWords } from '#words/parts.ts';
import { asksForAir, type FlowDraft, meterKindOf, readAir } from './flowDraft.ts';

const base = (id: string): RecordBase => ({
  key: `draft:${id}`,
  id,
  factIds: [],
  strikes: [],
  conflicts: [],
  notUnderstood: [],
});

/** A flow meter that is being written down counts as soon as it can be read. */
function withTypedMeter(draft: FlowDraft, book: Book, today: string): Book {
  if (draft.meterId !== addingNew) return book;
  const meter = readMeter(fieldReader(partsWords), draft.meter, today);
  if (meter === null) return book;
  const typed: MeterRecord = { ...base(addingNew), ...meter, meterId: addingNew };
  return { ...book, meters: new Map([...book.meters, [addingNew, typed]]) };
}

/** null while no reading can be read. */
export function liveFlow(
  draft: FlowDraft,
  shiftId: string,
  book: Book,
  happened: Happened,
  today: string,
): FlowCheckFinding | null {
  const silent = fieldReader(partsWords);
  const readings = readFloats(silent, draft.readings);
  if (readings.length === 0) return null;
  const check: FlowCheckRecord = {
    ...base('typed'),
    flowCheckId: 'typed',
    shiftId,
    pumpId: draft.pumpId ?? '',
    meterId: draft.meterId ?? '',
    lotId: draft.inLine === 'nothing' ? null : draft.lotId,
    inLine: draft.inLine,
    purpose: draft.purpose,
    readings,
    ...readAir(silent, draft, asksForAir(meterKindOf(draft, book.meters))),
    remark: null,
    happened,
    by: null,
  };
  return findFlowCheck(check, withTypedMeter(draft, book, today), flowRangeOf(book));
}

export const savedFlow = (check: FlowCheckRecord, book: Book): FlowCheckFinding =>
  findFlowCheck(check, book, flowRangeOf(book));
