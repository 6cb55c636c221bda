/** What a picture shows, as a table under it. */
import type { ReactNode } from 'react';
import styles from './Plot.module.css';

export interface TableOfPlot {
  /** What opens it: 'The same as a table'. */
  readonly open: string;
  readonly head: readonly string[];
  readonly rows: readonly { readonly key: string; readonly cells: readonly ReactNode[] }[];
  readonly startOpen?: boolean | undefined;
}

export function PlotTable({ table, title }: { readonly table: TableOfPlot; readonly title: string }) {
  return (
    <details className={styles.details} open={table.startOpen}>
      <summary className={styles.summary}>
        {table.open}
        <span className={styles.heard}>: {title}</span>
      </summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table must scroll by keyboard too */}
      <section className={styles.scroll} aria-label={title} tabIndex={0}>
        <table>
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
                    <td key={i}>{cell}</td>
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
