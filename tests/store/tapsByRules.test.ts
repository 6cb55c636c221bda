/**
 * Five tabs of one device, each with its own modules and its own connection, tap 1,000 times on the same few records, all five at once.
 * What is written, and what is refused, is held against rules written down a second time (dayRules.ts) in the order of the journal:
 * whatever was written could be done at its place, and whatever was refused could not be done at some moment of its round.
 */
import { createHash, randomInt } from 'node:crypto';
import { setImmediate } from 'node:timers/promises';
import { beforeAll, expect, test, vi } from 'vitest';
import type { FileRow, JournalRow } from '#store/database.ts';
import type * as DeviceFile from '#store/device.ts';
import { setPorts } from '#store/device.ts';
import type * as DraftsFile from '#store/drafts.ts';
import { derivedRows } from '#store/lookup.ts';
import type * as Opening from '#store/opening.ts';
import { newBook } from '#store/opening.ts';
import type * as SessionFile from '#store/session.ts';
import { theSession } from '#store/session.ts';
import type * as WriteFile from '#store/write.ts';
import { write } from '#store/write.ts';
import { type Day, doTap, type Tap, whyNot } from './dayRules.ts';
import { thumbs, type Wanted, wantedOf } from './dayTaps.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { type Library, library, openingFacts } from './scenario.ts';
import { seededRandom } from './seeded.ts';

const tabsCount = 5;
const rounds = 200;
const seed = Number(process.env.SEED ?? randomInt(2 ** 31));
console.info(`seed ${seed} (SEED=${seed} taps the same again)`);
const random = seededRandom(seed);
const { between, pick, id } = random;
const clock = testClock();
const ports = {
  wallMs: () => clock.atMs,
  monotonicMs: () => clock.monotonicMs,
  random: (bytes: Uint8Array<ArrayBuffer>): void => void bytes.set(Array.from(bytes, () => between(0, 255))),
};

interface Tab {
  readonly name: string;
  readonly write: typeof write;
  readonly drafts: typeof DraftsFile;
  readonly session: SessionFile.Session;
  readonly state: typeof SessionFile.bookState;
  /** What was typed here and not made good yet. */
  readonly typing: Map<string, string>;
}

async function newTab(): Promise<Tab> {
  vi.resetModules();
  const device: typeof DeviceFile = await import('#store/device.ts');
  device.setPorts(ports);
  const opening: typeof Opening = await import('#store/opening.ts');
  const session: typeof SessionFile = await import('#store/session.ts');
  const writing: typeof WriteFile = await import('#store/write.ts');
  const drafts: typeof DraftsFile = await import('#store/drafts.ts');
  await opening.openBooks();
  const own = { name: drafts.tabId(), typing: new Map<string, string>() };
  return { ...own, write: writing.write, drafts, session: session.theSession(), state: session.bookState };
}

let site: Library;
const tabs: Tab[] = [];
const journal = () => theSession().db.journal.orderBy('id').toArray();

beforeAll(async () => {
  setPorts(ports);
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  site = library();
  expect(await write(openingFacts(site))).toMatchObject({ kind: 'written' });
  for (let at = 0; at < tabsCount; at += 1) tabs.push(await newTab());
  expect(new Set(tabs.map(({ session }) => session.db)).size).toBe(tabsCount);
  expect(new Set(tabs.map(({ name }) => name)).size).toBe(tabsCount);
});

interface Tapped {
  readonly tab: Tab;
  readonly tap: Tap;
  readonly wanted: Wanted;
  readonly answer: WriteFile.Written;
}

/** Types, waits as long as a thumb does, and taps. */
async function tapped(tab: Tab, tap: Tap, wanted: Wanted, wait: number, words: string): Promise<Tapped> {
  const draftKey = tap.kind === 'issue' ? `box:${tap.boxId}` : `sample:${tap.sampleId}`;
  tab.drafts.setDraft(draftKey, words);
  expect(await tab.drafts.flushDraft(draftKey)).toBe(true);
  tab.typing.set(draftKey, words);
  for (let ticks = wait; ticks > 0; ticks -= 1) await setImmediate();
  const { files, fact } = wanted;
  const answer = await tab.write([fact], { draftKey, ...(files.length > 0 ? { files } : {}) });
  if (answer.kind === 'written') tab.typing.delete(draftKey);
  return { tab, tap, wanted, answer };
}

const { prepare, tap: tapAs, sameButton } = thumbs(random);

/** Scattered, or all on one cassette, or all on one button. */
function tapsOf(day: Day, at: number): readonly Tap[] {
  const open = [...day.cassettes].filter(([, one]) => !(one.boxed || one.void)).map(([sampleId]) => sampleId);
  const few = open.slice(0, 8);
  if (few.length < 5) return tabs.map(prepare);
  const how = between(0, 2);
  const same = how === 0 ? sameButton(day, few, at, tabsCount) : null;
  const shared = pick(few);
  return same ?? tabs.map(() => tapAs(day, how === 1 ? shared : pick(few), at));
}

/** Each tab taps once, all at once, on what it saw when the round began. */
function round(day: Day, at: number): Promise<Tapped[]> {
  const taps = tapsOf(day, at);
  const wishes = tabs.map((tab, which) => {
    const tap = taps[which] as Tap;
    return { tab, tap, wanted: wantedOf(tap, day, site), wait: between(0, 6), words: id() };
  });
  return Promise.all(wishes.map(({ tab, tap, wanted, wait, words }) => tapped(tab, tap, wanted, wait, words)));
}

const idsIn = ({ answer }: Tapped): readonly string[] => (answer.kind === 'written' ? answer.factIds : []);

/** The entry says what was tapped, letter by letter; the book filled in a number, and what a correction follows on. */
function expectSaid({ tap, wanted, answer }: Tapped, { text }: JournalRow): string {
  const { kind, body } = JSON.parse(text) as { kind: string; body: Record<string, unknown> };
  const filled = tap.kind === 'prepare' && tap.number === null ? { sampleNumber: body.sampleNumber } : {};
  const follows = tap.kind === 'correctLot' ? { supersedes: body.supersedes } : {};
  expect({ kind, body }).toEqual({ kind: wanted.fact.kind, body: { ...wanted.fact.body, ...filled, ...follows } });
  if (tap.kind === 'prepare') expect(answer).toMatchObject({ sampleNumbers: [body.sampleNumber] });
  return String(body.sampleNumber);
}

/** A refusal, with its reason, is right when it would have been at some moment of the round. */
function expectRefused({ tap, answer }: Tapped, moments: readonly Day[], at: number): readonly string[] {
  if (answer.kind !== 'refused') throw new Error(JSON.stringify(answer));
  const told = answer.refusals.map(({ key }) => String(key));
  const reasons = moments.map((moment) => whyNot(moment, tap, at));
  const fits = reasons.some((why) => why !== null && told.includes(why));
  expect({ at, tap, told, reasons, fits }).toMatchObject({ fits: true });
  return told;
}

/** Replays what the journal got in this round by the rules, then judges what was refused. Hands back the reasons told. */
function judge(day: Day, made: readonly Tapped[], added: readonly JournalRow[], at: number): readonly string[] {
  const moments = [structuredClone(day)];
  expect(made.flatMap(idsIn).sort()).toEqual(added.map((row) => row.id));
  for (const row of added) {
    const one = made.find((each) => idsIn(each).includes(row.id)) as Tapped;
    expect({ at, tap: one.tap, whyNot: whyNot(day, one.tap, at) }).toMatchObject({ whyNot: null });
    doTap(day, one.tap, at, { factId: row.id, number: expectSaid(one, row) });
    moments.push(structuredClone(day));
  }
  return made.filter(({ answer }) => answer.kind !== 'written').flatMap((each) => expectRefused(each, moments, at));
}

const hex = (text: string): string => createHash('sha256').update(text, 'utf8').digest('hex');

/** One writer, no number left out, and each link by Node's own SHA-256 over the last. */
function expectOneChain(rows: readonly JournalRow[]): void {
  const { writer } = theSession();
  expect(rows.map((row) => row.id)).toEqual(rows.map((_, at) => `${writer}.${String(at + 1).padStart(8, '0')}`));
  let previous = '';
  for (const { text, link } of rows) {
    previous = hex(previous + hex(text));
    expect(link).toBe(previous);
  }
}

async function expectBeside(files: ReadonlyMap<string, FileRow>, rows: readonly JournalRow[]): Promise<void> {
  const { db } = theSession();
  const kept = (await db.files.toArray()).map(({ hash, bytes }) => [hash, [...bytes]] as const);
  expect(new Map(kept)).toEqual(new Map([...files].map(([hash, { bytes }]) => [hash, [...bytes]])));
  const typed = (await db.drafts.toArray()).map(({ key, value }) => `${key} ${String(value)}`).sort();
  const typing = tabs.flatMap((tab) => [...tab.typing].map(([key, words]) => `${key}#${tab.name} ${words}`));
  expect(typed).toEqual(typing.sort());
  const byKey = (a: { key: string }, b: { key: string }): number => (a.key < b.key ? -1 : 1);
  expect((await db.records.toArray()).sort(byKey)).toEqual([...derivedRows(rows).values()].sort(byKey));
  for (const tab of tabs) expect(tab.state()).toMatchObject({ kind: 'open' });
}

/** That thumbs did get into each other's way, in many manners. */
function expectMet(refusals: ReadonlyMap<string, number>): void {
  expect([...refusals.values()].reduce((sum, times) => sum + times)).toBeGreaterThan(100);
  expect(refusals.size).toBeGreaterThanOrEqual(12);
  expect(['pumpRunningElsewhere', 'workerWearsAnother'].some((key) => refusals.has(key))).toBe(true);
}

test(`${tabsCount * rounds} taps in ${tabsCount} tabs: nothing lost, one chain, no number twice, and what could not be is refused`, async () => {
  const day: Day = { cassettes: new Map(), boxes: new Map() };
  const [refusals, byTab] = [new Map<string, number>(), new Map<string, number>()];
  const count = (of: Map<string, number>, name: string): void => void of.set(name, (of.get(name) ?? 0) + 1);
  const files = new Map<string, FileRow>();
  let known = await journal();
  for (let at = 0; at < rounds; at += 1) {
    clock.forward(60_000);
    const made = await round(day, at);
    const rows = await journal();
    // What was there is there, letter by letter.
    expect(rows.slice(0, known.length)).toEqual(known);
    for (const key of judge(day, made, rows.slice(known.length), at)) count(refusals, key);
    known = rows;
    for (const { tab, wanted } of made.filter(({ answer }) => answer.kind === 'written')) {
      count(byTab, tab.name);
      for (const file of wanted.files) files.set(file.hash, file);
    }
  }
  expectOneChain(known);
  const numbers = [...day.cassettes.values()].map(({ number }) => number);
  expect(new Set(numbers).size).toBe(numbers.length);
  await expectBeside(files, known);
  console.info('cassettes', numbers.length, 'files', files.size, 'written by each tab', [...byTab.values()]);
  console.info('refused', Object.fromEntries(refusals));
  expectMet(refusals);
  expect([...byTab.values()].filter((written) => written > 50)).toHaveLength(tabsCount);
}, 60_000);
