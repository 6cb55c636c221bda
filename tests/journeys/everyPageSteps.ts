/** Hands of the visitor who opens every page in each of its states, and what is looked at on each. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Locator, type Page } from '@playwright/test';
import axeCore from 'axe-core';
import type { PageState } from '#app/routeTable.ts';
import { coloursWrong, doesNotFit, focused, footWrong, looksWrong } from './pageChecks.ts';

export interface Visitor {
  readonly page: Page;
  readonly address: string;
  /** What is wrong anywhere, with the page and state in front of it. */
  readonly wrong: string[];
  /** Names that a later stop asks for: ids of records as they stand in addresses. */
  readonly known: Map<string, string>;
}

export interface Stop {
  /** As it stands in the route table. */
  readonly path: string;
  readonly state: PageState;
  /** More than one look at the same state: what makes this one different. */
  readonly as?: string;
  readonly go: (visitor: Visitor) => Promise<void>;
  /** What only this state shows: it proves that the state was reached. */
  readonly shows: string | RegExp;
  /** Tabbed through from end to end; one look at each page is enough. */
  readonly tab?: true;
  readonly lang?: 'es';
}

/** One stop, in the order in which it is read: where, in which state. */
export const pick = (path: string, state: PageState, rest: Omit<Stop, 'path' | 'state'>): Stop => ({
  path,
  state,
  ...rest,
});

const pictures = join('tests', 'out', 'pages');
mkdirSync(pictures, { recursive: true });

const phone = { width: 390, height: 844 };
const desk = { width: 1280, height: 800 };
const narrow = { width: 320, height: 568 };

export const tap = ({ page }: Visitor, name: string | RegExp): Promise<void> =>
  page.getByRole('button', { name }).or(page.getByRole('link', { name })).first().click();
export const fill = ({ page }: Visitor, label: string | RegExp, text: string): Promise<void> =>
  page.getByLabel(label).first().fill(text);
export const choose = ({ page }: Visitor, name: string | RegExp, group?: string | RegExp): Promise<void> => {
  const within: Page | Locator = group === undefined ? page : page.getByRole('group', { name: group }).first();
  return within.getByRole('radio', { name }).first().check({ force: true });
};
export const heading = ({ page }: Visitor, name: string | RegExp): Promise<void> =>
  expect(page.getByRole('heading', { level: 1, name })).toBeVisible();
export const address = ({ page }: Visitor): string => decodeURIComponent(new URL(page.url()).hash.slice(1));

/** To an address inside the app, as a tapped link goes there. */
export async function open(visitor: Visitor, path: string): Promise<void> {
  await visitor.page.evaluate((hash) => {
    window.location.hash = hash;
  }, path);
}

/** One of the ids that were noted on the way, filled into an address. */
export const to =
  (path: string) =>
  (visitor: Visitor): Promise<void> =>
    open(
      visitor,
      path.replace(/\{(\w+)\}/g, (_, name: string) => {
        const id = visitor.known.get(name);
        if (id === undefined) throw new Error(`nothing is known of ${name}`);
        return id;
      }),
    );

async function measured(visitor: Visitor, name: string, check: (page: Page) => Promise<string[]>): Promise<void> {
  for (const each of await check(visitor.page)) visitor.wrong.push(`${name}: ${each}`);
}

/** The whole page in one window, so that every place of it can be hit, and the main action stands at its foot. */
async function wholePage(page: Page, size: { readonly width: number; readonly height: number }): Promise<void> {
  await page.setViewportSize(size);
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ ...size, height: Math.max(size.height, height) });
}

/** For people to look at, with LOOK=1: long pages take a while to draw, and no test reads them. */
export async function picture(page: Page, name: string): Promise<void> {
  if (process.env.LOOK !== '1') return;
  await page.screenshot({ path: join(pictures, `${name}.png`), animations: 'disabled' });
}

const ruleSets = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** Contrast takes axe most of its time: asked once a page. On every state our own measure asks more of it, 7:1. */
async function axe(page: Page, withContrast: boolean): Promise<string[]> {
  // A page of the app is one document without frames, so what was brought in once stays.
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axeCore.source);
  const violations = await page.evaluate(
    async ({ values, rules }) => {
      const { axe } = globalThis as unknown as { axe: typeof axeCore };
      const run = await axe.run(document, { runOnly: { type: 'tag', values }, rules, resultTypes: ['violations'] });
      return run.violations.map(({ id, nodes }) => ({ id, nodes: nodes.map(({ html }) => ({ html })) }));
    },
    { values: ruleSets, rules: { 'color-contrast': { enabled: withContrast } } },
  );
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `axe ${id}: ${html.slice(0, 160)}`));
}

/** The four distances of WCAG 2.2, success criterion 1.4.12, set from outside as a reader's own style would. */
async function withSpacing(page: Page, on: boolean): Promise<void> {
  await page.evaluate((set) => {
    const sheet = new CSSStyleSheet();
    const rules =
      '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important }';
    if (set) sheet.replaceSync(`${rules} p { margin-bottom: 2em !important }`);
    document.adoptedStyleSheets = set ? [sheet] : [];
  }, on);
}

const rootSize = (page: Page, size: string): Promise<void> =>
  page.evaluate((value) => {
    document.documentElement.style.fontSize = value;
  }, size);

/** Every control in turn, by the Tab key, in a window of a phone's height: its ring is there and nothing lies over it. */
async function tabThrough(visitor: Visitor, name: string): Promise<void> {
  const { page, wrong } = visitor;
  await page.evaluate(() => {
    window.scrollTo(0, 0);
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    // The end of the page is where the keyboard would begin: from here it begins at the top.
    document.body.tabIndex = -1;
    document.body.focus();
    document.body.removeAttribute('tabindex');
  });
  let steps = 0;
  for (; steps < 150; steps += 1) {
    await page.keyboard.press('Tab');
    const at = await focused(page);
    if (at === null) break;
    for (const each of at.wrong) wrong.push(`${name}, tabbed to ${at.name}: ${each}`);
  }
  if (steps < 3) wrong.push(`${name}: only ${steps} places for the keyboard`);
}

/** Goes there, proves the state, and looks at everything. */
export async function visit(visitor: Visitor, stop: Stop): Promise<void> {
  const { page, wrong } = visitor;
  const name = `${stop.path}, ${stop.state}${stop.as === undefined ? '' : `, ${stop.as}`}`;
  const before = wrong.length;
  try {
    await stop.go(visitor);
    await expect(page.getByText(stop.shows).filter({ visible: true }).first()).toBeVisible();
    await expect(page.locator('main h1')).toBeVisible();
  } catch (failure) {
    wrong.push(`${name}: could not be reached: ${String(failure).slice(0, 400)}`);
    await page.screenshot({ path: join(pictures, `failed-${fileName(stop)}.png`) });
    return;
  }
  // What came up over the console, the policy or the net while going there belongs to this page.
  for (let at = before; at < wrong.length; at += 1) wrong[at] = `${name}: ${wrong[at]}`;
  if (!asPattern(stop.path).test(address(visitor).split('?')[0] ?? '')) wrong.push(`${name}: at ${address(visitor)}`);
  const main = await page.locator('main').getAttribute('lang');
  if (stop.lang !== undefined && main !== stop.lang) wrong.push(`${name}: language of the page is ${main}`);
  if (stop.state === 'error') await toldAsError(visitor, name);
  if (stop.tab) await tabThrough(visitor, name);
  await lookAtAllSizes(visitor, stop, name);
}

async function lookAtAllSizes(visitor: Visitor, stop: Stop, name: string): Promise<void> {
  const { page } = visitor;
  // Only its width is measured: the whole length is for the picture.
  if (process.env.LOOK === '1') await wholePage(page, desk);
  else await page.setViewportSize(desk);
  await measured(visitor, `${name}, 1280`, doesNotFit);
  await picture(page, `${fileName(stop)}-1280`);
  await wholePage(page, phone);
  await measured(visitor, name, (at) => axe(at, stop.tab === true));
  await measured(visitor, name, looksWrong);
  await picture(page, `${fileName(stop)}-390`);
  await page.emulateMedia({ colorScheme: 'dark' });
  await measured(visitor, `${name}, dark`, coloursWrong);
  await page.emulateMedia({ colorScheme: 'light' });
  await page.setViewportSize(narrow);
  await measured(visitor, `${name}, 320`, doesNotFit);
  await measured(visitor, `${name}, 320`, footWrong);
  await page.setViewportSize(phone);
  await rootSize(page, '200%');
  await measured(visitor, `${name}, text twice as large`, doesNotFit);
  await rootSize(page, '');
  await withSpacing(page, true);
  await measured(visitor, `${name}, text spaced`, doesNotFit);
  await withSpacing(page, false);
}

/** Said on top, in the title, and at the field, and heard. */
async function toldAsError({ page, wrong }: Visitor, name: string): Promise<void> {
  const summary = page.getByRole('alert').filter({ has: page.getByRole('heading') });
  await expect(summary.first()).toBeVisible();
  if (!/^Error: |^Error, /.test(await page.title()))
    wrong.push(`${name}: title "${await page.title()}" tells no error`);
  const focusInside = await page.evaluate(() => document.activeElement?.matches('[role=alert]') ?? false);
  if (!focusInside) wrong.push(`${name}: the focus is not on what is said`);
  // The links of the summary lead to fields that carry the same words.
  for (const link of await summary.first().getByRole('link').all()) {
    const field = (await link.getAttribute('href'))?.slice(1) ?? '';
    const text = (await link.textContent()) ?? '';
    const at = page.locator(`[id="${field}"]`);
    if ((await at.count()) === 0) wrong.push(`${name}: "${text}" leads nowhere`);
    const described = page.locator(`[id="${field}-error"]`);
    if ((await described.count()) > 0 && !(await described.textContent())?.includes(text))
      wrong.push(`${name}: at the field it says something else than "${text}"`);
  }
}

const fileName = ({ path, state, as }: Stop): string =>
  `${path === '/' ? 'today' : path.slice(1).replace(/[/:]+/g, '-')}-${state}${as === undefined ? '' : `-${as}`}`;

/** '/shift/:shiftId/flow' as what an address has to look like. */
const asPattern = (path: string): RegExp => new RegExp(`^${path.replace(/:\w+/g, '[^/]+')}$`);
