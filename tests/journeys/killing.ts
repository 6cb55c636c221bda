/**
 * Kills the browser again and again at moments drawn from a seed, and looks each time whether everything it had promised is on the disk.
 * Most kills come within 30 ms after a tap; some come later, some while something is typed.
 */
import { expect, type Page } from '@playwright/test';
import { type Seeded, seededRandom } from '#tests/store/seeded.ts';
import { en as shell } from '#words/shell.ts';
import { en as start } from '#words/start.ts';
import { type Ledger, newLedger } from './acknowledged.ts';
import { openPracticeBook } from './appPages.ts';
import { type BookOnDisk, newestSample, readDisk, tornIn } from './bookOnDisk.ts';
import { type DeedName, deeds, doDeed, type Hand, nextDeed, prepareDeed, startRemark, toSample } from './deeds.ts';
import { dropProfile, newProfile, type RealBrowser, startBrowser } from './realBrowser.ts';

/** "within 30 ms after a tap": issue 2, "What must be seen to work" 7. */
export const soonMs = 30;
/** Typed text is durable within a second of the last keystroke: design.md 3.1. */
const durableMs = 1000;
const database = 'fullshift-practice';

/** Saved and seen to be saved between two kills. */
const deedsARound = 5;

type Moment = 'soon' | 'later' | 'typing';

export interface Killed {
  readonly kills: number;
  readonly soonKills: number;
  readonly acknowledged: number;
  readonly typedFound: number;
  readonly seconds: number;
  /** What the last tap before each kill was, and how often it had reached the disk already. */
  readonly arrivals: Readonly<Record<string, { arrived: number; notYet: number }>>;
}

/** Seven of ten soon after a tap, one later, two while typing: in an order of the seed's. */
function momentsFor(kills: number, pick: (high: number) => number): Moment[] {
  const moments = Array.from({ length: kills }, (_, index): Moment => {
    const place = index % 10;
    return place < 7 ? 'soon' : place === 7 ? 'later' : 'typing';
  });
  for (let index = moments.length - 1; index > 0; index -= 1) {
    const other = pick(index);
    [moments[index], moments[other]] = [moments[other] as Moment, moments[index] as Moment];
  }
  return moments;
}

function countsOf({ journal }: BookOnDisk): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { text, about } of journal) {
    const { kind } = JSON.parse(text) as { kind: string };
    for (const key of about) counts.set(`${kind} ${key}`, (counts.get(`${kind} ${key}`) ?? 0) + 1);
  }
  return counts;
}

const unsavedText = (disk: BookOnDisk, text: string): boolean =>
  disk.drafts.some(({ value }) => JSON.stringify(value).includes(text));
const savedText = (disk: BookOnDisk, text: string): boolean => disk.journal.some((row) => row.text.includes(text));

/** The fact that the draft was for has reached the disk, or a new tab has taken the draft over. */
function isMadeGood(disk: BookOnDisk, value: unknown): boolean {
  const why = (value as { readonly typed?: { readonly why?: unknown } } | null)?.typed?.why;
  return typeof why !== 'string' || savedText(disk, why) || unsavedText(disk, why);
}

/** Everything that was promised is there, nothing is torn, and nothing made good is left as a draft. `openForm`: being filled in. */
export function judge(
  disk: BookOnDisk,
  ledger: Pick<Ledger, 'facts' | 'drafts' | 'shown'>,
  openForm: string,
): string[] {
  const textById = new Map(disk.journal.map(({ id, text }) => [id, text]));
  const counts = countsOf(disk);
  const onDisk = new Set(disk.drafts.map(({ key }) => key));
  const lost = [...ledger.facts].filter(([id, text]) => textById.get(id) !== text);
  const fewer = [...ledger.shown].filter(([key, count]) => (counts.get(key) ?? 0) < count);
  const left = [...ledger.drafts].filter(
    ([key, promised]) => promised === null && onDisk.has(key) && !key.startsWith(openForm),
  );
  const gone = [...ledger.drafts].filter(
    ([key, promised]) =>
      promised !== null && !onDisk.has(key) && !(key.startsWith(openForm) && isMadeGood(disk, promised.value)),
  );
  return [
    ...gone.map(([key]) => `the draft is lost: ${key}`),
    ...lost.map(([id, text]) => `lost: ${id} ${text}`),
    ...fewer.map(([key, count]) => `shown as saved ${count} times, there ${counts.get(key) ?? 0}: ${key}`),
    ...left.map(([key]) => `still a draft: ${key}`),
    ...tornIn(disk),
  ];
}

const killAt = (browser: RealBrowser, atMs: number): Promise<number> =>
  new Promise((resolve, reject) => {
    const kill = (): void => {
      const killedMs = Date.now();
      browser.kill().then(() => resolve(killedMs), reject);
    };
    const wait = atMs - Date.now();
    if (wait <= 0) kill();
    else setTimeout(kill, wait);
  });

/**
 * Which book was open last stands in the browser's small storage, which it writes some seconds later: killed before, the first page stands
 * there, and the practice book opens from it as it was left.
 */
async function openAgain({ page, address }: Hand): Promise<void> {
  await page.goto(address);
  const example = page.getByText(shell.example, { exact: true });
  const first = page.getByRole('heading', { level: 1, name: start.heading });
  await expect(example.or(first)).toBeVisible();
  if (await first.isVisible()) await openPracticeBook(page);
}

interface TapKilled {
  readonly name: DeedName;
  /** From the tap to the kill. */
  readonly ms: number;
  readonly killedMs: number;
}

/** Taps, and kills `afterMs` after the page heard the tap. */
async function killAfterTap(hand: Hand, browser: RealBrowser, afterMs: number): Promise<TapKilled> {
  const name = await nextDeed(hand);
  const tap = await prepareDeed(hand, name);
  let heard = false;
  const killed = new Promise<TapKilled>((resolve, reject) => {
    hand.ledger.onTap = (atMs) => {
      heard = true;
      hand.ledger.onTap = () => {};
      killAt(browser, atMs + afterMs).then((killedMs) => resolve({ name, ms: killedMs - atMs, killedMs }), reject);
    };
  });
  await tap().catch((error: unknown) => {
    // Cut short by the kill, as it should be; a tap that the page never heard is a failure of its own.
    if (!heard) throw error;
  });
  return killed;
}

async function killWhileTyping(hand: Hand, browser: RealBrowser, afterMs: number): Promise<number> {
  await startRemark(hand, `Typing ${hand.random.id()}`);
  return killAt(browser, Date.now() + afterMs);
}

interface LastTap {
  readonly name: DeedName;
  /** How many facts of its kind stood on the disk before it. */
  readonly before: number;
}

const countOf = ({ journal }: BookOnDisk, name: DeedName): number =>
  journal.filter(({ text }) => text.includes(`"kind":"${deeds[name].factKind}"`)).length;

/** What outlives a kill. */
interface Campaign {
  readonly address: string;
  readonly seed: number;
  readonly random: Seeded;
  readonly ledger: Ledger;
  readonly typed: Hand['typed'];
  readonly arrivals: Record<string, { arrived: number; notYet: number }>;
  sampleId: string;
  lastTap: LastTap | null;
  killedMs: number;
  soonKills: number;
  typedFound: number;
  typings: number;
}

async function beginPractice({ page, address }: Hand): Promise<string> {
  await page.goto(address);
  await openPracticeBook(page);
  await page.getByRole('link', { name: /^Look at the pump on/ }).click();
  await expect(page.locator('main h1')).toHaveText(/^The pump is on/);
  return /#\/sample\/(\w+)/.exec(page.url())?.[1] ?? '';
}

/** After a kill: the disk before the app has touched it. */
async function examine(campaign: Campaign, page: Page): Promise<BookOnDisk> {
  const { address, ledger, seed, lastTap, arrivals } = campaign;
  await page.goto(`${address}robots.txt`);
  const disk = await readDisk(page, database);
  if (disk === null) throw new Error('the book is gone');
  const openForm = `sample:${campaign.sampleId}/${campaign.typed.form}#`;
  expect(judge(disk, ledger, openForm), `seed ${seed}`).toEqual([]);
  ledger.settleDrafts(openForm, disk.drafts);
  if (lastTap !== null) {
    const count = arrivals[lastTap.name] ?? { arrived: 0, notYet: 0 };
    arrivals[lastTap.name] = count;
    if (countOf(disk, lastTap.name) > lastTap.before) count.arrived += 1;
    else count.notYet += 1;
  }
  return disk;
}

/** Text that stood for a second, and was not made good, is on the page again. */
async function findTyped(campaign: Campaign, hand: Hand, disk: BookOnDisk): Promise<void> {
  const { text, sinceMs, form } = campaign.typed;
  const stoodMs = campaign.killedMs - sinceMs;
  if (form !== 'remark' || stoodMs < durableMs || savedText(disk, text)) return;
  expect(unsavedText(disk, text), `typed and not on the disk: ${text}`).toBe(true);
  await hand.page.goto(`${hand.address}#/sample/${hand.sampleId}?do=remark`);
  await expect(hand.page.getByLabel('Remark', { exact: true })).toHaveValue(text);
  campaign.typedFound += 1;
}

async function strike(campaign: Campaign, hand: Hand, browser: RealBrowser, moment: Moment): Promise<void> {
  const { random } = campaign;
  campaign.lastTap = null;
  if (moment === 'typing') {
    campaign.typings += 1;
    const afterMs = campaign.typings % 2 === 0 ? random.between(0, 500) : random.between(durableMs + 100, 1500);
    campaign.killedMs = await killWhileTyping(hand, browser, afterMs);
  } else {
    const disk = await readDisk(hand.page, database);
    const afterMs = moment === 'soon' ? random.between(0, soonMs - 4) : random.between(soonMs, 400);
    const { name, ms, killedMs } = await killAfterTap(hand, browser, afterMs);
    campaign.killedMs = killedMs;
    campaign.lastTap = { name, before: disk === null ? 0 : countOf(disk, name) };
    if (ms <= soonMs) campaign.soonKills += 1;
  }
}

async function round(campaign: Campaign, browser: RealBrowser, isFirst: boolean, moment: Moment): Promise<void> {
  const { page, context } = browser;
  page.setDefaultTimeout(15_000);
  await campaign.ledger.attachTo(context);
  const hand: Hand = { ...campaign, page };
  if (isFirst) hand.sampleId = await beginPractice(hand);
  else {
    const disk = await examine(campaign, page);
    await openAgain(hand);
    await findTyped(campaign, hand, disk);
    hand.sampleId = newestSample(disk);
  }
  await toSample(hand);
  for (let count = deedsARound; count > 0; count -= 1) await doDeed(hand, await nextDeed(hand));
  campaign.sampleId = hand.sampleId;
  await strike(campaign, hand, browser, moment);
}

export async function killManyTimes(address: string, kills: number, seed: number): Promise<Killed> {
  const random = seededRandom(seed);
  const campaign: Campaign = {
    address,
    seed,
    random,
    ledger: newLedger(),
    typed: { text: '', sinceMs: Number.POSITIVE_INFINITY, form: null },
    arrivals: {},
    sampleId: '',
    lastTap: null,
    killedMs: 0,
    soonKills: 0,
    typedFound: 0,
    typings: 0,
  };
  const profile = newProfile();
  const moments = momentsFor(kills, (high) => random.between(0, high));
  const startedMs = Date.now();
  let browser: RealBrowser | null = null;
  let done = 0;
  try {
    // On a busy machine some kills come later than they should: then a few more are made.
    while (done < kills || (campaign.soonKills < kills / 2 && done < 2 * kills)) {
      browser = await startBrowser(profile);
      await round(campaign, browser, done === 0, moments[done] ?? 'soon');
      done += 1;
    }
    browser = await startBrowser(profile);
    await examine(campaign, browser.page);
  } finally {
    await browser?.kill();
    dropProfile(profile);
  }
  const { soonKills, typedFound, arrivals, ledger } = campaign;
  const seconds = Math.round((Date.now() - startedMs) / 1000);
  return { kills: done, soonKills, acknowledged: ledger.acknowledgedCount, typedFound, seconds, arrivals };
}
