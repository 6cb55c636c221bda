/** Five windows of one device, 1,000 drawn acts at the same moments: no update is lost, one chain, no number twice, conflicts refused aloud. */
import { randomInt } from 'node:crypto';
import { beforeAll, expect, test, vi } from 'vitest';
import type { SampleRecord } from '#records/book.ts';
import { sequenceOf, verifyChain, writerOf } from '#records/chain.ts';
import type { NewFact } from '#records/fact.ts';
import { writeBookText } from '#records/fileFormat.ts';
import type * as Looking from '#store/handOver/looking.ts';
import type * as Taking from '#store/handOver/taking.ts';
import { derivedRows } from '#store/lookup.ts';
import { newFact } from '#store/newFact.ts';
import type * as Opening from '#store/opening.ts';
import { newBook, openBooks } from '#store/opening.ts';
import type * as Rebuild from '#store/rebuild.ts';
import type * as SessionFile from '#store/session.ts';
import { theSession } from '#store/session.ts';
import type * as Write from '#store/write.ts';
import { write } from '#store/write.ts';
import { chainOf } from './chains.ts';
import { newDevice, pickUp, type TestClock, testClock } from './device.ts';
import { entry, type Library, library, openingFacts, sampleOf } from './scenario.ts';
import { type Seeded, seededRandom } from './seeded.ts';

const acts = 1000;
const windows = 5;
const seed = Number(process.env.SEED ?? randomInt(2 ** 31));
console.info(`seed ${seed} (SEED=${seed} draws the same acts again)`);

interface Tab {
  readonly write: typeof Write.write;
  readonly look: typeof Looking.lookInto;
  readonly take: typeof Taking.takeIn;
  readonly settled: typeof Rebuild.rebuildSettled;
  readonly session: () => SessionFile.Session;
}

let clock: TestClock;

/** The modules loaded anew, with a connection of their own to the same database. */
async function openTab(): Promise<Tab> {
  vi.resetModules();
  const { setPorts } = await import('#store/device.ts');
  setPorts({ wallMs: () => clock.atMs, monotonicMs: () => clock.monotonicMs });
  const opening: typeof Opening = await import('#store/opening.ts');
  const session: typeof SessionFile = await import('#store/session.ts');
  const writing: typeof Write = await import('#store/write.ts');
  const looking: typeof Looking = await import('#store/handOver/looking.ts');
  const taking: typeof Taking = await import('#store/handOver/taking.ts');
  const rebuild: typeof Rebuild = await import('#store/rebuild.ts');
  await opening.openBooks();
  return {
    write: writing.write,
    look: looking.lookInto,
    take: taking.takeIn,
    settled: rebuild.rebuildSettled,
    session: session.theSession,
  };
}

const tabs: Tab[] = [];
let day: Library;
const pumpIds: string[] = [];
const workerIds: string[] = [];
const random: Seeded = seededRandom(seed);

beforeAll(async () => {
  clock = testClock();
  await pickUp(newDevice());
  await openBooks();
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  day = library();
  await write(openingFacts(day));
  for (let at = 0; at < 4; at += 1) {
    pumpIds.push(random.id());
    workerIds.push(random.id());
  }
  for (let at = 0; at < windows; at += 1) tabs.push(await openTab());
});

/** What was answered `written`, by what must be found of it afterwards. */
const promised = {
  factIds: [] as string[],
  remarks: [] as string[],
  numbers: [] as string[],
  takenIds: [] as string[],
};
const met = new Map<string, number>();
const count = (name: string): void => void met.set(name, (met.get(name) ?? 0) + 1);

const sampleIds: string[] = [];
const onIds: string[] = [];
/** A few, so that several windows reach for the same one; those that run among them. */
const anySample = (): string => random.pick([...sampleIds.slice(-4), ...onIds.slice(-2)]);
const anyPutOn = (): string => random.pick(onIds) ?? anySample();
const ofSample = (sampleId: string) => sampleOf(day, sampleId);

async function writeIn(tab: Tab, name: string, facts: readonly NewFact[]): Promise<boolean> {
  const outcome = await tab.write(facts);
  count(`${name} ${outcome.kind}`);
  if (outcome.kind === 'refused') for (const { key } of outcome.refusals) count(`refused: ${key}`);
  if (outcome.kind === 'failed') throw new Error(`${name}: ${outcome.why}`);
  if (outcome.kind !== 'written') return false;
  promised.factIds.push(...outcome.factIds);
  promised.numbers.push(...outcome.sampleNumbers);
  return true;
}

async function correct(tab: Tab, sampleId: string): Promise<void> {
  // What the window shows: it may have been corrected in another one between this look and the tap.
  const row = await tab.session().db.records.get(`sample:${sampleId}`);
  if (row === undefined) throw new Error('a written sample is not in the lists');
  const { preparedFactId = '', taskIds } = row.record as SampleRecord;
  const values = ['handScraping', 'drySanding', 'wetSanding', 'cleanup'];
  const next = [random.pick(values), random.pick(values)];
  const body = { replaces: preparedFactId, path: '/taskIds', old: [...taskIds], new: next, supersedes: null };
  const about = [`sample:${sampleId}`];
  await writeIn(tab, 'correction', [newFact('valueCorrected.v1', body, { ...entry(), about, why: 'misread' })]);
}

let files = 0;
async function takeOther(tab: Tab): Promise<void> {
  const rows = chainOf(random.id(), [{ about: `sample:${anySample()}` }, {}, {}]);
  const about = { bookId: theSession().bookId, practice: false, writtenBy: '0.2.0' };
  files += 1;
  const looked = await tab.look(new Blob([writeBookText(about, rows)]));
  if (looked.kind !== 'preview') throw new Error(JSON.stringify(looked));
  const taken = await tab.take(looked);
  count(`file ${taken.kind === 'refused' ? `refused: ${taken.why}` : taken.kind}`);
  if (taken.kind === 'failed') throw new Error(taken.why);
  if (taken.kind === 'takenIn') promised.takenIds.push(...rows.map(({ id }) => id));
}

async function prepare(tab: Tab): Promise<void> {
  const gear = { ...day, pumpId: random.pick(pumpIds) };
  const sample = sampleOf(gear, random.id(), random.pick(workerIds));
  if (await writeIn(tab, 'prepared', [sample.prepared(entry())])) sampleIds.push(sample.sampleId);
}

async function putOn(tab: Tab, sampleId: string): Promise<void> {
  if (await writeIn(tab, 'put on', [ofSample(sampleId).putOn(entry())])) onIds.push(sampleId);
}

async function remark(tab: Tab, name: string): Promise<void> {
  if (await writeIn(tab, 'remark', [ofSample(anySample()).remark(name)(entry())])) promised.remarks.push(name);
}

function drawn(tab: Tab, at: number): () => Promise<unknown> {
  const which = random.between(0, 19);
  if (which < 3 || sampleIds.length === 0) return () => prepare(tab);
  if (which < 9) return () => putOn(tab, anySample());
  if (which < 11) return () => writeIn(tab, 'stopped', [ofSample(anyPutOn()).stopped(entry())]);
  if (which < 13) return () => writeIn(tab, 'sealed', [ofSample(anyPutOn()).sealed(entry())]);
  if (which < 16) return () => correct(tab, random.pick(sampleIds.slice(-2)));
  if (which < 19) return () => remark(tab, `remark ${at}`);
  return () => takeOther(tab);
}

test(`${acts} acts in ${windows} windows`, async () => {
  for (let at = 0; at < acts; at += windows) {
    clock.forward(random.between(1, 90_000));
    await Promise.all(tabs.map((tab, index) => drawn(tab, at + index)()));
  }
  for (const tab of tabs) await tab.settled();

  const journal = await theSession().db.journal.orderBy('id').toArray();
  const { writer } = theSession();
  expect(tabs.map((tab) => tab.session().writer)).toEqual(tabs.map(() => writer));
  const own = journal.filter(({ id }) => writerOf(id) === writer);
  expect(own.map(({ id }) => sequenceOf(id))).toEqual(own.map((_, index) => index + 1));
  expect(verifyChain(own)).toBeNull();

  expect(new Set(promised.factIds).size).toBe(promised.factIds.length);
  const held = new Set(journal.map(({ id }) => id));
  expect(promised.factIds.filter((id) => !held.has(id))).toEqual([]);
  expect(promised.takenIds.filter((id) => !held.has(id))).toEqual([]);
  // Beside them only the book and what was there before the windows opened.
  const openings = 1 + openingFacts(day).length;
  expect(journal).toHaveLength(openings + promised.factIds.length + promised.takenIds.length);

  expect(new Set(promised.numbers).size).toBe(promised.numbers.length);
  const rows = await theSession().db.records.toArray();
  const samples = rows.filter(({ kind }) => kind === 'sample').map(({ record }) => record as SampleRecord);
  expect(samples.map(({ sampleNumber }) => sampleNumber).sort()).toEqual([...promised.numbers].sort());
  expect(samples.flatMap(({ remarks }) => remarks).sort()).toEqual([...promised.remarks].sort());
  // Of two windows that corrected one value at once, one was refused: no conflict is left, and each correction knew of the last.
  expect(samples.filter(({ conflicts }) => conflicts.length > 0)).toEqual([]);
  const corrections = journal.filter(({ text }) => text.includes('"valueCorrected.v1"'));
  const superseded = corrections
    .map(({ text }) => (JSON.parse(text) as { body: { supersedes: string | null } }).body.supersedes)
    .filter((id) => id !== null);
  expect(new Set(superseded).size).toBe(superseded.length);

  const running = samples.filter(({ putOn: on, stopped }) => on !== null && stopped === null);
  expect(new Set(running.map(({ pumpId }) => pumpId)).size).toBe(running.length);
  expect(new Set(running.map(({ workerId }) => workerId)).size).toBe(running.length);
  const sorted = (all: Iterable<{ key: string }>) => [...all].sort((a, b) => (a.key < b.key ? -1 : 1));
  expect(sorted(rows)).toEqual(sorted(derivedRows(journal).values()));

  console.info('met', Object.fromEntries([...met].sort()));
  for (const name of ['refused: valueChangedMeanwhile', 'refused: pumpRunningElsewhere', 'refused: alreadyPutOn'])
    expect(met.get(name) ?? 0, name).toBeGreaterThan(0);
  for (const name of ['prepared', 'put on', 'stopped', 'sealed', 'correction', 'remark'])
    expect(met.get(`${name} written`) ?? 0, name).toBeGreaterThan(0);
  expect(files).toBeGreaterThan(10);
  expect(met.get('file takenIn') ?? 0).toBeGreaterThan(5);
}, 120_000);
