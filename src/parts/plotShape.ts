/** Where the things of a picture lie, in units of the picture: nothing here knows what they mean. */
import { daysBetween } from '#core/calendar.ts';

/** A number, or a day such as '2026-03-09'. Of one picture all are of one kind. */
export type Across = number | string;

export interface PlotAxis<At> {
  /** With its unit: 'Minutes sampled, min'. */
  readonly label: string;
  readonly from: At;
  readonly to: At;
  readonly ticks: readonly { readonly at: At; readonly text: string }[];
}

export interface PlotLine {
  /** Stands at its end: short. */
  readonly name: string;
  readonly points: readonly { readonly x: Across; readonly y: number }[];
}

/** A line across at one height, from a first to a last place, or the whole way. */
export interface PlotLimit {
  readonly name: string;
  readonly y: number;
  readonly from?: Across | undefined;
  readonly to?: Across | undefined;
}

/** One figure with what bounds it. `high` null: nothing bounds it from above. */
export interface PlotMark {
  readonly id: string;
  readonly x: Across;
  readonly low: number;
  readonly high: number | null;
  /** *At least*: what is drawn is only a part of it. */
  readonly atLeast?: boolean | undefined;
  readonly doubtful?: boolean | undefined;
}

export const frame = { width: 430, height: 282, left: 50, right: 146, top: 32, bottom: 56 } as const;
export const bottomY = frame.height - frame.bottom;
export const rightX = frame.width - frame.right;

const share = (from: number, to: number, at: number): number => (to === from ? 0.5 : (at - from) / (to - from));

/** How far along from `from` to `to`, 0 to 1; of one single day the middle. */
export function shareAcross(from: Across, to: Across, at: Across): number {
  if (typeof from === 'string' && typeof to === 'string' && typeof at === 'string')
    return share(0, daysBetween(from, to), daysBetween(from, at));
  if (typeof from === 'number' && typeof to === 'number' && typeof at === 'number') return share(from, to, at);
  throw new Error('days and numbers on one axis');
}

const clamp = (value: number): number => Math.min(1, Math.max(0, value));

/** Days keep clear of both edges, so that a mark of the first day is whole. */
export function placeAcross({ from, to }: PlotAxis<Across>, at: Across): number {
  const edge = typeof from === 'string' ? 14 : 0;
  const room = rightX - frame.left - 2 * edge;
  return frame.left + edge + clamp(shareAcross(from, to, at)) * room;
}

export const placeUp = ({ from, to }: PlotAxis<number>, at: number): number =>
  bottomY - clamp(share(from, to, at)) * (bottomY - frame.top);

export interface Named {
  readonly name: string;
  /** Where it belongs. */
  readonly y: number;
}

/** Names at the right edge keep apart: each as near to its own height as the others let it. */
export function apart<N extends Named>(names: readonly N[], gap = 17): readonly (N & { readonly atY: number })[] {
  const placed: (N & { atY: number })[] = [];
  for (const each of names.toSorted((a, b) => a.y - b.y)) {
    const above = placed.at(-1)?.atY ?? Number.NEGATIVE_INFINITY;
    placed.push({ ...each, atY: Math.max(each.y, above + gap, frame.top) });
  }
  let floor = bottomY + gap;
  for (const each of placed.toReversed()) {
    each.atY = Math.min(each.atY, floor - gap);
    floor = each.atY;
  }
  return placed;
}
