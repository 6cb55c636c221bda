/** The season ahead, by hands and eyes: plans, gear, prices, the evening before with its papers, and the morning after. */
import { join } from 'node:path';
import { expect } from '@playwright/test';
import { en as entries } from '#words/gear.ts';
import { en as gear } from '#words/gearScreen.ts';
import { en as lists } from '#words/lists.ts';
import { en as money } from '#words/money.ts';
import { en as moneyScreen } from '#words/moneyScreen.ts';
import { en as plan } from '#words/planScreen.ts';
import { en as roster } from '#words/roster.ts';
import { en as season } from '#words/season.ts';
import { en as tomorrow } from '#words/tomorrowScreen.ts';
import { codesIn, drawnAt200, greyPage } from '../documents/codesOnPages.ts';
import { oracle } from '../house/oracles.ts';
import { address, go, pagesOf } from './dutySteps.ts';
import { choose, fill, heading, type Notebook, says, tap, tick } from './notebookSteps.ts';

export const out = join('tests', 'out', 'season');

export interface NewPlan {
  readonly task: string;
  readonly setting: 'Indoors' | 'Outdoors';
  /** Written down here, or chosen. */
  readonly job: { readonly name: string; readonly isNew: boolean };
  /** Ticked, or written down here with what they read. */
  readonly crew: readonly { readonly name: string; readonly reads?: 'English' | 'Español' }[];
  readonly highest?: { readonly name: string; readonly reason: string };
  readonly day?: string;
}

/** The list, read top to bottom by the tasks of its groups. */
export async function groupsInOrder({ page }: Notebook, tasks: readonly string[]): Promise<readonly string[]> {
  const names = page.locator('main li > h2');
  await expect(names.first()).toBeVisible();
  return (await names.allTextContents()).map((text) => tasks.find((task) => text.startsWith(task)) ?? text);
}

export async function openSeason(notebook: Notebook): Promise<void> {
  await go(notebook, '/');
  await go(notebook, '/season');
  await heading(notebook, season.heading);
  await expect(notebook.page.getByText(season.looking)).toHaveCount(0);
}

/** From the list to the form, and to the page of the plan. Reporting limit 2.5 µg, 2 L/min, one cassette a day. */
export async function planIt(notebook: Notebook, wanted: NewPlan): Promise<string> {
  const { page } = notebook;
  await openSeason(notebook);
  await go(notebook, '/plan');
  await heading(notebook, plan.heading);
  await fill(notebook, 'Find a task', wanted.task);
  await tick(notebook, new RegExp(`^${wanted.task}$`));
  await choose(notebook, wanted.setting);
  // The first one of a book is written down without a choice.
  const addJob = page.getByRole('radio', { name: plan.work.addJob });
  if (wanted.job.isNew && !(await addJob.isChecked())) await choose(notebook, plan.work.addJob);
  if (wanted.job.isNew) await fill(notebook, plan.work.jobName, wanted.job.name);
  else await choose(notebook, wanted.job.name);
  let added = 0;
  for (const { name, reads } of wanted.crew) {
    if (reads === undefined) await tick(notebook, new RegExp(`^${name}`));
    else {
      await tap(notebook, plan.who.add);
      added += 1;
      const lines = plan.who.added(added);
      await fill(notebook, roster.person.name, name, lines);
      await choose(notebook, reads, lines);
    }
  }
  if (wanted.highest !== undefined) {
    await choose(notebook, plan.who.choices.highest);
    await tap(notebook, plan.save);
    await says(notebook, new RegExp(plan.who.reason));
    await page.getByLabel(plan.who.highest, { exact: true }).selectOption({ label: wanted.highest.name });
    await fill(notebook, plan.who.reason, wanted.highest.reason);
  }
  if (wanted.day !== undefined) await fill(notebook, plan.days.day(1), wanted.day);
  await page.getByLabel(plan.how.method).selectOption({ label: 'NIOSH 7082, Lead by flame AAS' });
  await fill(notebook, new RegExp(`^${plan.how.reportingLimit}`), '2.5');
  await fill(notebook, new RegExp(`^${plan.how.flow}`), '2');
  if (wanted.highest !== undefined) await notebook.picture('plan');
  await tap(notebook, plan.save);
  await heading(notebook, new RegExp(`^${wanted.task}`));
  return address(notebook).slice('plan/'.length);
}

/** Two pumps, a flow meter with its certificate, a lot; both pumps on the charger. */
export async function enterGear(notebook: Notebook): Promise<void> {
  await go(notebook, '/gear');
  await says(notebook, gear.empty);
  const add = async (text: string, fields: () => Promise<void>): Promise<void> => {
    await heading(notebook, gear.heading);
    await tap(notebook, text);
    await fields();
    await tap(notebook, lists.save);
  };
  for (const serial of ['P-11', 'P-12'])
    await add(gear.registers.pump.add, () => fill(notebook, entries.pump.serial, serial));
  await add(gear.registers.meter.add, async () => {
    await choose(notebook, /^Soap film/);
    await fill(notebook, entries.meter.serial, 'S-3');
    await fill(notebook, entries.meter.certificateOn, '3/2/2026');
    await fill(notebook, entries.meter.dueOn, '3/2/2027');
  });
  await add(gear.registers.lot.add, async () => {
    await fill(notebook, entries.lot.lotNumber, 'M37-2208');
    await fill(notebook, new RegExp(`^${entries.lot.expiresOn}`), '6/30/2027');
  });
  await heading(notebook, gear.heading);
  for (const serial of ['P-11', 'P-12']) {
    await tap(notebook, new RegExp(`^${serial}`));
    await heading(notebook, `Pump ${serial}`);
    await tap(notebook, gear.charge.now);
    await says(notebook, /^Charged to the full, /);
    await go(notebook, '/gear');
    await heading(notebook, gear.heading);
  }
}

export async function enterPrices(notebook: Notebook): Promise<void> {
  await go(notebook, '/money');
  await tap(notebook, money.enterPrices);
  await heading(notebook, moneyScreen.prices.heading);
  const { analysisUsd, blankUsd, cassetteUsd, courierUsd } = money.prices;
  for (const [label, price] of [
    [analysisUsd, '24'],
    [blankUsd, '12.00'],
    [cassetteUsd, '3,50'],
    [courierUsd, '36'],
  ] as const)
    await notebook.page.getByLabel(new RegExp(`^${label}`)).fill(price);
  await tap(notebook, moneyScreen.prices.save);
  await heading(notebook, money.heading);
}

export async function enterBill(notebook: Notebook, kind: string, amount: string, box: RegExp): Promise<void> {
  const { page } = notebook;
  const { spend } = moneyScreen;
  await go(notebook, '/money?form=bill');
  await heading(notebook, spend.heading);
  await page.getByLabel(spend.spentFor).selectOption({ label: kind });
  await fill(notebook, new RegExp(`^${spend.amount}`), amount);
  const boxes = page.getByLabel(spend.box, { exact: true });
  const label = (await boxes.locator('option').allTextContents()).find((text) => box.test(text)) ?? '';
  await boxes.selectOption({ label });
  await tap(notebook, spend.save);
  await heading(notebook, money.heading);
}

/** The three sums as they stand large on the page. */
export async function sumsAre(notebook: Notebook, planned: string, spent: string, toCome: string): Promise<void> {
  await go(notebook, '/');
  await go(notebook, '/money');
  await heading(notebook, money.heading);
  for (const [label, sum] of [
    [money.planned, planned],
    [money.spent, spent],
    [money.toCome, toCome],
  ] as const) {
    const figure = notebook.page.locator('main').getByText(label, { exact: true }).locator('..');
    await expect(figure).toContainText(sum);
  }
}

/** A paper handed out as a download; answers its name and where it lies. */
export async function handedOut(notebook: Notebook, action: string): Promise<{ name: string; path: string }> {
  const download = notebook.page.waitForEvent('download', { timeout: 20_000 });
  await tap(notebook, action);
  const file = await download;
  const name = file.suggestedFilename();
  const path = join(out, name);
  await file.saveAs(path);
  return { name, path };
}

/** The evening before: a new site, who wears what, what lies beside. Answers the id of the shift to come. */
export async function prepareTomorrow(notebook: Notebook, site: string): Promise<string> {
  const { page } = notebook;
  await go(notebook, '/');
  await tap(notebook, tomorrow.where.heading);
  await heading(notebook, tomorrow.where.heading);
  await fill(notebook, 'Name of the site', site);
  await page.getByLabel('State or territory').selectOption('OH');
  await choose(notebook, 'Indoors');
  await tap(notebook, tomorrow.where.go);
  await heading(notebook, new RegExp(`^${tomorrow.heading.evening}$`));
  return address(notebook).slice('tomorrow/'.length);
}

/** What stands printed on a page, by poppler, and what a reader of codes that is none of ours sees in a place of the sheet of thirty. */
export async function readLabels(pdf: string, numbers: readonly string[]): Promise<void> {
  const [text] = pagesOf(pdf) ?? [];
  if (text !== undefined) for (const number of numbers) expect(text).toContain(number);
  const draw = oracle('pdftoppm');
  if (draw === null) return;
  const drawn = pdf.replace(/\.pdf$/, '');
  draw(['-singlefile', ...drawnAt200(pdf, drawn)]);
  const page = greyPage(`${drawn}.pgm`);
  const read: string[][] = [];
  // 30 on a Letter sheet: 2 5/8 by 1 inch, the first 3/16 and 1/2 inch in, 2 3/4 inches from one to the next across.
  for (const at of numbers.keys())
    read.push(
      await codesIn(page, {
        xPt: (3 / 16 + 2.75 * (at % 3)) * 72,
        yPt: (0.5 + Math.floor(at / 3)) * 72,
        widthPt: 2.625 * 72,
        heightPt: 72,
      }),
    );
  expect(read).toEqual(numbers.map((number) => [number]));
}

/** Numbers of the labels as the page lists them, by whose they are. */
export async function labelsListed({ page }: Notebook): Promise<ReadonlyMap<string, readonly string[]>> {
  const line = /^(.+): (\d(?:\s\d)+)$/;
  const lines = page.getByRole('listitem').filter({ hasText: line });
  await expect(lines.first()).toBeVisible();
  const found = new Map<string, string[]>();
  for (const text of await lines.allTextContents()) {
    const [, whose = '', spaced = ''] = line.exec(text) ?? [];
    found.set(whose, [...(found.get(whose) ?? []), spaced.replaceAll(/\s/g, '')]);
  }
  return found;
}
