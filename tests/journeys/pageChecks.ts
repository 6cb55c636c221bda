/**
 * What every page must hold, measured in the page itself: headings, targets, contrast, edges, fields, room, focus. Limits: WCAG 2.2
 * (w3.org/TR/WCAG22), success criteria 1.4.3 and 1.4.6 (contrast, 7:1), 1.4.11 (edges; our look asks 4.5:1), 1.4.10 (320 CSS px), 1.4.12
 * (text spacing), 2.4.7, 2.4.11 and 2.4.13 (focus), 2.5.8 (targets; our look asks 48 px, 60 px for the main action).
 * The functions above the line are handed to the page as text and call each other there by name, so they use nothing of this module.
 */
import type { Page } from '@playwright/test';
import { unitBySuffix } from '#core/units.ts';

function isShown(element: Element): boolean {
  return element.checkVisibility({ visibilityProperty: true });
}
/** Shown, but to those who listen only. */
function isForEars(element: Element): boolean {
  for (let each: Element | null = element; each !== null; each = each.parentElement)
    if (getComputedStyle(each).clipPath !== 'none') return true;
  return false;
}
function all(selector: string): HTMLElement[] {
  return [...document.querySelectorAll<HTMLElement>(selector)].filter(isShown);
}
function nameOf(element: Element): string {
  const text = (element.textContent ?? '').trim().replace(/\s+/g, ' ').slice(0, 50);
  return `<${element.localName}${element.id === '' ? '' : ` #${element.id}`}> ${text}`;
}
function texts(): Text[] {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const found: Text[] = [];
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const element = node.parentElement;
    const said = (node.textContent ?? '').trim() !== '' && element !== null && element.closest('select') === null;
    if (said && isShown(element) && !isForEars(element)) found.push(node as Text);
  }
  return found;
}

function headings(): string[] {
  const wrong: string[] = [];
  const h1 = all('h1');
  if (h1.length !== 1) wrong.push(`${h1.length} headings of the first level`);
  if (!document.title.includes((h1[0]?.textContent ?? '-').trim()))
    wrong.push(`title "${document.title}" is another's`);
  if (document.documentElement.lang !== 'en')
    wrong.push(`language of the document is "${document.documentElement.lang}"`);
  let before = 0;
  for (const heading of all('h1, h2, h3, h4, h5, h6')) {
    const level = Number(heading.localName.slice(1));
    if (level > before + 1) wrong.push(`heading of level ${level} after level ${before}: ${nameOf(heading)}`);
    before = level;
  }
  return wrong;
}

/** A row of a list of choices is hit as a whole; that it is, is tried out at its corners. */
function hitAreaOf(element: HTMLElement): DOMRect {
  const box = element.getBoundingClientRect();
  const row = element.parentElement?.getBoundingClientRect();
  if (!element.matches('input[type=radio], input[type=checkbox]') || row === undefined) return box;
  const label = (element as HTMLInputElement).labels?.[0];
  const corners = [row.left + 2, row.right - 2].flatMap((x) =>
    [row.top + 2, row.bottom - 2].map((y) => [x, y] as const),
  );
  const isHit = ([x, y]: readonly [number, number]): boolean => {
    const hit = document.elementFromPoint(x, y);
    return hit === element || (label?.contains(hit) ?? false);
  };
  return corners.every(isHit) ? row : box;
}
/** A link in the run of a sentence is as high as its line (2.5.8, inline). */
function isInSentence(element: Element): boolean {
  const around = element.parentElement?.textContent?.trim().length ?? 0;
  return getComputedStyle(element).display === 'inline' && around > (element.textContent ?? '').trim().length;
}
function targets(): string[] {
  const wrong: string[] = [];
  const reachable =
    'a[href], button, input:not([type=hidden]), select, textarea, summary, [role=button], [tabindex="0"]';
  for (const element of all(reachable)) {
    const { width, height, bottom } = hitAreaOf(element);
    if (bottom >= 0 && (width < 47.99 || height < 47.99) && !isInSentence(element))
      wrong.push(`target of ${Math.round(width)} x ${Math.round(height)}: ${nameOf(element)}`);
  }
  const main = all('[data-action=main]');
  for (const element of main)
    if (element.getBoundingClientRect().height < 59.99) wrong.push(`main action too low: ${nameOf(element)}`);
  const onGallery = window.location.hash === '#/gallery';
  if (main.length > 1 && !onGallery) wrong.push(`${main.length} main actions`);
  return wrong;
}

function channelsOf(colour: string): readonly [number, number, number, number] {
  const [r = 0, g = 0, b = 0, a = 1] = (colour.match(/[\d.]+/g) ?? []).map(Number);
  return [r, g, b, a];
}
/** Relative luminance, WCAG 2.2. */
function luminanceOf(colour: string): number {
  const linear = (value: number): number =>
    value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4;
  const [r, g, b] = channelsOf(colour);
  return 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
}
function contrastOf(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminanceOf(one), luminanceOf(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}
function groundOf(element: Element | null): string {
  for (let each = element; each !== null; each = each.parentElement) {
    const { backgroundColor } = getComputedStyle(each);
    if (channelsOf(backgroundColor)[3] > 0) return backgroundColor;
  }
  return 'rgb(255, 255, 255)';
}
function colours(): string[] {
  const wrong: string[] = [];
  for (const element of all('body *')) {
    const { opacity, backgroundColor } = getComputedStyle(element);
    const alpha = channelsOf(backgroundColor)[3];
    if (Number(opacity) < 1 || (alpha > 0 && alpha < 1)) wrong.push(`half-transparent: ${nameOf(element)}`);
  }
  for (const element of new Set(texts().map((text) => text.parentElement as Element))) {
    const { color, fontSize } = getComputedStyle(element);
    const ratio = contrastOf(color, groundOf(element));
    if (ratio < 7) wrong.push(`text at ${ratio.toFixed(2)}:1: ${nameOf(element)}`);
    if (Number.parseFloat(fontSize) < 16) wrong.push(`text of ${fontSize}: ${nameOf(element)}`);
  }
  return wrong;
}
function edges(): string[] {
  const wrong: string[] = [];
  for (const element of all('input:not([type=radio]):not([type=checkbox]), select, textarea, [data-action]')) {
    const style = getComputedStyle(element);
    const around = groundOf(element.parentElement);
    const drawn = (['Top', 'Right', 'Bottom', 'Left'] as const).filter(
      (side) => Number.parseFloat(style[`border${side}Width`]) > 0,
    );
    if (drawn.length < 4) wrong.push(`edges missing: ${nameOf(element)}`);
    const least = Math.min(...drawn.map((side) => contrastOf(style[`border${side}Color`], around)));
    if (least < 4.5) wrong.push(`edge at ${least.toFixed(2)}:1: ${nameOf(element)}`);
  }
  return wrong;
}

/** A number keeps its text, brings the right keyboard, and says its unit in its label, or in the legend that it stands under. */
function fields(units: readonly string[]): string[] {
  return (all('input, select, textarea') as HTMLInputElement[]).flatMap((field) => {
    const label = (field.labels?.[0]?.textContent ?? field.getAttribute('aria-label') ?? '').trim();
    const legend = (field.closest('fieldset')?.querySelector('legend')?.textContent ?? '').trim();
    const unit = units.find((each) => [label, legend].some((name) => name.endsWith(`, ${each}`)));
    const isLine = field.localName === 'input' && field.type === 'text';
    const faults: readonly (readonly [boolean, string])[] = [
      [field.type === 'number', 'a field of type number'],
      [label === '', `a field without a label, ${field.id}`],
      [field.hasAttribute('placeholder'), 'words inside a field'],
      [Number.parseFloat(getComputedStyle(field).fontSize) < 18, 'small type in a field'],
      [isLine && unit !== undefined && !field.hasAttribute('inputmode'), 'no inputmode'],
      [isLine && unit === undefined && field.inputMode === 'decimal', 'no unit in the label'],
    ];
    return faults.filter(([is]) => is).map(([, what]) => `${what}: ${label}`);
  });
}

/** Sideways scroll, and boxes that cut off what is in them. */
function cutOff(): string[] {
  const wrong: string[] = [];
  const { scrollWidth } = document.documentElement;
  if (scrollWidth > window.innerWidth) wrong.push(`page ${scrollWidth} wide in ${window.innerWidth}`);
  for (const element of all('body *:not(input, textarea, option)')) {
    const { overflowX, overflowY, display } = getComputedStyle(element);
    if (overflowX === 'visible' || display === 'inline' || isForEars(element)) continue;
    if (element.scrollWidth > element.clientWidth + 1)
      wrong.push(`${element.scrollWidth} wide in ${element.clientWidth}: ${nameOf(element)}`);
    if (overflowY !== 'auto' && element.scrollHeight > element.clientHeight + 1)
      wrong.push(`${element.scrollHeight} high in ${element.clientHeight}: ${nameOf(element)}`);
  }
  return wrong;
}
/** Text that stands outside of its box or of the window. Line boxes are taller than the letters: some pixels above and below are air. */
function spilled(): string[] {
  const wrong: string[] = [];
  const range = document.createRange();
  for (const text of texts()) {
    const box = text.parentElement?.closest('a, button, label, legend, li, p, td, th, dd, dt, h1, h2, h3, main');
    if (!box || getComputedStyle(box).display === 'inline') continue;
    range.selectNodeContents(text);
    const inner = range.getBoundingClientRect();
    const outer = box.getBoundingClientRect();
    const by = Math.max(inner.bottom - outer.bottom - 4, inner.right - outer.right, outer.left - inner.left);
    if (by > 2) wrong.push(`text outside of its box by ${Math.round(by)}: ${nameOf(box)}`);
    if (inner.right > window.innerWidth + 1) wrong.push(`text outside of the window: ${nameOf(box)}`);
  }
  return wrong;
}
/** A foot that stays in sight must leave room for the page. */
function foot(): string[] {
  const [element] = all('[data-part=foot]');
  if (element === undefined || getComputedStyle(element).position !== 'sticky') return [];
  const share = element.getBoundingClientRect().height / window.innerHeight;
  return share > 0.35 ? [`the foot takes ${Math.round(share * 100)} % of the window`] : [];
}

function isRinged(element: Element | null): boolean {
  if (element === null) return false;
  const { outlineStyle, outlineWidth } = getComputedStyle(element);
  return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 3;
}
/** A link that breaks over two lines has a hole in the middle of its box: each of its lines is looked at. */
function liesUnder(element: Element, row: Element | null): string[] {
  const points = [...element.getClientRects()].flatMap(({ left, top, right, bottom }) =>
    (bottom - top > window.innerHeight / 2 ? [top + 3] : [top + 3, bottom - 3]).map(
      (y) => [(left + right) / 2, y] as const,
    ),
  );
  return points.flatMap(([x, y]) => {
    const over = document.elementFromPoint(x, y);
    const isOwn = over !== null && (element.contains(over) || (row?.contains(over) ?? false));
    return isOwn ? [] : [`hidden ${over === null ? 'outside of the window' : `under ${nameOf(over)}`}`];
  });
}
/** How the control that has the focus stands: its ring, and whether anything lies over it. null past the end of the page. */
function focus(): { readonly name: string; readonly wrong: readonly string[] } | null {
  const element = document.activeElement;
  if (!(element instanceof HTMLElement) || element === document.body) return null;
  const row = element.matches('input[type=radio], input[type=checkbox]') ? element.parentElement : null;
  const ring = isRinged(element) || isRinged(row) ? [] : ['no ring of 3 px'];
  return { name: nameOf(element), wrong: [...ring, ...liesUnder(element, row)] };
}

// The line. What follows runs in the test.

const eyes = [
  ...[isShown, isForEars, all, nameOf, texts, headings, hitAreaOf, isInSentence, targets, channelsOf, luminanceOf],
  ...[contrastOf, groundOf, colours, edges, fields, cutOff, spilled, foot, isRinged, liesUnder, focus],
];

/** Before the first page is loaded: everything above, by its name. */
export const bringEyes = (page: Page): Promise<unknown> =>
  page.addInitScript({ content: eyes.map((each) => `globalThis.${each.name} = ${String(each)};`).join('\n') });

const units: readonly string[] = Object.values(unitBySuffix).filter((unit) => unit !== '');
const once = (found: readonly string[]): string[] => [...new Set(found)];

/** Everything wrong with the page as it stands now, in words; empty when nothing is. */
export const looksWrong = async (page: Page): Promise<string[]> =>
  once(
    await page.evaluate((known) => [...headings(), ...targets(), ...colours(), ...edges(), ...fields(known)], units),
  );
export const coloursWrong = async (page: Page): Promise<string[]> =>
  once(await page.evaluate(() => [...colours(), ...edges()]));
export const doesNotFit = async (page: Page): Promise<string[]> =>
  once(await page.evaluate(() => [...cutOff(), ...spilled()]));
export const footWrong = (page: Page): Promise<string[]> => page.evaluate(() => foot());
export const focused = (page: Page): Promise<ReturnType<typeof focus>> => page.evaluate(() => focus());
