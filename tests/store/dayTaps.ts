/** Thumbs on a day (dayRules.ts): which taps they make, and the facts that a page would write for each. */
import type { FactBody, NewFact } from '#records/fact.ts';
import type { FileRow } from '#store/database.ts';
import { hashOf } from '#store/files.ts';
import { newFact } from '#store/newFact.ts';
import { nextFreeNumber } from '#store/write.ts';
import { cassetteOf, type Day, type OnSample, type Tap, whyNot } from './dayRules.ts';
import { photoOf, pictureOf } from './faultGround.ts';
import { entry, type Library, sampleOf } from './scenario.ts';
import type { Seeded } from './seeded.ts';

/** 79462 with the check digit 3 is the published example of ISO 7064 MOD 11,10: a label that several thumbs type. */
const label = '794623';
const kinds = [
  ...(['putOn', 'look', 'leave', 'enter', 'takeOff', 'putBackOn', 'stop', 'seal', 'void'] as const),
  ...(['prepare', 'issue', 'pack', 'photo', 'remark', 'correctLot', 'result'] as const),
];

const seldom: ReadonlySet<string> = new Set(['prepare', 'pack', 'void', 'issue']);
const atPump: ReadonlySet<string> = new Set(['putOn', 'leave', 'enter', 'takeOff', 'putBackOn', 'stop']);

/** More often what is seldom met otherwise. */
const contested = [
  ...(['putOn', 'putOn', 'putOn', 'leave', 'leave', 'takeOff', 'takeOff', 'enter', 'putBackOn', 'stop'] as const),
  ...(['putOn', 'putOn', 'pack', 'pack', 'issue', 'issue', 'result', 'correctLot', 'seal'] as const),
];

/** Fewer pumps and workers than cassettes. */
export function thumbs(random: Seeded) {
  const { between, pick, id } = random;
  const [pumpIds, workerIds, lotIds] = [
    [id(), id(), id()],
    [id(), id(), id(), id()],
    [id(), id()],
  ] as const;
  const prepare = (): Tap => ({
    ...{ kind: 'prepare', sampleId: id(), pumpId: pick(pumpIds), workerId: pick(workerIds), lotId: pick(lotIds) },
    number: between(0, 3) === 0 ? label : null,
  });

  function tapOf(kind: (typeof kinds)[number], day: Day, sampleId: string): Tap {
    const boxId = [...day.boxes.keys()].at(-1) ?? '';
    if (kind === 'prepare') return prepare();
    if (kind === 'issue') return { kind, boxId, revision: (day.boxes.get(boxId) ?? 0) + 1 };
    if (kind === 'pack') return { kind, sampleId, boxId: id() };
    if (kind === 'remark') return { kind, sampleId, text: id() };
    if (kind === 'correctLot') return { kind, sampleId, old: cassetteOf(day, sampleId).lotId, to: id() };
    if (kind === 'result') return { kind, sampleId, report: pick(['R-1', 'R-2']) };
    return { kind, sampleId };
  }

  /** As somebody taps who sees the day as it is: mostly what the page offers, now and then something it would not. */
  function tap(day: Day, sampleId: string, round: number): Tap {
    const all = kinds
      .filter((kind) => kind !== 'issue' || day.boxes.size > 0)
      .map((kind) => tapOf(kind, day, sampleId));
    // What ends the story of a cassette, or begins another, is not tapped at each turn; what is done to a pump is.
    const offered = all
      .filter((each) => whyNot(day, each, round) === null && (!seldom.has(each.kind) || between(0, 7) === 0))
      .flatMap((each) => (atPump.has(each.kind) ? [each, each, each] : [each]));
    return between(0, 9) === 0 ? pick(all) : pick(offered);
  }

  /** Several thumbs on one button: each on the same cassette; where pumps are put on, each on one that is not yet. */
  function sameButton(day: Day, sampleIds: readonly string[], round: number, count: number): readonly Tap[] | null {
    const kind = pick(contested);
    const fitting = sampleIds.filter((each) => whyNot(day, tapOf(kind, day, each), round) === null);
    if (fitting.length === 0 || (kind === 'issue' && day.boxes.size === 0)) return null;
    const one = pick(fitting);
    const nth = (at: number): string => fitting[at % fitting.length] ?? one;
    return Array.from({ length: count }, (_, at) => tapOf(kind, day, kind === 'putOn' ? nth(at) : one));
  }
  return { prepare, tap, sameButton };
}

export interface Wanted {
  readonly fact: NewFact;
  readonly files: readonly FileRow[];
}
const alone = (fact: NewFact): Wanted => ({ fact, files: [] });

type Simple = (sampleId: string, site: Library) => NewFact;
const simple: Readonly<Record<OnSample, Simple>> = {
  putOn: (sampleId, site) => sampleOf(site, sampleId).putOn(entry()),
  look: (sampleId, site) => sampleOf(site, sampleId).lookedAt(entry()),
  leave: (sampleId) => newFact('leadAreaLeft.v1', { sampleId, reason: 'washing' }, entry()),
  enter: (sampleId) => newFact('leadAreaEntered.v1', { sampleId }, entry()),
  takeOff: (sampleId) =>
    newFact('pumpTakenOff.v1', { sampleId, stillRunning: false, awayFromLead: false, reason: 'lunch' }, entry()),
  putBackOn: (sampleId) => newFact('pumpPutBackOn.v1', { sampleId }, entry()),
  stop: (sampleId, site) => sampleOf(site, sampleId).stopped(entry()),
  seal: (sampleId, site) => sampleOf(site, sampleId).sealed(entry()),
  void: (sampleId) => newFact('sampleVoided.v1', { sampleId }, { ...entry(), why: 'dropped' }),
};

function packed(boxId: string, sampleId: string, { siteId, personId, meterId }: Library): NewFact {
  const asked = { analysis: 'Lead', methodId: null, reportingLimitUg: 2, turnaround: '5 days', remark: null };
  const people = { siteId, laboratoryId: meterId, samplerId: personId };
  const wishes = { includeWallDeposit: true, callBeforeReanalysis: true, workersShownAs: 'name' } as const;
  return newFact('boxPacked.v1', { boxId, sampleIds: [sampleId], ...people, ...asked, ...wishes }, entry());
}

function resultOf(sampleId: string, reportNumber: string): NewFact {
  const body: FactBody<'resultReceived.v1'> = {
    ...{ sampleId, reportNumber, laboratoryId: null, accreditation: null, methodId: null, receivedOn: '2026-11-25' },
    ...{ reportedOn: null, analysedOn: null, mass: { kind: 'measured', massUg: 12 }, reportingLimitUg: 2 },
    ...{ blankCorrected: 'notStated', wallDeposit: 'notStated', laboratoryVolumeL: null, saeFraction: null },
    ...{ laboratoryConcentrationUgPerM3: null, remark: null },
  };
  return newFact('resultReceived.v1', body, entry());
}

let papers = 0;

function issued(boxId: string, revision: number): Wanted {
  papers += 1;
  const bytes = new TextEncoder().encode(`%PDF-1.7 ${boxId} ${revision} ${papers}`);
  const paper: FileRow = { hash: hashOf(bytes), type: 'application/pdf', bytes };
  const body: FactBody<'custodySheetIssued.v1'> = {
    ...{ boxId, revision: String(revision), paper: 'letter', sheet: {}, pdfHash: paper.hash, heads: [] },
    editions: { app: '1', rules: '1', formulas: '1' },
  };
  return { fact: newFact('custodySheetIssued.v1', body, { ...entry(), why: 'put right' }), files: [paper] };
}

/** The fact of a tap, with the bytes that go with it. */
export function wantedOf(tap: Tap, day: Day, site: Library): Wanted {
  if (tap.kind === 'issue') return issued(tap.boxId, tap.revision);
  const { sampleId } = tap;
  const about = [`sample:${sampleId}`];
  switch (tap.kind) {
    case 'prepare': {
      const gear = { ...site, pumpId: tap.pumpId, lotId: tap.lotId };
      const fact = sampleOf(gear, sampleId, tap.workerId).prepared(entry()) as NewFact<'samplePrepared.v1'>;
      return alone({ ...fact, body: { ...fact.body, sampleNumber: tap.number ?? nextFreeNumber } });
    }
    case 'photo': {
      papers += 1;
      const picture = pictureOf(papers, 60 + papers);
      return { fact: photoOf(picture, `sample:${sampleId}`), files: [picture] };
    }
    case 'pack':
      return alone(packed(tap.boxId, sampleId, site));
    case 'remark':
      return alone(newFact('remarkMade.v1', { sampleId, text: tap.text }, entry()));
    case 'correctLot': {
      const { preparedId: replaces } = cassetteOf(day, sampleId);
      const body = { replaces, path: '/lotId', old: tap.old, new: tap.to, supersedes: null };
      return alone(newFact('valueCorrected.v1', body, { ...entry(), about, why: 'misread' }));
    }
    case 'result':
      return alone(resultOf(sampleId, tap.report));
    default:
      return alone(simple[tap.kind](sampleId, site));
  }
}
