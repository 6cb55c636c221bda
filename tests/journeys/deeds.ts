/** What a supervisor does with one running pump, tapped on the app's own pages, and the sentence that says each of them is saved. */
import { expect, type Page } from '@playwright/test';
import type { Seeded } from '#tests/store/seeded.ts';
import type { Ledger } from './acknowledged.ts';

export interface Hand {
  readonly page: Page;
  readonly address: string;
  /** The cassette in hand: another one after a change. */
  sampleId: string;
  readonly ledger: Ledger;
  readonly random: Seeded;
  /** What is typed and not yet saved, and since when it has stood so (wall time, ms). Survives a kill. */
  readonly typed: { text: string; sinceMs: number; form: string | null };
}

interface Deed {
  readonly factKind: string;
  readonly sentence: RegExp;
  /** Everything ahead of the tap that counts. */
  readonly before?: (hand: Hand) => Promise<void>;
  readonly tap: RegExp | string;
  /** The heading that follows, where another sentence says that it is saved. */
  readonly leadsTo?: RegExp;
}

const line = ({ page }: Hand, name: RegExp | string): Promise<void> => page.getByRole('button', { name }).click();
const choose = ({ page }: Hand, name: RegExp): Promise<void> =>
  page.getByRole('radio', { name }).first().check({ force: true });

async function type(hand: Hand, label: string, text: string, form: string): Promise<void> {
  const field = hand.page.getByLabel(label, { exact: true });
  hand.typed.text = text;
  hand.typed.form = form;
  hand.typed.sinceMs = Number.POSITIVE_INFINITY;
  await field.fill('');
  await field.pressSequentially(text);
  hand.typed.sinceMs = Date.now();
}

const isWorn = /^The pump is on /;
const saved = /^Saved on this device/;

export const deeds = {
  look: { factKind: 'pumpLookedAt.v1', sentence: saved, tap: 'Looked at it' },
  backIn: { factKind: 'leadAreaEntered.v1', sentence: saved, tap: 'Back in the lead area now', leadsTo: isWorn },
  backOn: { factKind: 'pumpPutBackOn.v1', sentence: saved, tap: 'Back on the worker now', leadsTo: isWorn },
  putOn: { factKind: 'pumpPutOn.v1', sentence: saved, tap: 'Put on now', leadsTo: isWorn },
  stop: { factKind: 'pumpStopped.v1', sentence: /^After leaving/, tap: /^Stop: the pump is off for good/ },
  away: {
    factKind: 'leadAreaLeft.v1',
    sentence: / is away from the lead area$/,
    tap: 'Away now',
    before: async (hand) => {
      hand.typed.form = 'away';
      await line(hand, /^Away from the lead area/);
      await choose(hand, /^Errand/);
    },
  },
  off: {
    factKind: 'pumpTakenOff.v1',
    sentence: /^The pump is off /,
    tap: 'Off the worker now',
    before: async (hand) => {
      hand.typed.form = 'off';
      await line(hand, /^Pump off the worker/);
      await choose(hand, /^is switched off/);
      await choose(hand, /^is away from the lead area/);
      await choose(hand, /^Lunch/);
    },
  },
  change: {
    factKind: 'pumpStopped.v1',
    sentence: /^The cassette for .* is prepared/,
    tap: 'Old one off, prepare the new one',
    before: async (hand) => {
      hand.typed.form = 'change';
      await line(hand, /^Change the cassette/);
    },
  },
  remark: {
    factKind: 'remarkMade.v1',
    sentence: isWorn,
    tap: 'Save the remark',
    before: async (hand) => {
      await startRemark(hand, `Remark ${hand.random.id()}`);
    },
  },
  mistake: {
    factKind: 'stoppedByMistake.v1',
    sentence: isWorn,
    tap: 'It was not stopped',
    before: async (hand) => {
      await line(hand, /^Stopped by mistake/);
      await type(hand, 'How it came about', `Thumb ${hand.random.id()}`, 'mistake');
    },
  },
} satisfies Record<string, Deed>;
export type DeedName = keyof typeof deeds;

export async function startRemark(hand: Hand, text: string): Promise<void> {
  await line(hand, /^Write a remark/);
  await type(hand, 'Remark', text, 'remark');
}

/** What the page of the sample allows just now; looks come most often, as on site. */
export async function nextDeed({ page, random }: Hand): Promise<DeedName> {
  const heading = (await page.locator('main h1').textContent()) ?? '';
  if (/^Put the pump on/.test(heading)) return 'putOn';
  if (/away from the lead area$/.test(heading)) return 'backIn';
  if (/^The pump is off/.test(heading)) return 'backOn';
  if (/is done for this cassette$/.test(heading)) return 'mistake';
  return random.pick(['look', 'look', 'look', 'remark', 'away', 'off', 'stop', 'change'] as const);
}

/** Goes to the page of the sample, by its address within the app, and waits until it stands. */
export async function toSample({ page, address, sampleId }: Hand): Promise<void> {
  await page.goto(`${address}#/sample/${sampleId}`);
  await expect(page.locator('main h1')).toHaveText(/pump|away from|is done/);
  await expect(page.locator('main [data-action=main]')).toBeVisible();
}

export async function prepareDeed(hand: Hand, name: DeedName): Promise<() => Promise<void>> {
  const deed: Deed = deeds[name];
  hand.typed.form = null;
  await deed.before?.(hand);
  hand.ledger.await({ factKind: deed.factKind, about: `sample:${hand.sampleId}`, sentence: deed.sentence });
  return () => hand.page.getByRole('button', { name: deed.tap, exact: typeof deed.tap === 'string' }).click();
}

/** A deed from beginning to end: tapped, and shown to be saved. */
export async function doDeed(hand: Hand, name: DeedName): Promise<void> {
  const tap = await prepareDeed(hand, name);
  const settled = hand.ledger.settled();
  await tap();
  await settled;
  const { leadsTo }: Deed = deeds[name];
  if (leadsTo) await expect(hand.page.locator('main h1')).toHaveText(leadsTo);
  if (name === 'change') hand.sampleId = /prepared=(\w+)/.exec(hand.page.url())?.[1] ?? hand.sampleId;
  if (name === 'stop' || name === 'change') await toSample(hand);
}
