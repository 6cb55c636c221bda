/**
 * A small picture of lines, limits and figures with their bounds, and the table that says the same. Lines are told apart by their dashes
 * and by the name at their end, figures by their shape: it reads in grey. For those who listen it has a title and a description.
 */
import { type ReactNode, useId } from 'react';
import styles from './Plot.module.css';
import { PlotMarks } from './PlotMarks.tsx';
import { PlotTable, type TableOfPlot } from './PlotTable.tsx';
import {
  type Across,
  apart,
  bottomY,
  frame,
  type PlotAxis,
  type PlotLimit,
  type PlotLine,
  type PlotMark,
  placeAcross,
  placeUp,
  rightX,
} from './plotShape.ts';

export interface PlotProps {
  readonly title: string;
  /** What is to be seen in it, in a sentence. */
  readonly description: string;
  readonly x: PlotAxis<Across>;
  readonly y: PlotAxis<number>;
  readonly lines?: readonly PlotLine[] | undefined;
  readonly limits?: readonly PlotLimit[] | undefined;
  readonly marks?: readonly PlotMark[] | undefined;
  readonly table: TableOfPlot;
  /** Between picture and table: as a rule the key of the marks. */
  readonly children?: ReactNode;
}

export function Plot({ title, description, x, y, lines = [], limits = [], marks = [], table, children }: PlotProps) {
  const id = useId();
  return (
    <figure className={styles.figure}>
      <figcaption className={styles.title}>{title}</figcaption>
      <svg
        className={styles.picture}
        viewBox={`0 0 ${frame.width} ${frame.height}`}
        role="img"
        aria-labelledby={`${id}t ${id}d`}
      >
        <title id={`${id}t`}>{title}</title>
        <desc id={`${id}d`}>{description}</desc>
        <Axes x={x} y={y} />
        <Limits x={x} y={y} limits={limits} />
        <Curves x={x} y={y} lines={lines} />
        <PlotMarks x={x} y={y} marks={marks} />
        <Names x={x} y={y} lines={lines} limits={limits} />
      </svg>
      {children}
      <PlotTable table={table} title={title} />
    </figure>
  );
}

type Scales = Pick<PlotProps, 'x' | 'y'>;

function Axes({ x, y }: Scales) {
  return (
    <g>
      {y.ticks.map(({ at, text }) => (
        <g key={at}>
          <line className={styles.grid} x1={frame.left} x2={rightX} y1={placeUp(y, at)} y2={placeUp(y, at)} />
          <text className={styles.text} x={frame.left - 7} y={placeUp(y, at)} dy="0.35em" textAnchor="end">
            {text}
          </text>
        </g>
      ))}
      {x.ticks.map(({ at, text }) => (
        <g key={at}>
          <line className={styles.tick} x1={placeAcross(x, at)} x2={placeAcross(x, at)} y1={bottomY} y2={bottomY + 5} />
          <text className={styles.text} x={placeAcross(x, at)} y={bottomY + 20} textAnchor="middle">
            {text}
          </text>
        </g>
      ))}
      <path className={styles.axis} d={`M${frame.left} ${frame.top}V${bottomY}H${rightX}`} />
      <text className={styles.text} x={frame.left} y={frame.height - 10}>
        {x.label}
      </text>
      <text className={styles.text} x={4} y={15}>
        {y.label}
      </text>
    </g>
  );
}

function Limits({ x, y, limits }: Scales & { readonly limits: readonly PlotLimit[] }) {
  return (
    <g>
      {limits.map(({ name, y: at, from, to }) => (
        <line
          key={`${name} ${from}`}
          className={styles.limit}
          x1={from === undefined || from === x.from ? frame.left : placeAcross(x, from)}
          x2={to === undefined || to === x.to ? rightX : placeAcross(x, to)}
          y1={placeUp(y, at)}
          y2={placeUp(y, at)}
        />
      ))}
    </g>
  );
}

/** By the order of the lines. The first is whole. */
const dashes = [undefined, '9 5', '2.5 4', '12 4 2.5 4'] as const;

function Curves({ x, y, lines }: Scales & { readonly lines: readonly PlotLine[] }) {
  return (
    <g>
      {lines.map(({ name, points }, i) => (
        <polyline
          key={name}
          className={styles.curve}
          strokeDasharray={dashes[i % dashes.length]}
          points={points.map((point) => `${placeAcross(x, point.x)},${placeUp(y, point.y)}`).join(' ')}
        />
      ))}
    </g>
  );
}

/** Each name once at the right edge, led to its line where others pushed it away. */
function Names({ x, y, lines, limits }: Scales & Pick<PlotProps, 'lines' | 'limits'>) {
  const ends = (lines ?? []).flatMap(({ name, points }) => {
    const last = points.at(-1);
    return last ? [{ name, y: placeUp(y, last.y), fromX: placeAcross(x, last.x) }] : [];
  });
  const limitEnds = (limits ?? []).map((each) => ({
    name: each.name,
    y: placeUp(y, each.y),
    fromX: each.to === undefined || each.to === x.to ? rightX : placeAcross(x, each.to),
  }));
  const named = [...new Map([...limitEnds, ...ends].map((each) => [each.name, each])).values()];
  return (
    <g>
      {apart(named).map(({ name, y: ownY, atY, fromX }) => (
        <g key={name}>
          <path className={styles.leader} d={`M${fromX + 1} ${ownY}H${rightX + 1}L${rightX + 6} ${atY}`} />
          <text className={styles.text} x={rightX + 9} y={atY} dy="0.35em">
            {name}
          </text>
        </g>
      ))}
    </g>
  );
}
