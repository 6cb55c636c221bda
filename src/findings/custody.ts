/** The values of a box's custody sheet, from the record; or what is missing for it. */
import { epochMsToInstant, instantToEpochMs, offsetMinAt } from '#core/calendar.ts';
import type { Term } from '#core/formula.ts';
import type { Book, BoxRecord, SampleRecord } from '#records/book.ts';
import { type AbsentValue, absent, type CustodyRow, type CustodySheet, type Stated } from '#records/custodySheet.ts';
import { methodById } from '#reference/methods.ts';
import { custodyGaps, type Gap, samplesOfBox } from './gaps.ts';
import { findSample } from './sample.ts';

/** What the record does not know: given by the device when a sheet is made. */
export interface SheetOccasion {
  readonly issuedInstant: string;
  /** Why this revision replaces the one before; null for the first. */
  readonly why: string | null;
  readonly heads: readonly { readonly factId: string; readonly link: string }[];
  readonly editions: { readonly app: string; readonly rules: string; readonly formulas: string };
}

export type SheetOrGaps =
  | { readonly kind: 'sheet'; readonly sheet: CustodySheet; readonly open: readonly Gap[] }
  | { readonly kind: 'gaps'; readonly gaps: readonly Gap[] };

const pad = (value: number): string => String(value).padStart(2, '0');

/** Local time at the site with its offset: 2026-11-25T07:12:00-05:00. */
export function localTimeAt(at: string, zone: string): string {
  const offsetMin = offsetMinAt(at, zone);
  const local = epochMsToInstant(instantToEpochMs(at) + offsetMin * 60_000).slice(0, 19);
  const size = Math.abs(offsetMin);
  return `${local}${offsetMin < 0 ? '-' : '+'}${pad(Math.floor(size / 60))}:${pad(size % 60)}`;
}

const stated = (value: string | null | undefined): Stated<string> => (value ? value : absent('notStated'));
const figure = (term: Term | null, why: AbsentValue): Stated<number> =>
  term && term.estimate.kind === 'exact' ? term.estimate.value : why;

function workerOf(sample: SampleRecord, box: BoxRecord, book: Book): Stated<string> {
  const worker = sample.workerId === null ? undefined : book.people.get(sample.workerId);
  return stated(box.packed.workersShownAs === 'name' ? worker?.name : worker?.identifier);
}

/** Words that people wrote about a cassette, oldest first; what happened to it goes by its key, for the paper to say. */
function remarksOf(sample: SampleRecord): { readonly remarks: string[]; readonly mishaps: CustodyRow['mishaps'] } {
  const written = sample.mishaps.flatMap(({ remark }) => (remark ? [remark] : []));
  return { remarks: [...sample.remarks, ...written], mishaps: sample.mishaps.map(({ mishap }) => mishap) };
}

function rowOf(sample: SampleRecord, box: BoxRecord, book: Book, zone: string): CustodyRow {
  const { id: sampleId, sampleNumber, sampleKind, workOn } = sample;
  const lotNumber = book.lots.get(sample.lotId)?.lotNumber ?? sample.lotId;
  const head = {
    sampleId,
    sampleNumber,
    sampleKind,
    workOn,
    lotNumber,
    ...remarksOf(sample),
    void: sample.voided !== null,
  };
  if (sampleKind === 'blank') {
    const none = absent('noAirDrawn');
    const times = { worker: none, startedAt: none, stoppedAt: none, durationMin: none };
    return {
      ...head,
      ...times,
      flowBeforeLPerMin: none,
      flowAfterLPerMin: none,
      averageFlowLPerMin: none,
      volumeL: none,
    };
  }
  const found = findSample(sampleId, book);
  const [notTaken, notAveraged] = [absent('notTaken'), absent('notAveraged')];
  return {
    ...head,
    worker: workerOf(sample, box, book),
    startedAt: sample.putOn ? localTimeAt(sample.putOn.at, zone) : notTaken,
    stoppedAt: sample.stopped ? localTimeAt(sample.stopped.at, zone) : notTaken,
    durationMin: figure(found.wornMin, notTaken),
    flowBeforeLPerMin: figure(found.asRead.flowBefore, notTaken),
    flowAfterLPerMin: figure(found.asRead.flowAfter, notTaken),
    averageFlowLPerMin: figure(found.asRead.averageFlow, notAveraged),
    volumeL: figure(found.asRead.volume, notAveraged),
  };
}

const nextRevision = (box: BoxRecord): string =>
  String(box.issues.reduce((highest, { revision }) => Math.max(highest, Number(revision)), 0) + 1);

function lotsOf(samples: readonly SampleRecord[], book: Book): CustodySheet['lots'] {
  const lots = new Map<string, string>();
  for (const { lotId } of samples) {
    const lot = book.lots.get(lotId);
    if (lot) lots.set(lot.lotNumber, lot.media);
  }
  return [...lots].map(([lotNumber, media]) => ({ lotNumber, media }));
}

export function custodySheetFor(boxId: string, book: Book, occasion: SheetOccasion): SheetOrGaps {
  const gaps = custodyGaps(boxId, book);
  const box = book.boxes.get(boxId);
  const site = box && book.sites.get(box.packed.siteId);
  const laboratory = box && book.laboratories.get(box.packed.laboratoryId);
  const sampler = box && book.people.get(box.packed.samplerId);
  if (!box || !site || !laboratory || !sampler || !book.book || gaps.some(({ weight }) => weight === 'stops'))
    return { kind: 'gaps', gaps };
  const { packed } = box;
  const samples = samplesOfBox(box, book);
  const rows = samples.map((sample) => rowOf(sample, box, book, site.zone));
  const blankCount = rows.filter(({ sampleKind }) => sampleKind === 'blank').length;
  const sheet: CustodySheet = {
    sheetFormat: 'custodySheet.v1',
    boxId,
    revision: nextRevision(box),
    why: stated(occasion.why),
    issuedAt: localTimeAt(occasion.issuedInstant, site.zone),
    practice: book.book.practice,
    firmName: book.book.firmName,
    site: {
      name: site.name,
      place: absent('notStated'),
      stateCode: site.stateCode,
      setting: site.setting,
      zone: site.zone,
    },
    samplerName: sampler.name,
    laboratory: {
      name: laboratory.name,
      address: stated(laboratory.address),
      accreditation: stated(laboratory.accreditation),
    },
    analysis: packed.analysis,
    method: stated(packed.methodId && (methodById(packed.methodId)?.title ?? packed.methodId)),
    reportingLimitUg: packed.reportingLimitUg ?? absent('notStated'),
    includeWallDeposit: packed.includeWallDeposit,
    callBeforeReanalysis: packed.callBeforeReanalysis,
    turnaround: packed.turnaround,
    remark: stated(packed.remark),
    workersShownAs: packed.workersShownAs,
    lots: lotsOf(samples, book),
    rows,
    counts: { airCount: rows.length - blankCount, blankCount },
    heads: occasion.heads.map((head) => ({ ...head })),
    editions: { ...occasion.editions },
    issuedInstant: occasion.issuedInstant,
  };
  return { kind: 'sheet', sheet, open: gaps };
}
