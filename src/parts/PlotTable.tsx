/** What a picture shows, as a table under it. */
import type { ReactNode } from 'react';
import styles from './Plot.module.css';

export interface TableOfPlot {
  /** What opens it: 'The same as a table'. */
  readonly open: string;
  readonly head: readonly string[];
  readonly rows: readonly { readonly key: string; readonly cells: readonly ReactNode[] }[];
  readonly startOpen?: boolean | undefined;
  /** Its cells hold words, which need more room than figures. */
  readonly wordy?: boolean | undefined;
}

export function PlotTable({ table, title }: { readonly table: TableOfPlot; readonly title: string }) {
  return (
    <details className={styles.details} open={table.startOpen}>
      <summary className={styles.summary}>
        {table.open}
        <span className={styles.heard}>: {title}</span>
      </summary>
      <div className={styles.tableRoom}>
        <table className={classOf(table)}>
          <thead>
            <tr>
              {table.head.map((text) => (
                <th key={text} scope="col">
                  {text}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map(({ key, cells }) => (
              <tr key={key}>
                {cells.map((cell, i) =>
                  i === 0 ? (
                    // biome-ignore lint/suspicious/noArrayIndexKey: cells have no name but their column
                    <th key={i} scope="row">
                      {cell}
                    </th>
                  ) : (
                    // biome-ignore lint/suspicious/noArrayIndexKey: cells have no name but their column
                    <td key={i} data-label={table.head[i]}>
                      {cell}
                    </td>
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}

const classOf = ({ wordy, head }: TableOfPlot): string | undefined =>
  wordy === true ? styles.wordy : head.length > 2 ? styles.several : undefined;
