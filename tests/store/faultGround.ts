/**
 * A book in which every kind of act has something to act upon: a cassette at each stage, a box with its sheet, a conflict of two devices,
 * a gap. With it one write for each kind of fact. For tests that let every request of every write fail.
 */
import type { BoxRecord, SampleRecord } from '#records/book.ts';
import type { FactBody, FactKind, NewFact } from '#records/fact.ts';
import { writeBookText } from '#records/fileFormat.ts';
import type { FileRow } from '#store/database.ts';
import { newId } from '#store/device.ts';
import { hashOf } from '#store/files.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { setDeviceName } from '#store/handOver/partners.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { newFact } from '#store/newFact.ts';
import { newBook, openBooks } from '#store/opening.ts';
import { theSession } from '#store/session.ts';
import { nextFreeNumber, write } from '#store/write.ts';
import { chainOf, type EntryWish } from './chains.ts';
import { newDevice, pickUp, type TestClock } from './device.ts';
import { layDuties } from './faultGroundDuties.ts';
import { laySeason } from './faultGroundSeason.ts';
import { makeBackup } from './handOvers.ts';
import { entry, flowCheckOf, library, openingFacts, sampleOf, zone } from './scenario.ts';

export const workOn = '2026-11-25';
export const otherWriter = '0therwr1ter0';

/** A small picture's bytes; the app is handed them as they would come out of the canvas. */
export function pictureOf(n: number, bytesCount = 60): FileRow {
  const bytes = Uint8Array.from({ length: bytesCount }, (_, at) => (n * 31 + at * 7) & 255);
  bytes.set([0xff, 0xd8, 0xff]);
  return { hash: hashOf(bytes), type: 'image/jpeg', bytes };
}

export const photoOf = ({ hash, bytes }: FileRow, about: string): NewFact =>
  newFact(
    'photoTaken.v1',
    { photoId: newId(), of: 'label', hash, type: 'image/jpeg', widthPx: 4, heightPx: 3, bytesCount: bytes.length },
    { ...entry(), about: [about] },
  );

/** Entries of another device of this book, as a file without papers. */
export const fileFrom = (wishes: readonly EntryWish[], leftOut: readonly number[] = [], writer = otherWriter): Blob => {
  const rows = chainOf(writer, wishes).filter((_, at) => !leftOut.includes(at));
  const about = { bookId: theSession().bookId, practice: false, writtenBy: '0.2.0' };
  return new Blob([writeBookText(about, rows)]);
};

export async function mustWrite(facts: readonly NewFact[], files: readonly FileRow[] = []): Promise<void> {
  const outcome = await write(facts, { files });
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
}

export async function mustTakeIn(file: Blob): Promise<void> {
  const looked = await lookInto(file);
  if (looked.kind !== 'preview') throw new Error(JSON.stringify(looked));
  const taken = await takeIn(looked);
  if (taken.kind !== 'takenIn') throw new Error(JSON.stringify(taken));
}

/** The same book on another phone, which writes something and hands over everything. */
export async function fromOtherPhone(whole: Blob, sampleId: string, facts: number, pictures: number): Promise<Blob> {
  await pickUp(newDevice());
  await openBooks();
  await mustTakeIn(whole);
  await setDeviceName(`Phone ${facts}`);
  const { remark } = sampleOf({} as never, sampleId);
  for (let at = 0; at < facts; at += 1) await mustWrite([remark(`seen ${at}`)(entry())]);
  for (let at = 0; at < pictures; at += 1) {
    const picture = pictureOf(facts * 10 + at);
    await mustWrite([photoOf(picture, `sample:${sampleId}`)], [picture]);
  }
  return (await makeBackup()).blob;
}

const recordOf = async <R>(key: string): Promise<R> => (await theSession().db.records.get(key))?.record as R;

const stages = ['prepared', 'running', 'away', 'off', 'stopped', 'sealed'] as const;
type Stage = (typeof stages)[number];

const resultOf = (sampleId: string, reportNumber: string): NewFact =>
  newFact(
    'resultReceived.v1',
    {
      ...{ sampleId, reportNumber, laboratoryId: null, accreditation: null, methodId: null, receivedOn: workOn },
      ...{ reportedOn: null, analysedOn: null, mass: { kind: 'measured', massUg: 12 }, reportingLimitUg: 2 },
      ...{ blankCorrected: 'notStated', wallDeposit: 'notStated', laboratoryVolumeL: null, saeFraction: null },
      ...{ laboratoryConcentrationUgPerM3: null, remark: null },
    },
    entry(),
  );

export interface Act {
  readonly kind: FactKind;
  readonly fact: NewFact;
  readonly files?: readonly FileRow[];
}

export interface Ground {
  readonly acts: readonly Act[];
  /** Runs; a remark about it can always be written. */
  readonly runningId: string;
}

/** Writes the book on the device picked up, and hands back what can be written next. */
export async function layGround(clock: TestClock): Promise<Ground> {
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  const day = library();
  await mustWrite(openingFacts(day));
  const at = async (stage: Stage) => {
    const gear = { ...day, pumpId: newId() };
    const sample = sampleOf(gear, newId(), newId());
    const { sampleId } = sample;
    const steps: Readonly<Record<Stage, readonly NewFact[]>> = {
      prepared: [sample.prepared(entry())],
      running: [sample.putOn(entry())],
      away: stage === 'away' ? [newFact('leadAreaLeft.v1', { sampleId, reason: 'washing' }, entry())] : [],
      off: stage === 'off' ? [newFact('pumpTakenOff.v1', offBody(sampleId), entry())] : [],
      stopped: [sample.stopped(entry())],
      sealed: [sample.sealed(entry())],
    };
    for (const step of stages.slice(0, stages.indexOf(stage) + 1)) {
      const facts = steps[step].map((fact) => ({ ...fact, happened: entry().happened }));
      if (facts.length > 0) await mustWrite(facts);
      clock.forward(60_000);
    }
    return sampleId;
  };
  const ids = {
    ...{ prepared: await at('prepared'), running: await at('running'), away: await at('away'), off: await at('off') },
    ...{
      stopped: await at('stopped'),
      sealed: await at('sealed'),
      boxed: await at('sealed'),
      free: await at('sealed'),
    },
    ...{ voided: await at('sealed'), disputed: await at('sealed') },
  };
  await mustWrite([newFact('sampleVoided.v1', { sampleId: ids.voided }, { ...entry(), why: 'dropped' })]);
  await mustWrite([resultOf(ids.voided, 'R-1'), resultOf(ids.disputed, 'R-2')]);
  const box = boxBody(day, [ids.boxed]);
  await mustWrite([newFact('boxPacked.v1', box, entry())]);
  const paper = paperOf(1);
  await mustWrite([sheetOf(box.boxId, '1', paper.hash, null)], [paper]);

  const disputed = await recordOf<SampleRecord>(`sample:${ids.disputed}`);
  const replaces = disputed.results[0]?.factId ?? '';
  const corrected = (massUg: number) => ({ replaces, path: '/mass/massUg', old: 12, new: massUg, supersedes: null });
  const about = [`sample:${ids.disputed}`];
  await mustWrite([newFact('valueCorrected.v1', corrected(21), { ...entry(), about, why: 'digits' })]);
  const ofOther = { kind: 'valueCorrected.v1', about: about[0] ?? '', body: corrected(14) };
  await mustTakeIn(fileFrom([ofOther, {}, {}], [1]));
  const [settling] = (await recordOf<SampleRecord>(`sample:${ids.disputed}`)).conflicts;
  const voided = await recordOf<SampleRecord>(`sample:${ids.voided}`);
  const stopped = await recordOf<SampleRecord>(`sample:${ids.stopped}`);
  const packedFactId = (await recordOf<BoxRecord>(`box:${box.boxId}`)).packedFactId;
  const ofDuties = await layDuties({ day, workOn, write: mustWrite, paperOf });
  const ofSeason = await laySeason({ day, workOn, write: mustWrite });
  clock.forward(60_000);

  const acts: Act[] = [...ofDuties, ...ofSeason];
  const act = <K extends FactKind>(kind: K, body: FactBody<K>, why: string | null = null, keys?: readonly string[]) =>
    acts.push({ kind, fact: newFact(kind, body, { ...entry(), why, ...(keys === undefined ? {} : { about: keys }) }) });
  const give = (fact: NewFact, files?: readonly FileRow[]) =>
    acts.push({ kind: fact.kind, fact, ...(files === undefined ? {} : { files }) });

  const more = library();
  for (const one of [more.siteAdded, more.personAdded, more.pumpAdded, more.meterAdded, more.lotAdded])
    give(one(entry()));
  act('jobClassificationAdded.v1', { jobClassificationId: newId(), name: 'Painter' });
  act('laboratoryAdded.v1', { laboratoryId: newId(), name: 'Quern Hill', address: null, accreditation: null });
  act('nameChanged.v1', { name: 'Ada Quillon' }, null, [`person:${day.personId}`]);
  act('noteMade.v1', { text: 'float sticks' }, null, [`pump:${day.pumpId}`]);
  const shiftId = `${day.siteId}.2026-11-24`;
  act('shiftOpened.v1', { shiftId, siteId: day.siteId, workOn: '2026-11-24' });
  give(flowCheckOf(day, 'before')(entry()));
  act('conditionsNoted.v1', {
    ...{ shiftId: day.shiftId, tool: 'hand', method: 'wet', dustCollection: 'none', containment: 'none' },
    ...{ ventilation: 'still', weather: 'indoors', paintLead: 'tested', area: 'room', remark: null },
  });
  const fresh = sampleOf({ ...day, pumpId: newId() }, newId(), newId());
  give(fresh.prepared(entry()));
  act('fittingChecked.v1', fittingBody(ids.prepared));
  act('pumpPutOn.v1', { sampleId: ids.prepared });
  act('pumpLookedAt.v1', { sampleId: ids.running, running: true, inPlace: true, remark: null });
  act('leadAreaLeft.v1', { sampleId: ids.running, reason: 'washing' });
  act('leadAreaEntered.v1', { sampleId: ids.away });
  act('pumpTakenOff.v1', offBody(ids.running));
  act('pumpPutBackOn.v1', { sampleId: ids.off });
  act('pumpFaulted.v1', { sampleId: ids.running, fault: 'stopped', pumpMin: 3, remark: null });
  act('mishapNoted.v1', { sampleId: ids.running, mishap: 'wet', remark: null });
  act('pumpStopped.v1', { sampleId: ids.running, pumpMin: 5 });
  act('stoppedByMistake.v1', { sampleId: ids.stopped, stopFactId: stopped.stopped?.factId ?? '' });
  act('cassetteSealed.v1', { sampleId: ids.stopped, labelled: true, lockedIn: 'Van', lockedById: null });
  const blank = { sampleId: newId(), sampleNumber: nextFreeNumber, shiftId: day.shiftId, lotId: day.lotId };
  act('blankOpened.v1', { ...blank, openedWhere: 'Truck' });
  act('flowDecided.v1', { sampleId: ids.sealed, use: 'lower' }, 'one float bounced');
  act('sampleVoided.v1', { sampleId: ids.sealed }, 'fell into the bucket');
  act('remarkMade.v1', { sampleId: ids.running, text: 'scaffold moved' });
  const workdayId = `${day.personId}.${workOn}`;
  const piece = {
    startedAt: '2026-11-25T09:00:00.000Z',
    endedAt: '2026-11-25T10:00:00.000Z',
    place: null,
    employer: null,
  };
  act('workHoursStated.v1', { workdayId, pieces: [piece] });
  act('otherWorkAsked.v1', { workdayId, callOut: 'no', secondSite: 'no', secondEmployer: 'no' });
  const minutes = {
    fromAt: piece.startedAt,
    toAt: piece.endedAt,
    as: 'away',
    sampleId: null,
    reason: 'office',
  } as const;
  act('minutesExplained.v1', { workdayId, ...minutes });
  act('dayDescribed.v1', { workdayId, regular: 'yes', reason: null });
  give(resultOf(ids.sealed, 'R-3'));
  act('boxPacked.v1', boxBody(day, [ids.free]));
  const second = paperOf(2);
  give(sheetOf(box.boxId, '2', second.hash, 'put right'), [second]);
  act('boxHandedOver.v1', { boxId: box.boxId, to: 'courier', trackingNumber: null, sealed: true });
  act('boxArrived.v1', { boxId: box.boxId, remark: null });
  const asked = { replaces: packedFactId, path: '/turnaround', old: '5 days', new: '3 days', supersedes: null };
  act('valueCorrected.v1', asked, 'agreed by phone', [`box:${box.boxId}`]);
  const chosen = settling?.candidates[0]?.correctionId ?? '';
  act('correctionSettled.v1', { replaces, path: settling?.path ?? '', chosen }, 'read from the report', about);
  const picture = pictureOf(9);
  give(photoOf(picture, `sample:${ids.running}`), [picture]);
  const review = { sampleId: ids.voided, voidFactId: voided.voided?.factId ?? '', stands: true, knew: [] };
  act('voidReviewed.v1', review, 'it was open');
  act('sheetDifferenceKept.v1', { boxId: box.boxId, revision: '1', recordHash: picture.hash }, 'told by phone');
  const { bookId } = theSession();
  act('missingEntriesAccepted.v1', { bookId, writer: otherWriter, fromCount: 2, toCount: 2 }, 'that phone is lost');
  return { acts, runningId: ids.running };
}

const offBody = (sampleId: string) => ({ sampleId, stillRunning: false, awayFromLead: true, reason: 'lunch' });

const fittingBody = (sampleId: string): FactBody<'fittingChecked.v1'> => ({
  ...{ sampleId, mode: 'fitted', observationOffered: true, initials: 'AQ', language: 'en' },
  points: {
    ...{ pumpSecured: true, tubingSecured: true, breathingZone: true, outsideRespirator: true, insideHelmet: null },
    ...{ inletDown: true, plugsOff: true, running: true },
  },
});

const boxBody = (day: { siteId: string; personId: string }, sampleIds: string[]): FactBody<'boxPacked.v1'> => ({
  ...{
    boxId: newId(),
    siteId: day.siteId,
    sampleIds,
    laboratoryId: newId(),
    samplerId: day.personId,
    analysis: 'Lead',
  },
  ...{ methodId: null, reportingLimitUg: 2, includeWallDeposit: true, callBeforeReanalysis: true },
  ...{ turnaround: '5 days', workersShownAs: 'name', remark: null },
});

/** Stands for the bytes of a sheet; what a real one says is tested elsewhere. */
function paperOf(n: number): FileRow {
  const bytes = new TextEncoder().encode(`%PDF-1.7 sheet ${n} of ${zone}`);
  return { hash: hashOf(bytes), type: 'application/pdf', bytes };
}

const sheetOf = (boxId: string, revision: string, pdfHash: string, why: string | null): NewFact =>
  newFact(
    'custodySheetIssued.v1',
    {
      ...{ boxId, revision, paper: 'letter', sheet: { revision }, pdfHash },
      ...{ editions: { app: '0.2.0', rules: 'r', formulas: 'f' }, heads: [] },
    },
    { ...entry(), why },
  );
