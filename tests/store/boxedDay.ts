/** An invented day in the reading room, up to the custody sheet of its box: for what stands behind a sheet and what comes back from it. */
import { custodyPdf } from '#documents/custodyPdf.ts';
import { custodySheetFor } from '#findings/custody.ts';
import type { NewFact } from '#records/fact.ts';
import { happenedNow, newId } from '#store/device.ts';
import { hashOf } from '#store/files.ts';
import { chainHeads } from '#store/heads.ts';
import { newFact } from '#store/newFact.ts';
import { boxBook } from '#store/reading.ts';
import { recordOfBox } from '#store/recordOfBox.ts';
import { theSession } from '#store/session.ts';
import { nextFreeNumber, write } from '#store/write.ts';
import { fonts } from '../documents/sheets.ts';
import type { TestClock } from './device.ts';
import { entry, flowCheckOf, type Library, library, openingFacts, sampleOf, zone } from './scenario.ts';

const noPerson = { language: 'en', jobClassificationId: null, employer: null } as const;

async function written(facts: readonly NewFact[]): Promise<void> {
  const outcome = await write(facts);
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
}

export interface Boxed {
  readonly day: Library;
  readonly boxId: string;
  readonly sampleIds: readonly string[];
  /** A sample of the same shift that stays out of the box. */
  readonly otherSampleId: string;
}

/** `count` air samples in the box, one beside it, one blank; 2.5 L/min before, 2.4 after, 480 minutes. */
export async function boxedDay(clock: TestClock, count: number, shownAs: 'name' | 'identifier'): Promise<Boxed> {
  const day = library();
  await written(openingFacts(day));
  const samplerId = newId();
  const person = (personId: string, name: string, identifier: string) =>
    newFact('personAdded.v1', { personId, name, identifier, ...noPerson }, entry());
  await written([person(samplerId, 'Wanda Keel', 'S-1')]);
  const samples = [];
  for (let at = 0; at <= count; at += 1) {
    const [workerId, pumpId] = [newId(), newId()];
    const gear = { ...day, pumpId };
    const pump = newFact('pumpAdded.v1', { pumpId, serial: `P-${at}`, model: null }, entry());
    await written([pump, person(workerId, `Worker Oakum ${at}`, `W-${at + 10}`)]);
    await written([flowCheckOf(gear, 'before', 2.5)(entry(samplerId))]);
    const sample = sampleOf(gear, newId(), workerId);
    await written([sample.prepared(entry(samplerId))]);
    samples.push({ sample, gear });
  }
  clock.forward(60_000);
  for (const { sample } of samples) await written([sample.putOn(entry(samplerId))]);
  clock.forward(480 * 60_000);
  for (const { sample, gear } of samples) {
    await written([sample.stopped(entry(samplerId))]);
    await written([flowCheckOf(gear, 'after', 2.4)(entry(samplerId)), sample.sealed(entry(samplerId))]);
  }
  const blankId = newId();
  const blank = { sampleId: blankId, sampleNumber: nextFreeNumber, shiftId: day.shiftId, lotId: day.lotId };
  await written([newFact('blankOpened.v1', { ...blank, openedWhere: 'Truck' }, entry(samplerId))]);
  const laboratoryId = newId();
  const laboratory = { laboratoryId, name: 'Quern Hill Analytical', address: null, accreditation: null };
  await written([newFact('laboratoryAdded.v1', laboratory, entry())]);
  const boxId = newId();
  const sampleIds = [...samples.slice(0, count).map(({ sample }) => sample.sampleId), blankId];
  const asked = { analysis: 'Lead', methodId: null, reportingLimitUg: 2.5, turnaround: '5 days', remark: null };
  const packed = { boxId, siteId: day.siteId, sampleIds, laboratoryId, samplerId, ...asked };
  const packing = { ...packed, includeWallDeposit: true, callBeforeReanalysis: true, workersShownAs: shownAs };
  await written([newFact('boxPacked.v1', packing, entry(samplerId))]);
  const otherSampleId = samples.at(-1)?.sample.sampleId ?? '';
  return { day, boxId, sampleIds, otherSampleId };
}

export interface Issued {
  readonly pdf: Uint8Array;
  readonly hash: string;
  readonly record: string;
}

/** As the page of a box does it: record, bytes, then the fact that names them. */
export async function issueSheet({ boxId }: Boxed, why: string | null = null): Promise<Issued> {
  const book = await boxBook(theSession().db, boxId);
  if (book === null) throw new Error('no box');
  const happened = happenedNow(zone);
  const editions = { app: '0.2.0', rules: 'r', formulas: 'f' };
  const made = custodySheetFor(boxId, book, { issuedInstant: happened.at, why, heads: await chainHeads(), editions });
  if (made.kind === 'gaps') throw new Error(JSON.stringify(made.gaps));
  const { sheet } = made;
  const record = await recordOfBox({ boxId, revision: sheet.revision, paper: 'letter', writtenBy: '0.2.0' });
  if (record === null) throw new Error('no record');
  const pdf = await custodyPdf(sheet, { paper: 'letter', fonts, record });
  const hash = hashOf(pdf);
  const body = { boxId, revision: sheet.revision, paper: 'letter', sheet, pdfHash: hash, editions, heads: sheet.heads };
  const act = newFact('custodySheetIssued.v1', body as never, { happened, by: null, why });
  const outcome = await write([act], { files: [{ hash, type: 'application/pdf', bytes: pdf }] });
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
  return { pdf, hash, record };
}
