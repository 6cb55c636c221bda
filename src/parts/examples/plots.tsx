/** Examples of pictures: lines against limits, and figures with their bounds. */
import { Plot } from '../Plot.tsx';
import { PlotKey } from '../PlotMarks.tsx';
import type { Example } from './example.ts';

const minutes = [60, 120, 240, 360, 480];
const bound = (count: number) =>
  minutes.flatMap((x) => {
    const y = (count * 5 * 480) / (0.48 * 2 * x);
    return y <= 60 ? [{ x, y }] : [];
  });
const upAxis = {
  label: 'µg/m³',
  from: 0,
  to: 60,
  ticks: [0, 20, 40, 60].map((at) => ({ at, text: String(at) })),
};
const limits = [
  { name: 'PEL 50', y: 50 },
  { name: 'action level 30', y: 30 },
];
const open = 'The same as a table';

export const examples: readonly Example[] = [
  {
    part: 'Plot',
    name: 'lines told apart by dash and name',
    render: () => (
      <Plot
        title="The day's bound against minutes sampled"
        description="The bound falls as more minutes are sampled, and stands higher with each cassette more."
        x={{
          label: 'minutes sampled',
          from: 0,
          to: 480,
          ticks: [0, 120, 240, 360, 480].map((at) => ({ at, text: String(at) })),
        }}
        y={upAxis}
        limits={limits}
        lines={[1, 2, 3, 4].map((count) => ({
          name: count === 1 ? '1 cassette' : `${count} cassettes`,
          points: bound(count),
        }))}
        table={{
          open,
          head: ['Minutes', '1 cassette'],
          rows: bound(1).map(({ x, y }) => ({ key: String(x), cells: [x, y.toFixed(1)] })),
        }}
      />
    ),
  },
  {
    part: 'Plot',
    name: 'figures by day with their bounds',
    render: () => (
      <Plot
        title="Results by date"
        description="Four results between March and May, one of them doubtful."
        x={{
          label: 'day of work',
          from: '2026-03-02',
          to: '2026-05-20',
          ticks: [
            { at: '2026-04-01', text: 'Apr' },
            { at: '2026-05-01', text: 'May' },
          ],
        }}
        y={upAxis}
        limits={limits}
        marks={[
          { id: 'a', x: '2026-03-02', low: 22, high: 22 },
          { id: 'b', x: '2026-03-20', low: 0, high: 5.2 },
          { id: 'c', x: '2026-04-14', low: 34, high: null, atLeast: true },
          { id: 'd', x: '2026-05-20', low: 12, high: 41, doubtful: true },
        ]}
        table={{ open, head: ['Day', 'Result'], rows: [{ key: 'a', cells: ['2 March 2026', '22 µg/m³'] }] }}
      >
        <PlotKey
          items={[
            { shape: 'figure', text: 'a figure' },
            { shape: 'bounds', text: 'between two ends' },
            { shape: 'atLeast', text: 'at least this much' },
            { shape: 'doubtful', text: 'doubtful' },
          ]}
        />
      </Plot>
    ),
  },
];
