/**
 * Where something stands, in a word and a shape drawn in ink. For a quantity the shape is a ruled line (the limit) and a dot under it,
 * on it, over it, or a span across it. For a sample it is a cassette seen from above: whole, broken, struck through.
 */
import { usePartsWords } from './language.ts';
import styles from './StandingMark.module.css';

export type Standing =
  | 'below'
  | 'exactlyAt'
  | 'above'
  | 'unresolved'
  | 'good'
  | 'doubtful'
  | 'void'
  | 'waiting'
  | 'due'
  | 'done';

export interface StandingMarkProps {
  readonly standing: Standing;
  /** The word in its sentence: 'below the action level'. Without it the bare word stands. */
  readonly children?: string | undefined;
}

export function StandingMark({ standing, children }: StandingMarkProps) {
  const words = usePartsWords();
  return (
    <span className={styles.mark}>
      <svg className={styles.shape} viewBox="0 0 24 24" aria-hidden="true" focusable="false">
        {shapes[standing]}
      </svg>
      <span>{children ?? words.standing[standing]}</span>
    </span>
  );
}

const limitLine = <path d="M2 12h20" />;
const shapes: Readonly<Record<Standing, React.ReactNode>> = {
  below: (
    <>
      {limitLine}
      <circle cx="12" cy="18.5" r="3" />
    </>
  ),
  exactlyAt: (
    <>
      {limitLine}
      <circle cx="12" cy="12" r="4" className={styles.solid} />
    </>
  ),
  above: (
    <>
      {limitLine}
      <circle cx="12" cy="5.5" r="3.5" className={styles.solid} />
    </>
  ),
  unresolved: (
    <>
      {limitLine}
      <path d="M12 3v18M9 3h6M9 21h6" />
    </>
  ),
  good: (
    <>
      <circle cx="12" cy="12" r="9" />
      <circle cx="12" cy="12" r="2" className={styles.solid} />
    </>
  ),
  doubtful: (
    <>
      <circle cx="12" cy="12" r="9" strokeDasharray="5 4.4" />
      <circle cx="12" cy="12" r="2" className={styles.solid} />
    </>
  ),
  void: (
    <>
      <circle cx="12" cy="12" r="9" />
      <path d="M3 21 21 3" />
    </>
  ),
  waiting: <circle cx="12" cy="12" r="9" strokeDasharray="1.5 4.1" />,
  due: <path d="M4 4v16M4 4h11l-3 4 3 4H4" />,
  done: <path d="M4 13l5 6L20 5" />,
};
