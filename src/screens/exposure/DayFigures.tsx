/** The figures of the day, large: the 8-hour average first; of a long day also the average over the shift and what it may reach. */
import type { Answer } from '#core/comparison.ts';
import { type Estimate, lowerOf, upperOf } from '#core/estimate.ts';
import type { Term } from '#core/formula.ts';
import type { WorkdayFinding } from '#findings/workday.ts';
import { Figure } from '#parts/Figure.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import { en as words } from '#words/exposure.ts';
import { formatEstimateNumber } from '#words/quantity.ts';
import styles from './exposure.module.css';

const limitsOf = ({ standings }: WorkdayFinding): number[] => standings.map(({ limit }) => limit.value);

interface DayFiguresProps {
  readonly finding: WorkdayFinding;
  /** Workings open in place; on a wide page they stand in the other column. */
  readonly withWorkings: boolean;
}

const workingOf = (term: Term, withWorkings: boolean) => (withWorkings ? <WorkingView working={term} /> : undefined);

export function DayFigures({ finding, withWorkings }: DayFiguresProps) {
  const { twa8 } = finding;
  if (twa8 === null)
    return (
      <p>
        <StandingMark standing="waiting">{words.twa8Unknown}</StandingMark>
      </p>
    );
  return (
    <Figure
      label={words.twa8}
      value={formatEstimateNumber(twa8.estimate, twa8.unit, { against: limitsOf(finding) })}
      unit={twa8.unit}
    >
      {workingOf(twa8, withWorkings)}
    </Figure>
  );
}

/** The allowed average is printed so that it stands on the right side of the average beside it. */
const endsOf = (estimate: Estimate): number[] =>
  [lowerOf(estimate), upperOf(estimate)].filter((end) => Number.isFinite(end));

/** Of a day longer than eight hours: the average over the shift, what it may reach, and where it stands to that. */
export function ShiftFigures({ finding, withWorkings }: DayFiguresProps) {
  const { shiftAverage, allowableAverage, shiftComparison } = finding;
  if (shiftAverage === null || allowableAverage === null) return null;
  const allowable = allowableAverage.estimate;
  const against = allowable.kind === 'exact' ? [allowable.value] : [];
  return (
    <section className={styles.figures}>
      <h2>{words.longDay}</h2>
      <Figure
        label={words.shiftAverage}
        value={formatEstimateNumber(shiftAverage.estimate, shiftAverage.unit, { against })}
        unit={shiftAverage.unit}
        note={shiftComparison === null ? undefined : <ShiftStanding crossed={shiftComparison.crossed} />}
      >
        {workingOf(shiftAverage, withWorkings)}
      </Figure>
      <Figure
        label={words.allowable}
        value={formatEstimateNumber(allowable, allowableAverage.unit, { against: endsOf(shiftAverage.estimate) })}
        unit={allowableAverage.unit}
      >
        {workingOf(allowableAverage, withWorkings)}
      </Figure>
    </section>
  );
}

function ShiftStanding({ crossed }: { readonly crossed: Answer }) {
  const mark = { yes: 'above', no: 'below', unresolved: 'unresolved' } as const;
  const text = { yes: words.shiftAbove, no: words.shiftNotAbove, unresolved: words.shiftUnresolved };
  return <StandingMark standing={mark[crossed]}>{text[crossed]}</StandingMark>;
}

/** The same figures opened, one below the other: the second column. */
export function DayWorkings({ finding }: { readonly finding: WorkdayFinding }) {
  const { twa8, protectiveTwa8, shiftAverage, allowableAverage } = finding;
  const apart = protectiveTwa8 !== null && finding.standings.some(({ protectiveJudges }) => protectiveJudges);
  const terms = [
    twa8,
    apart ? protectiveTwa8 : null,
    ...(allowableAverage === null ? [] : [shiftAverage, allowableAverage]),
  ];
  const shown = terms.filter((term) => term !== null);
  if (shown.length === 0) return null;
  return (
    <section className={styles.workings}>
      <h2>{words.workings}</h2>
      {shown.map((term, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the figures stand in one fixed order
        <WorkingView key={at} working={term} />
      ))}
    </section>
  );
}
