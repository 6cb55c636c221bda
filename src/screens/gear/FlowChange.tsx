/** How far the flow after a run lay from the flow before it, run by run: as a picture, and as the table that says the same. */
import { type FlowHistory, flowHistory } from '#findings/gear/flowHistory.ts';
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
      {history.points.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <>
          <p>{words.intro}</p>
          <Table points={history.points} />
        </>
      )}
      {history.withoutChangeCount > 0 && <p className={styles.quiet}>{words.without(history.withoutChangeCount)}</p>}
    </section>
  );
}

/** Newest first. */
function Table({ points }: Pick<FlowHistory, 'points'>) {
  const { columns } = words;
  const cell = (value: number): string => formatNumber(value, 'L/min');
  return (
    <div className={styles.scroll}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">{columns.day}</th>
            <th scope="col" className={styles.number}>
              {columns.before}
            </th>
            <th scope="col" className={styles.number}>
              {columns.after}
            </th>
            <th scope="col" className={styles.number}>
              {columns.change}
            </th>
          </tr>
        </thead>
        <tbody>
          {points.toReversed().map((point) => (
            <tr key={point.sampleId}>
              <th scope="row">{formatDay(point.workOn)}</th>
              <td className={styles.number}>{cell(point.flowBeforeLPerMin)}</td>
              <td className={styles.number}>{cell(point.flowAfterLPerMin)}</td>
              <td className={styles.number}>
                {formatNumber(point.changePct, '%')}
                {point.within === 'average' ? '' : ` ${words.marks[point.within]}`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
