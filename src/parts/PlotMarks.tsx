/**
 * Figures of a picture and what bounds them: a dot, a bar between two ends, an arrow where only *at least* is known. Hollow is doubtful.
 */
import styles from './Plot.module.css';
import { type Across, frame, type PlotAxis, type PlotMark, placeAcross, placeUp } from './plotShape.ts';

interface MarksProps {
  readonly x: PlotAxis<Across>;
  readonly y: PlotAxis<number>;
  readonly marks: readonly PlotMark[];
}

export const PlotMarks = ({ x, y, marks }: MarksProps) => (
  <g>
    {marks.map((mark) => {
      const top = mark.high === null ? null : placeUp(y, mark.high);
      return (
        <Mark
          key={mark.id}
          x={placeAcross(x, mark.x)}
          low={placeUp(y, mark.low)}
          top={top}
          atLeast={mark.atLeast === true || mark.high === null}
          doubtful={mark.doubtful === true}
        />
      );
    })}
  </g>
);

interface MarkProps {
  readonly x: number;
  readonly low: number;
  /** null: up to the edge. */
  readonly top: number | null;
  readonly atLeast: boolean;
  readonly doubtful: boolean;
  /** Where what has no upper end stops. */
  readonly edge?: number;
}

/** The dot stands where the figure is judged: at its upper end, and at its lower one where there is none. */
function Mark({ x, low, top, atLeast, doubtful, edge = frame.top }: MarkProps) {
  const dotY = top ?? low;
  const bar = top === null ? null : low - top > 1;
  const arrowTop = top === null ? edge : Math.max(edge, top - 26);
  return (
    <g className={doubtful ? styles.doubtful : styles.sound}>
      {bar && (
        <path className={styles.bar} d={`M${x} ${low}V${dotY}M${x - 6} ${low}H${x + 6}M${x - 6} ${dotY}H${x + 6}`} />
      )}
      {atLeast && (
        <>
          <path className={styles.bar} d={`M${x} ${dotY}V${arrowTop}`} />
          <path className={styles.head} d={`M${x - 6} ${arrowTop + 9}L${x} ${arrowTop}L${x + 6} ${arrowTop + 9}`} />
        </>
      )}
      <circle className={styles.dot} cx={x} cy={dotY} r="5" />
    </g>
  );
}

export interface PlotKeyItem {
  readonly shape: 'figure' | 'bounds' | 'atLeast' | 'doubtful';
  readonly text: string;
}

const shapes = {
  figure: { low: 22, top: 22, atLeast: false, doubtful: false },
  bounds: { low: 38, top: 8, atLeast: false, doubtful: false },
  atLeast: { low: 36, top: null, atLeast: true, doubtful: false },
  doubtful: { low: 22, top: 22, atLeast: false, doubtful: true },
} as const;

/** What the shapes mean. */
export const PlotKey = ({ items }: { readonly items: readonly PlotKeyItem[] }) => (
  <ul className={styles.key}>
    {items.map(({ shape, text }) => (
      <li key={shape}>
        <svg className={styles.keyShape} viewBox="0 0 24 44" aria-hidden="true">
          <Mark x={12} edge={5} {...shapes[shape]} />
        </svg>
        {text}
      </li>
    ))}
  </ul>
);
