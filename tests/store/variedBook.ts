/**
 * Small books that differ in what they hold: writers, papers, pictures, corrections, voids with results, kinds of a version to come, entries
 * that are missing, letters from everywhere. From a seed. Made of the text of facts alone; nothing here is an expected value.
 */
import { createHash } from 'node:crypto';
import type { FileRow, JournalRow } from '#store/database.ts';
import { chainOf, type EntryWish } from './chains.ts';
import { type Seeded, seededRandom } from './seeded.ts';

export interface VariedBook {
  readonly bookId: string;
  readonly writers: readonly string[];
  readonly rows: readonly JournalRow[];
  readonly files: readonly FileRow[];
  /** Entries left out that later ones of the same writer follow, as `writer from to`. */
  readonly missing: readonly string[];
  /** What is in it, for the count of what was met. */
  readonly holds: ReadonlySet<string>;
}

const words = ['Fenster', 'окно', '窓', 'ventana «norte»', 'a "quoted" line\nand another', '𝛼 < β & γ', "Ada O'Quill"];

const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

function fileOf({ between }: Seeded, type: FileRow['type'], least: number, most: number): FileRow {
  const bytes = Uint8Array.from({ length: between(least, most) }, () => between(0, 255));
  const head =
    type === 'application/pdf' ? [...'%PDF-1.7\n'].map((letter) => letter.charCodeAt(0)) : [0xff, 0xd8, 0xff];
  bytes.set(head.slice(0, bytes.length));
  return { hash: sha256(bytes), type, bytes };
}

type Put = (kind: string, about: string, body: Readonly<Record<string, unknown>>) => string;

/** A report, and corrections of it that do not know of each other. */
function putResult({ between }: Seeded, put: Put, sampleId: string): void {
  const about = `sample:${sampleId}`;
  const mass = { kind: 'measured', massUg: between(1, 400) / 8 };
  const resultId = put('resultReceived.v1', about, {
    ...{ sampleId, reportNumber: `R-${between(1, 99)}`, laboratoryId: null, accreditation: null, methodId: null },
    ...{ receivedOn: '2026-11-09', reportedOn: null, analysedOn: null, mass, reportingLimitUg: 2.5 },
    ...{ blankCorrected: 'no', wallDeposit: 'notStated', saeFraction: null, laboratoryVolumeL: null },
    ...{ laboratoryConcentrationUgPerM3: null, remark: null },
  });
  const [path, old] = ['/mass/massUg', mass.massUg];
  for (let times = between(0, 2); times > 0; times -= 1)
    put('valueCorrected.v1', about, { replaces: resultId, path, old, new: between(1, 99), supersedes: null });
}

/** From prepared to voided, as far as it goes, with its pictures. */
function putSample(random: Seeded, put: Put, shiftId: string, keep: (file: FileRow) => FileRow): void {
  const { between, pick, id } = random;
  const sampleId = id();
  const about = `sample:${sampleId}`;
  const ids = { workerId: id(), pumpId: id(), lotId: id(), jobClassificationId: null, follows: null };
  const sampleNumber = String(between(100_000, 999_999));
  put('samplePrepared.v1', about, { sampleId, sampleNumber, shiftId, taskIds: ['handScraping'], ...ids });
  put('pumpPutOn.v1', about, { sampleId });
  if (between(0, 4) > 0) put('pumpStopped.v1', about, { sampleId, pumpMin: between(1, 480) });
  if (between(0, 2) === 0) put('remarkMade.v1', about, { sampleId, text: pick(words) });
  if (between(0, 1) === 0) putResult(random, put, sampleId);
  if (between(0, 3) === 0) put('sampleVoided.v1', about, { sampleId });
  if (between(0, 2) === 0)
    put(`${pick(['window', 'paint', 'lamp'])}Oiled.v${between(1, 3)}`, about, { text: pick(words) });
  for (let times = pick([0, 0, 1, 2, 6]); times > 0; times -= 1) {
    const { hash, bytes } = keep(fileOf(random, 'image/jpeg', 40, 900));
    const size = { widthPx: between(1, 2048), heightPx: between(1, 2048), bytesCount: bytes.length };
    put('photoTaken.v1', about, {
      photoId: id(),
      of: pick(['label', 'site', 'other']),
      hash,
      type: 'image/jpeg',
      ...size,
    });
  }
}

/** Who worked there, what they were told on paper, and what was done of it. */
function putTold(random: Seeded, put: Put, shiftId: string, keep: (file: FileRow) => FileRow): void {
  const { between, pick, id } = random;
  const [workerId, noticeId] = [id(), id()];
  const workdayId = `${workerId}.${shiftId.slice(-10)}`;
  const tasks = { taskIds: ['handScraping'], jobClassificationId: null };
  const noted = put('workNoted.v1', `workday:${workdayId}`, { workdayId, shiftId, ...tasks, respirator: null });
  if (between(0, 3) === 0) put('workStruck.v1', `workday:${workdayId}`, { workdayId, noted });
  const { hash: pdfHash } = keep(fileOf(random, 'application/pdf', 60, 3000));
  put('noticeIssued.v1', `notice:${noticeId}`, {
    ...{ noticeId, measurementId: workdayId, revision: '1', resultFactIds: [], receivedOn: '2026-11-20' },
    ...{ workerIds: [workerId], form: 'inWriting', places: [], shownAs: 'name', languages: ['en', 'es'] },
    ...{ pelStatement: true, correctiveAction: pick(words), notice: { says: pick(words) }, pdfHash, heads: [] },
    editions: { app: '1', rules: '1', formulas: '1' },
  });
  put('noticeGiven.v1', `notice:${noticeId}`, {
    ...{ noticeId, workerId, how: 'readAloud', place: null, language: 'es', initials: 'A' },
  });
  const dutyId = `tell.${workdayId}`;
  const done = { doneOn: '2026-11-21', doneById: null, whereItLies: pick(words), remark: null };
  put('dutyDone.v1', `duty:${dutyId}`, { dutyId, ...done });
  if (between(0, 2) === 0) put('dutyReopened.v1', `duty:${dutyId}`, { dutyId });
}

/** One writer's entries about its own records; papers and pictures are added to `files`. */
function wishesOf(random: Seeded, writer: string, bookId: string | null, files: FileRow[]): EntryWish[] {
  const { between, pick, id } = random;
  const wishes: EntryWish[] = [];
  const put: Put = (kind, about, body) => {
    wishes.push({ kind, about, body });
    return `${writer}.${String(wishes.length).padStart(8, '0')}`;
  };
  const keep = (file: FileRow): FileRow => {
    files.push(file);
    return file;
  };
  if (bookId !== null) put('bookOpened.v1', `book:${bookId}`, { bookId, firmName: pick(words), practice: false });
  const siteId = id();
  const place = { stateCode: 'OH', setting: 'indoors', altitudeM: pick([null, 230]), zone: 'America/New_York' };
  put('siteAdded.v1', `site:${siteId}`, { siteId, name: pick(words), ...place });
  const shiftId = `${siteId}.2026-11-0${between(1, 9)}`;
  put('shiftOpened.v1', `shift:${shiftId}`, { shiftId, siteId, workOn: shiftId.slice(-10) });
  for (let count = between(0, 3); count > 0; count -= 1) putSample(random, put, shiftId, keep);
  if (between(0, 3) === 0) putTold(random, put, shiftId, keep);
  if (between(0, 2) === 0) {
    const [boxId, { hash: pdfHash }] = [id(), keep(fileOf(random, 'application/pdf', 60, 3000))];
    const sheet = { revision: '1', paper: 'a4', sheet: { remark: pick(words) }, pdfHash, heads: [] };
    put('custodySheetIssued.v1', `box:${boxId}`, {
      boxId,
      ...sheet,
      editions: { app: '1', rules: '1', formulas: '1' },
    });
  }
  return wishes;
}

/** What the file must name as missing: stretches left out before the last entry that is there. */
function stretchesLeftOut(writer: string, leftOut: ReadonlySet<number>, count: number): readonly string[] {
  const found: string[] = [];
  for (let from = 1; from <= count; from += 1) {
    if (!leftOut.has(from)) continue;
    let to = from;
    while (leftOut.has(to + 1)) to += 1;
    if (to < count) found.push(`${writer} ${from} ${to}`);
    from = to;
  }
  return found;
}

const heldBy: readonly (readonly [string, RegExp])[] = [
  ['correction', /"valueCorrected/],
  ['void', /"sampleVoided/],
  ['result', /"resultReceived/],
  ['unknown kind', /Oiled\.v/],
  ['roster', /"workNoted/],
  ['notice', /"noticeIssued/],
];

export function variedBook(seed: number): VariedBook {
  const random = seededRandom(seed);
  const { between, id } = random;
  const bookId = id();
  const writers = Array.from({ length: between(1, 4) }, id);
  const files: FileRow[] = [];
  const missing: string[] = [];
  const rows = writers.flatMap((writer, at) => {
    const chain = chainOf(writer, wishesOf(random, writer, at === 0 ? bookId : null, files));
    // The first writer opened the book and is this device: nothing of its own is missing.
    const gaps = at === 0 ? 0 : between(0, 2);
    const leftOut = new Set(Array.from({ length: gaps }, () => between(1, chain.length)));
    missing.push(...stretchesLeftOut(writer, leftOut, chain.length));
    return chain.filter((_, index) => !leftOut.has(index + 1));
  });
  const text = rows.map((row) => row.text).join('\n');
  const holds = new Set(heldBy.filter(([, found]) => found.test(text)).map(([name]) => name));
  const named = files.filter(({ hash }) => text.includes(hash));
  if (named.some(({ type }) => type === 'image/jpeg')) holds.add('picture');
  if (named.some(({ type }) => type === 'application/pdf')) holds.add('paper');
  if (missing.length > 0) holds.add('gap');
  if (writers.length > 1) holds.add('several writers');
  if (named.length > 12) holds.add('more files than go in at once');
  const sorted = rows.sort((a, b) => (a.id < b.id ? -1 : 1));
  return { bookId, writers, rows: sorted, files: named, missing, holds };
}
