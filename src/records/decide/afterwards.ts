/** What a decided fact changes for the facts after it in the same call. Only what decide asks about is followed. */
import { subjectOf } from '../about.ts';
import type {
  AnyRecord,
  BoxRecord,
  DutyRecord,
  Interval,
  NoticeRecord,
  PumpRecord,
  SampleRecord,
  WorkdayRecord,
} from '../book.ts';
import type { FactBody, NewFact } from '../fact.ts';
import type { Ask } from './ask.ts';
import { provisionalId, recordFrom } from './view.ts';

type Change = Partial<SampleRecord>;

const next = (fact: NewFact, index: number, state: Interval['state'], awayFromLead: boolean): Interval => ({
  fromAt: fact.happened.at,
  toAt: null,
  state,
  awayFromLead,
  reason: null,
  becauseFactId: provisionalId(index),
});

function lineChange(fact: NewFact, index: number, sample: SampleRecord): Change {
  const moment = { at: fact.happened.at, entry: fact.happened.entry, factId: provisionalId(index) };
  const grown = (interval: Interval): Change => ({ intervals: [...sample.intervals, interval] });
  switch (fact.kind) {
    case 'pumpPutOn.v1':
      return { putOn: moment, ...grown(next(fact, index, 'worn', false)) };
    case 'leadAreaLeft.v1':
      return grown(next(fact, index, 'worn', true));
    case 'leadAreaEntered.v1':
    case 'pumpPutBackOn.v1':
      return grown(next(fact, index, 'worn', false));
    case 'pumpTakenOff.v1':
      return grown(next(fact, index, fact.body.stillRunning ? 'offRunning' : 'offStopped', fact.body.awayFromLead));
    case 'pumpFaulted.v1':
      return fact.body.fault === 'stopped' ? grown(next(fact, index, 'offStopped', false)) : {};
    case 'pumpStopped.v1':
      return { stopped: { ...moment, pumpMin: fact.body.pumpMin } };
    default:
      return {};
  }
}

function sampleChange(fact: NewFact, index: number, sample: SampleRecord): Change {
  const factId = provisionalId(index);
  const moment = { at: fact.happened.at, entry: fact.happened.entry, factId };
  switch (fact.kind) {
    case 'fittingChecked.v1':
      return { fitting: { ...fact.body, at: moment.at } };
    case 'stoppedByMistake.v1':
      return { stopped: null };
    case 'cassetteSealed.v1':
      return { sealed: { ...fact.body, ...moment } };
    case 'sampleVoided.v1':
      return { voided: { why: fact.why, factId } };
    case 'voidReviewed.v1':
      return { voided: fact.body.stands ? sample.voided : null, voidAgainstResult: false };
    case 'resultReceived.v1':
      return { results: [...sample.results, { ...fact.body, factId }] };
    case 'valueCorrected.v1':
      return correctedChange(fact.body.path, fact.body.new);
    default:
      return lineChange(fact, index, sample);
  }
}

/** Of corrections only those that decide whom and which pump a sample belongs to. */
function correctedChange(path: string, value: unknown): Change {
  if (typeof value !== 'string') return {};
  if (path === '/pumpId') return { pumpId: value };
  return path === '/workerId' ? { workerId: value } : {};
}

function boxChange(fact: NewFact, index: number, box: BoxRecord): Partial<BoxRecord> {
  const { at } = fact.happened;
  if (fact.kind === 'boxHandedOver.v1') return { handedOver: { ...fact.body, at } };
  if (fact.kind !== 'custodySheetIssued.v1') return {};
  return { issues: [...box.issues, { ...fact.body, factId: provisionalId(index), at, why: fact.why }] };
}

export function afterwards({ fact, index, view }: Ask): void {
  const key = subjectOf(fact) ?? fact.about[0];
  if (key === undefined) return;
  const record = view.record(key);
  if (!record || key.startsWith('workday:')) {
    const made = recordFrom(key, fact, index);
    if (made) view.put(record ? ({ ...record, ...statedIn(made), ...grownDay(record, made) } as AnyRecord) : made);
  } else if (key.startsWith('sample:'))
    view.put({ ...(record as SampleRecord), ...sampleChange(fact, index, record as SampleRecord) });
  else if (key.startsWith('box:'))
    view.put({ ...(record as BoxRecord), ...boxChange(fact, index, record as BoxRecord) });
  else putOther(fact, index, record, view.put);
}

/** Lists of a day that grow by one fact. */
function grownDay(day: AnyRecord, made: AnyRecord): object {
  const { worked = [], recordsIssued = [] } = day as WorkdayRecord;
  const added = made as WorkdayRecord;
  return {
    worked: [...worked, ...(added.worked ?? [])],
    recordsIssued: [...recordsIssued, ...(added.recordsIssued ?? [])],
  };
}

const withDoubt = (gear: PumpRecord, body: FactBody<'gearDoubted.v1'>, factId: string): AnyRecord => ({
  ...gear,
  doubts: [...(gear.doubts ?? []), { ...body, factId, settled: null }],
});

function putOther(fact: NewFact, index: number, record: AnyRecord, put: (changed: AnyRecord) => void): void {
  const issued = { factId: provisionalId(index), at: fact.happened.at, by: fact.by };
  if (fact.kind === 'conditionsNoted.v1') put({ ...record, conditions: fact.body } as AnyRecord);
  if (fact.kind === 'changesAsked.v1')
    put({ ...record, changes: { ...fact.body, factId: issued.factId } } as AnyRecord);
  if (fact.kind === 'dutyDone.v1')
    put({ ...record, done: [...(record as DutyRecord).done, { ...fact.body, ...issued }] } as AnyRecord);
  if (fact.kind === 'spendingStruck.v1')
    put({ ...record, struck: { why: fact.why, factId: issued.factId } } as AnyRecord);
  if (fact.kind === 'gearDoubted.v1') put(withDoubt(record as PumpRecord, fact.body, issued.factId));
  if (fact.kind === 'noticeGiven.v1')
    put({ ...record, given: [...(record as NoticeRecord).given, { ...fact.body, ...issued }] } as AnyRecord);
}

/** What one fact states, without what it leaves open. */
const statedIn = (made: object): object =>
  Object.fromEntries(Object.entries(made).filter(([, value]) => value !== null && !Array.isArray(value)));
