/** How far the flow after a run lay from the flow before it, run by run: as a picture, and as the table that says the same. */
import { type FlowHistory, type FlowPoint, flowHistory } from '#findings/gear/flowHistory.ts';
import { Plot } from '#parts/Plot.tsx';
import type { PumpRecord } from '#records/book.ts';
import { en } from '#words/gearScreen.ts';
import { formatDay, formatNumber } from '#words/quantity.ts';
import styles from './gear.module.css';
import type { GearHere } from './gearHere.ts';

const words = en.flow;

export function FlowChange({ here }: { readonly here: GearHere<PumpRecord> }) {
  const history = flowHistory(here.record.id, here.book);
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      {history.points.length === 0 ? <p>{words.none}</p> : <p>{words.intro}</p>}
      <Picture history={history} name={here.title} />
      {history.withoutChangeCount > 0 && <p className={styles.quiet}>{words.without(history.withoutChangeCount)}</p>}
    </section>
  );
}

/** Weakening lies below the middle line; what the tolerance allows stands as a line on both sides of it. */
function Picture({ history, name }: { readonly history: FlowHistory; readonly name: string }) {
  const { points, x, y, averageUpToPct, flaggedUpToPct } = history;
  if (x === null) return null;
  const { columns } = words;
  const limits = [averageUpToPct, flaggedUpToPct].flatMap((pct) =>
    [pct, -pct].map((at) => ({ name: words.limit(at), y: at })),
  );
  return (
    <Plot
      title={words.picture(name)}
      description={words.seen(points.length, points.filter(({ within }) => within !== 'average').length)}
      x={{
        label: words.x(points[0]?.workOn ?? x.fromOn, points.at(-1)?.workOn ?? x.toOn),
        from: x.fromOn,
        to: x.toOn,
        ticks: x.ticks.map(({ label }) => ({ at: `${label}-01`, text: words.month(label) })),
      }}
      y={{
        label: words.y,
        from: y.fromPct,
        to: y.toPct,
        ticks: y.ticks.map(({ at, label }) => ({ at, text: label })),
      }}
      limits={limits}
      marks={points.map(({ sampleId, workOn, changePct }) => ({
        id: sampleId,
        x: workOn,
        low: changePct,
        high: changePct,
      }))}
      table={{
        open: words.table,
        head: [columns.day, columns.before, columns.after, columns.change],
        rows: points.toReversed().map((point) => ({ key: point.sampleId, cells: cellsOf(point) })),
      }}
    />
  );
}

const cellsOf = ({ workOn, flowBeforeLPerMin, flowAfterLPerMin, changePct, within }: FlowPoint): readonly string[] => [
  formatDay(workOn),
  formatNumber(flowBeforeLPerMin, 'L/min'),
  formatNumber(flowAfterLPerMin, 'L/min'),
  `${formatNumber(changePct, '%')}${within === 'average' ? '' : ` ${words.marks[within]}`}`,
];
