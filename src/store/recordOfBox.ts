/**
 * What stands behind the custody sheet of a box, as a book's text: every fact about its cassettes, their shifts, the pumps, meters and
 * lots they were taken with. It goes into the PDF, so that the shift of a lost phone can be rebuilt from the sheet. Where the sheet
 * shows workers by identifier, no fact about a person goes along.
 */
import type { BoxRecord, FlowCheckRecord, SampleRecord } from '#records/book.ts';
import { factIdOf, noLink, sequenceOf, writerOf } from '#records/chain.ts';
import { writeBookText } from '#records/fileFormat.ts';
import type { BookDatabase, DerivedRow, JournalRow } from './database.ts';
import { now } from './device.ts';
import { deviceNameIn } from './handOver/partners.ts';
import { type Session, theSession } from './session.ts';

export interface BehindSheet {
  readonly boxId: string;
  readonly revision: string;
  readonly paper: 'letter' | 'a4';
  /** Version of the app, for the header. */
  readonly writtenBy: string;
}

const linked = (db: BookDatabase, link: string): Promise<DerivedRow[]> =>
  db.records.where('links').equals(link).toArray() as unknown as Promise<DerivedRow[]>;

async function allLinked(db: BookDatabase, links: Iterable<string>): Promise<DerivedRow[]> {
  const found: DerivedRow[] = [];
  for (const link of new Set(links)) found.push(...(await linked(db, link)));
  return found;
}

const samplesIn = (rows: readonly DerivedRow[]): SampleRecord[] =>
  rows.flatMap((row) => (row.kind === 'sample' ? [row.record as SampleRecord] : []));

const key = (kind: string, id: string | null | undefined): readonly string[] =>
  id === null || id === undefined ? [] : [`${kind}:${id}`];

/** `site.day` */
const dayOf = (shiftId: string): string => shiftId.slice(shiftId.indexOf('.') + 1);
const siteOf = (shiftId: string): string => shiftId.slice(0, shiftId.indexOf('.'));

const keysOfSample = (sample: SampleRecord): readonly string[] => [
  `sample:${sample.id}`,
  `shift:${sample.shiftId}`,
  ...key('workday', sample.workdayId),
  ...key('pump', sample.pumpId),
  ...key('lot', sample.lotId),
  ...key('jobClassification', sample.jobClassificationId),
];

const keysOfCheck = ({ id, shiftId, pumpId, meterId, lotId }: FlowCheckRecord): readonly string[] => [
  `flowCheck:${id}`,
  `shift:${shiftId}`,
  ...key('pump', pumpId),
  ...key('meter', meterId),
  ...key('lot', lotId),
];

interface Around {
  readonly box: BoxRecord;
  readonly samples: readonly SampleRecord[];
  readonly checks: readonly FlowCheckRecord[];
}

/** The samples of the box, the other samples of their shifts, and the flow checks that any of their pumps had on those days. */
async function around(db: BookDatabase, boxId: string): Promise<Around | null> {
  const box = (await db.records.get(`box:${boxId}`))?.record as BoxRecord | undefined;
  if (box === undefined) return null;
  const packed = await db.records.bulkGet(box.packed.sampleIds.map((id) => `sample:${id}`));
  const inBox = samplesIn(packed.filter((row) => row !== undefined));
  const ofShifts = await allLinked(
    db,
    inBox.map(({ shiftId }) => `shift:${shiftId}`),
  );
  const samples = [...new Map([...inBox, ...samplesIn(ofShifts)].map((each) => [each.id, each])).values()];
  const days = new Set(inBox.map(({ shiftId }) => dayOf(shiftId)));
  const ofPumps = await allLinked(
    db,
    samples.flatMap(({ pumpId }) => key('pump', pumpId)),
  );
  const checks = [...ofShifts, ...ofPumps].flatMap((row) =>
    row.kind === 'flowCheck' && days.has(dayOf((row.record as FlowCheckRecord).shiftId))
      ? [row.record as FlowCheckRecord]
      : [],
  );
  return { box, samples, checks };
}

const peopleIn = ({ box, samples, checks }: Around): readonly string[] => [
  `person:${box.packed.samplerId}`,
  ...samples.flatMap(({ workerId }) => key('person', workerId)),
  ...checks.flatMap(({ by }) => key('person', by)),
];

function keysOf(found: Around, bookId: string): ReadonlySet<string> {
  const { box, samples, checks } = found;
  const of = [
    `book:${bookId}`,
    `box:${box.id}`,
    `site:${box.packed.siteId}`,
    `laboratory:${box.packed.laboratoryId}`,
    ...samples.flatMap(keysOfSample),
    ...checks.flatMap(keysOfCheck),
    ...(box.packed.workersShownAs === 'name' ? peopleIn(found) : []),
  ];
  const sites = of.flatMap((each) => (each.startsWith('shift:') ? [`site:${siteOf(each.slice(6))}`] : []));
  return new Set([...of, ...sites]);
}

interface Line {
  readonly kind?: unknown;
  readonly about: readonly string[];
  readonly body?: { readonly sheet?: { readonly workersShownAs?: unknown } };
}

/** What is told of a person on paper is the name and what goes with it; no note, no picture of them. */
const ofPeople = new Set(['personAdded.v1', 'nameChanged.v1', 'valueCorrected.v1', 'correctionSettled.v1']);

/** Papers that tell workers of their days: nothing in them is for a laboratory. */
const notForLaboratories: readonly string[] = ['exposureRecordIssued.v1', 'representsStated.v1'];

/** An earlier revision may have shown names where this one shows identifiers. */
function mayGoAlong(row: JournalRow, withNames: boolean): boolean {
  const { kind, about, body } = JSON.parse(row.text) as Line;
  if (about.some((each) => each.startsWith('person:'))) return withNames && ofPeople.has(String(kind));
  if (notForLaboratories.includes(String(kind))) return false;
  return withNames || kind !== 'custodySheetIssued.v1' || body?.sheet?.workersShownAs === 'identifier';
}

/** The facts that stand right before the first one of each writer: the text begins after them. */
async function before(db: BookDatabase, rows: readonly JournalRow[]): Promise<{ factId: string; link: string }[]> {
  const first = new Map<string, string>();
  for (const { id } of rows) if (!first.has(writerOf(id))) first.set(writerOf(id), id);
  const ids = [...first.values()].flatMap((id) =>
    sequenceOf(id) > 1 ? [factIdOf(writerOf(id), sequenceOf(id) - 1)] : [],
  );
  const found = await db.journal.bulkGet(ids);
  return found.flatMap((row) => (row === undefined || row.link === noLink ? [] : [{ factId: row.id, link: row.link }]));
}

async function read({ db, bookId }: Session, boxId: string) {
  const found = await around(db, boxId);
  if (found === null) return null;
  const keys = keysOf(found, bookId);
  const withNames = found.box.packed.workersShownAs === 'name';
  const rows = await db.journal
    .where('about')
    .anyOf([...keys])
    .distinct()
    .toArray();
  const entries = rows.filter((row) => mayGoAlong(row, withNames)).sort((a, b) => (a.id < b.id ? -1 : 1));
  return { entries, since: await before(db, entries), deviceName: await deviceNameIn(db) };
}

/** The book's text behind a sheet; null when there is no such box here. Read in one transaction. */
export async function recordOfBox({ boxId, revision, paper, writtenBy }: BehindSheet): Promise<string | null> {
  const session = theSession();
  const { db, bookId, writer, which } = session;
  const found = await db.transaction('r', db.journal, db.records, db.meta, async () => read(session, boxId));
  if (found === null) return null;
  const { entries, since, deviceName } = found;
  const from = { writer, deviceName, madeAt: now() };
  const about = { bookId, practice: which === 'practice', writtenBy, from, since, sheet: { boxId, revision, paper } };
  return writeBookText({ ...about, part: 'paper' }, entries);
}
