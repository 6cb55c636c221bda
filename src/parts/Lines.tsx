/** A ruled list, read as sentences: one line a thing, the whole line tappable when it leads somewhere. */
import type { ReactNode } from 'react';
import { hrefOf } from './href.ts';
import styles from './Lines.module.css';

export interface LinesProps {
  readonly children: ReactNode;
  /** A heading over the list. */
  readonly heading?: string | undefined;
  /** Said instead of an empty list. */
  readonly whenEmpty?: ReactNode;
}

export function Lines({ children, heading, whenEmpty }: LinesProps) {
  const empty = Array.isArray(children) && children.flat().filter(Boolean).length === 0;
  return (
    <section>
      {heading !== undefined && <h2 className={styles.heading}>{heading}</h2>}
      {empty && whenEmpty !== undefined ? (
        <p className={styles.empty}>{whenEmpty}</p>
      ) : (
        <ul className={styles.lines}>{children}</ul>
      )}
    </section>
  );
}

export interface LineProps {
  /** The sentence. */
  readonly children: ReactNode;
  /** A quieter line below it. */
  readonly detail?: ReactNode;
  /** At the end of the line: a figure or a mark. */
  readonly end?: ReactNode;
  /** Path inside the app that the whole line leads to. */
  readonly to?: string | undefined;
  readonly onClick?: (() => void) | undefined;
}

export function Line({ children, detail, end, to, onClick }: LineProps) {
  const inside = (
    <>
      <span className={styles.text}>
        <span className={styles.sentence}>{children}</span>
        {detail !== undefined && <span className={styles.detail}>{detail}</span>}
      </span>
      {end !== undefined && <span className={styles.end}>{end}</span>}
    </>
  );
  return <li className={styles.item}>{lineElement(inside, to, onClick)}</li>;
}

function lineElement(inside: ReactNode, to: string | undefined, onClick: (() => void) | undefined): ReactNode {
  if (to !== undefined)
    return (
      <a className={styles.tappable} href={hrefOf(to)} onClick={onClick}>
        {inside}
      </a>
    );
  if (onClick !== undefined)
    return (
      <button className={styles.tappable} type="button" onClick={onClick}>
        {inside}
      </button>
    );
  return <div className={styles.line}>{inside}</div>;
}

/** Names and values of one thing, ruled: 'Pump — 12', 'Lot — 88-120'. */
export function Particulars({ items }: { readonly items: readonly (readonly [name: string, value: ReactNode])[] }) {
  return (
    <dl className={styles.particulars}>
      {items.map(([name, value]) => (
        <div key={name} className={styles.particular}>
          <dt className={styles.name}>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
