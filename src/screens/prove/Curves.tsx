/** Two small pictures: the bound against minutes sampled, and the dust on one filter. */
import type { Axis } from '#core/axis.ts';
import type { SampleAhead } from '#findings/season/sampleAhead.ts';
import { Plot } from '#parts/Plot.tsx';
import { en } from '#words/proveScreen.ts';
import { formatNumber } from '#words/quantity.ts';

const words = en.picture;

interface CurvesProps {
  readonly ahead: SampleAhead;
}

const axisOf = (label: string, { maximum, ticks }: Axis) => ({
  label,
  from: 0,
  to: maximum,
  ticks: ticks.map((at) => ({ at, text: String(at) })),
});

export function BoundPicture({ ahead: { curves, share, input } }: CurvesProps) {
  const { bound, boundAxisUgPerM3, minutesAxisMin } = curves;
  const minutes = [...new Set(bound.flatMap(({ points }) => points.map(({ durationMin }) => durationMin)))].sort(
    (a, b) => a - b,
  );
  const { levelUgPerM3 } = share;
  const { actionLevelUgPerM3, pelUgPerM3 } = input;
  const cell = (points: readonly { durationMin: number; value: number }[], min: number): string => {
    const point = points.find(({ durationMin }) => durationMin === min);
    return point === undefined
      ? words.above
      : formatNumber(point.value, 'µg/m³', { against: [levelUgPerM3, actionLevelUgPerM3, pelUgPerM3] });
  };
  return (
    <Plot
      title={words.bound}
      description={words.boundDescription(boundAxisUgPerM3.maximum)}
      x={axisOf(words.minutes, minutesAxisMin)}
      y={axisOf(words.upTo, boundAxisUgPerM3)}
      limits={[
        ...(levelUgPerM3 === actionLevelUgPerM3 ? [] : [{ name: words.shareName(levelUgPerM3), y: levelUgPerM3 }]),
        { name: words.actionLevel(actionLevelUgPerM3), y: actionLevelUgPerM3 },
        { name: words.pel(pelUgPerM3), y: pelUgPerM3 },
      ]}
      lines={bound.map(({ cassettesCount, points }) => ({
        name: words.cassettes(cassettesCount),
        points: points.map(({ durationMin, value }) => ({ x: durationMin, y: value })),
      }))}
      table={{
        open: words.table,
        head: [words.minutesColumn, ...bound.map(({ cassettesCount }) => words.cassettes(cassettesCount))],
        rows: minutes.map((min) => ({
          key: String(min),
          cells: [formatNumber(min, 'min'), ...bound.map(({ points }) => cell(points, min))],
        })),
      }}
    />
  );
}

export function LoadPicture({ ahead: { curves, loading } }: CurvesProps) {
  const { load } = curves;
  if (load === null || loading === null) return null;
  const last = load.points.at(-1)?.durationMin ?? 0;
  const { maxLoadMg } = loading;
  return (
    <Plot
      title={words.load}
      description={words.loadDescription(maxLoadMg)}
      x={{
        ...axisOf(words.loadMinutes, { maximum: last, ticks: [0, last] }),
        ticks: [0, last].map((at) => ({ at, text: formatNumber(at, 'min') })),
      }}
      y={axisOf(words.loadUp, load.loadAxisMg)}
      limits={[{ name: words.loadLimit(maxLoadMg), y: maxLoadMg }]}
      lines={[
        { name: words.loadName, points: load.points.map(({ durationMin, value }) => ({ x: durationMin, y: value })) },
      ]}
      table={{
        open: words.table,
        head: [words.minutesColumn, words.loadColumn],
        rows: load.points.map(({ durationMin, value }) => ({
          key: String(durationMin),
          cells: [formatNumber(durationMin, 'min'), formatNumber(value, 'mg')],
        })),
      }}
    />
  );
}
