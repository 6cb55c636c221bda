/** Times of a day file that cannot be right: another offset than the zone's, far from the work day, one inside another, one pump twice. */
import { addDays, dayOf, instantToEpochMs, isZone, offsetMinAt } from '#core/calendar.ts';
import { en as words } from '#words/assess.ts';
import type { DayFile, DayInFile, SampleInFile } from './dayFile.ts';
import { utc } from './dayIds.ts';
import type { Refusal } from './refusal.ts';

interface Written {
  readonly path: string;
  readonly time: string;
}

/** A stretch of time of the file, in milliseconds since 1970. */
interface Span {
  readonly path: string;
  readonly fromMs: number;
  readonly toMs: number;
}

const msOf = (time: string): number => instantToEpochMs(utc(time));
const longestMs = 24 * 3_600_000;
const { refusals } = words;

function offsetMinOf(time: string): number {
  if (time.endsWith('Z')) return 0;
  const [hours = 0, minutes = 0] = time.slice(-5).split(':').map(Number);
  return (time.at(-6) === '-' ? -1 : 1) * (hours * 60 + minutes);
}

const written = (offsetMin: number): string => {
  const of = (value: number): string => String(Math.floor(value)).padStart(2, '0');
  const size = Math.abs(offsetMin);
  return `${offsetMin < 0 ? '-' : '+'}${of(size / 60)}:${of(size % 60)}`;
};

function timesOf(day: DayInFile, at: string): Written[] {
  const pairs = (list: readonly { from: string; to: string }[], path: string): Written[] =>
    list.flatMap(({ from, to }, i) => [
      { path: `${path}/${i}/from`, time: from },
      { path: `${path}/${i}/to`, time: to },
    ]);
  return [
    ...pairs(day.pieces ?? [], `${at}/pieces`),
    ...pairs(day.explained ?? [], `${at}/explained`),
    ...day.samples.flatMap(({ putOn, stopped, stretches }, i) => {
      const path = `${at}/samples/${i}`;
      const stop = stopped ? [{ path: `${path}/stopped`, time: stopped }] : [];
      return [{ path: `${path}/putOn`, time: putOn }, ...stop, ...pairs(stretches ?? [], `${path}/stretches`)];
    }),
  ];
}

/** In the zone's own offset, on the work day or on the one before or after it. */
function placeProblems(times: readonly Written[], workOn: string, zone: string): Refusal[] {
  if (!isZone(zone)) return [];
  return times.flatMap(({ path, time }) => {
    const at = utc(time);
    const offset = offsetMinAt(at, zone);
    if (offset !== offsetMinOf(time)) return [{ path, reason: refusals.otherOffset(zone, written(offset)) }];
    const on = dayOf(at, zone);
    return on < addDays(workOn, -1) || on > addDays(workOn, 1) ? [{ path, reason: refusals.farFromDay(workOn) }] : [];
  });
}

function overlapping(spans: readonly Span[], reason: (first: string) => string): Refusal[] {
  const sorted = [...spans].sort((a, b) => a.fromMs - b.fromMs);
  return sorted.flatMap((span, i) => {
    const before = sorted[i - 1];
    return before && span.fromMs < before.toMs ? [{ path: span.path, reason: reason(before.path) }] : [];
  });
}

const spansOf = (list: readonly { from: string; to: string }[], path: string): Span[] =>
  list.map(({ from, to }, i) => ({ path: `${path}/${i}`, fromMs: msOf(from), toMs: msOf(to) }));

const tooLong = (spans: readonly Span[]): Refusal[] =>
  spans.flatMap(({ path, fromMs, toMs }) => (toMs - fromMs > longestMs ? [{ path, reason: refusals.overADay }] : []));

function sampleProblems(sample: SampleInFile, path: string): Refusal[] {
  const run: Span = { path, fromMs: msOf(sample.putOn), toMs: sample.stopped ? msOf(sample.stopped) : Infinity };
  const stretches = spansOf(sample.stretches ?? [], `${path}/stretches`);
  return [
    ...(sample.stopped ? tooLong([run]) : []),
    ...stretches.flatMap((one): Refusal[] => {
      if (one.toMs <= one.fromMs) return [{ path: `${one.path}/to`, reason: refusals.endBeforeStart }];
      return one.fromMs < run.fromMs || one.toMs > run.toMs ? [{ path: one.path, reason: refusals.outsideRun }] : [];
    }),
    ...overlapping(stretches, refusals.overlap),
  ];
}

/** One pump cannot be on two workers, or run for two cassettes, at one time. */
function pumpProblems(file: DayFile): Refusal[] {
  const spansByPump = new Map<string, Span[]>();
  file.days.forEach(({ samples }, i) => {
    samples.forEach(({ pump, putOn, stopped }, j) => {
      const span = {
        path: `/days/${i}/samples/${j}`,
        fromMs: msOf(putOn),
        toMs: stopped ? msOf(stopped) : Infinity,
      };
      spansByPump.set(pump, [...(spansByPump.get(pump) ?? []), span]);
    });
  });
  return [...spansByPump].flatMap(([pump, spans]) => overlapping(spans, (first) => refusals.pumpTwice(pump, first)));
}

export function timeProblems(file: DayFile): Refusal[] {
  const zoneBySite = new Map(file.sites.map(({ name, zone }) => [name, zone]));
  const ofDays = file.days.flatMap((day, i) => {
    const path = `/days/${i}`;
    const pieces = spansOf(day.pieces ?? [], `${path}/pieces`);
    return [
      ...placeProblems(timesOf(day, path), day.workOn, zoneBySite.get(day.site) ?? ''),
      ...tooLong(pieces),
      ...overlapping(pieces, refusals.overlap),
      ...day.samples.flatMap((sample, j) => sampleProblems(sample, `${path}/samples/${j}`)),
    ];
  });
  return [...ofDays, ...pumpProblems(file)];
}
