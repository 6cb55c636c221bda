/** Results of a task group by date against the limits of their day: what a chart draws and what its table says, row by row. */
import { type Axis, axisTo } from '#core/axis.ts';
import { addDays, addMonths, daysBetween } from '#core/calendar.ts';
import { type Estimate, lowerOf, upperOf } from '#core/estimate.ts';
import type { Book } from '#records/book.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import type { Band, Measurement } from '../duties/measuring/measurement.ts';
import type { Reason } from '../reason.ts';

export interface PicturePoint {
  /** Also of one reported to us. */
  readonly measurementId: string;
  /** null: reported to us. */
  readonly workdayId: string | null;
  readonly from: Measurement['from'];
  readonly workOn: string;
  readonly workerId: string | null;
  readonly siteId: string | null;
  /** The 8-hour average that judges. */
  readonly lowerUgPerM3: number;
  /** null: nothing bounds it from above; drawn to the edge. */
  readonly upperUgPerM3: number | null;
  readonly valueKind: 'exact' | 'between' | 'atLeast';
  readonly atLeast: boolean;
  readonly doubtful: boolean;
  /** It may have been of another group. */
  readonly mayBeOther: boolean;
  readonly band: Band;
  readonly reasons: readonly Reason[];
  readonly limits: { readonly actionLevelUgPerM3: number; readonly pelUgPerM3: number };
}

/** A limit as it stood from a first to a last day of the picture: a line, ended where it changed. */
export interface PictureLimit {
  readonly which: 'actionLevel' | 'pel';
  readonly limitSetId: string;
  /** As the set names itself. */
  readonly document: string;
  readonly jurisdiction: string;
  readonly limitUgPerM3: number;
  readonly fromOn: string;
  readonly toOn: string;
}

export interface SeasonPicture {
  readonly groupKey: string;
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly setting: 'indoors' | 'outdoors';
  /** In the order of days, then workers: also the rows of the table. */
  readonly points: readonly PicturePoint[];
  /** Measured, and no figure is known yet: in the table alone. */
  readonly awaited: readonly Pick<
    PicturePoint,
    'measurementId' | 'workdayId' | 'workOn' | 'workerId' | 'siteId' | 'reasons'
  >[];
  readonly limits: readonly PictureLimit[];
  readonly axisUgPerM3: Axis;
  /** First and last day of the picture, and the days that get a line; null without a point. */
  readonly days: { readonly fromOn: string; readonly toOn: string; readonly ticksOn: readonly string[] } | null;
}

const pointOf = (one: Measurement, value: Estimate, groupKey: string): PicturePoint => {
  const upper = upperOf(value);
  const { set } = one.limits;
  return {
    ...whoAndWhen(one),
    from: one.from,
    lowerUgPerM3: lowerOf(value),
    upperUgPerM3: Number.isFinite(upper) ? upper : null,
    valueKind: value.kind,
    atLeast: value.kind === 'atLeast' || one.atLeastOnly,
    doubtful: one.blocks.length > 0,
    mayBeOther: one.groupKey !== groupKey || (one.mayBeKeys ?? []).length > 0,
    band: one.band,
    reasons: one.blocks,
    limits: { actionLevelUgPerM3: set.actionLevel.value, pelUgPerM3: set.pel.value },
  };
};

const whoAndWhen = ({ id, finding, workOn, workerId, siteId }: Measurement) => ({
  measurementId: id,
  workdayId: finding?.workdayId ?? null,
  workOn,
  workerId,
  siteId,
});

/** Of *at least nothing* there is nothing to draw. */
const saysSomething = ({ twa8UgPerM3: value }: Measurement): boolean =>
  value !== null && !(value.kind === 'atLeast' && value.lower === 0);

const inOrder = (a: Measurement, b: Measurement): number =>
  a.workOn.localeCompare(b.workOn) || (a.workerId ?? '').localeCompare(b.workerId ?? '') || a.id.localeCompare(b.id);

const whiches = ['actionLevel', 'pel'] as const;

/** One line for each value of each limit, from the first to the last day on which a point was held against it. */
function limitsOver(measurements: readonly Measurement[]): readonly PictureLimit[] {
  const byKey = new Map<string, PictureLimit>();
  for (const { workOn, limits } of measurements)
    for (const which of whiches) {
      const { id, document, jurisdiction } = limits.set;
      const limitUgPerM3 = limits.set[which].value;
      const key = `${which} ${id} ${limitUgPerM3}`;
      const fromOn = byKey.get(key)?.fromOn ?? workOn;
      byKey.set(key, { which, limitSetId: id, document, jurisdiction, limitUgPerM3, fromOn, toOn: workOn });
    }
  return [...byKey.values()].sort((a, b) => b.limitUgPerM3 - a.limitUgPerM3 || a.fromOn.localeCompare(b.fromOn));
}

/** First days of months within, or, of a short time, of its weeks; the first day itself where there is none. */
function ticksOn(fromOn: string, toOn: string): readonly string[] {
  const days = daysBetween(fromOn, toOn);
  const months = Math.ceil(days / 31 / mostTicks);
  const ticks: string[] = [];
  if (days > 62) {
    for (let at = addMonths(`${fromOn.slice(0, 7)}-01`, 1); at <= toOn; at = addMonths(at, months)) ticks.push(at);
    return ticks;
  }
  const stepDays = Math.max(1, Math.ceil(days / mostTicks));
  for (let at = fromOn; at <= toOn; at = addDays(at, stepDays)) ticks.push(at);
  return ticks;
}
const mostTicks = 8;

function daysOf(points: readonly PicturePoint[]): SeasonPicture['days'] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return null;
  return { fromOn: first.workOn, toOn: last.workOn, ticksOn: ticksOn(first.workOn, last.workOn) };
}

const partsOf = (groupKey: string): Pick<SeasonPicture, 'taskIds' | 'jobClassificationId' | 'setting'> => {
  const [setting, job = '-', tasks = ''] = groupKey.split('|');
  return {
    taskIds: tasks.split('+').filter((id) => id !== ''),
    jobClassificationId: job === '-' ? null : job,
    setting: setting === 'outdoors' ? 'outdoors' : 'indoors',
  };
};

/** The tallest thing to be seen: bounds, and the limits; of what has no upper end the lower one. */
const heightOf = ({ lowerUgPerM3, upperUgPerM3, limits }: PicturePoint): number =>
  Math.max(upperUgPerM3 ?? lowerUgPerM3, limits.actionLevelUgPerM3, limits.pelUgPerM3);

/** Of measurements side by side each is shown. A group that nothing is known of gives an empty picture. */
export function seasonPicture(_book: Book, duties: DutiesOfBook, groupKey: string): SeasonPicture {
  const own = [...duties.measurements.values()]
    .filter((one) => one.groupKey === groupKey || one.mayBeKeys?.includes(groupKey))
    .sort(inOrder);
  const shown = own.filter(saysSomething);
  const points = shown.flatMap((one) => (one.twa8UgPerM3 ? [pointOf(one, one.twa8UgPerM3, groupKey)] : []));
  const group = duties.groups.get(groupKey) ?? partsOf(groupKey);
  return {
    groupKey,
    taskIds: group.taskIds,
    jobClassificationId: group.jobClassificationId,
    setting: group.setting,
    points,
    awaited: own.filter((one) => !saysSomething(one)).map((one) => ({ ...whoAndWhen(one), reasons: one.blocks })),
    limits: limitsOver(shown),
    axisUgPerM3: axisTo(points.reduce((top, point) => Math.max(top, heightOf(point)), 0)),
    days: daysOf(points),
  };
}
