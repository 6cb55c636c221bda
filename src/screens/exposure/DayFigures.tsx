/** The figures of the day, large: the 8-hour average first; of a long day also the average over the shift and what it may reach. */
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

export function DayFigures({ finding, withWorkings }: DayFiguresProps) {
  const { twa8, shiftAverage, allowableAverage } = finding;
  const working = (term: Term) => (withWorkings ? <WorkingView working={term} /> : undefined);
  if (twa8 === null)
    return (
      <div>
        <p>
          <StandingMark standing="waiting">{words.twa8Unknown}</StandingMark>
        </p>
      </div>
    );
  return (
    <div className={styles.figures}>
      <Figure
        label={words.twa8}
        value={formatEstimateNumber(twa8.estimate, twa8.unit, { against: limitsOf(finding) })}
        unit={twa8.unit}
      >
        {working(twa8)}
      </Figure>
      {shiftAverage !== null && allowableAverage !== null && (
        <>
          <Figure
            label={words.shiftAverage}
            value={formatEstimateNumber(shiftAverage.estimate, shiftAverage.unit, {
              against: allowableAverage.estimate.kind === 'exact' ? [allowableAverage.estimate.value] : [],
            })}
            unit={shiftAverage.unit}
          >
            {working(shiftAverage)}
          </Figure>
          <Figure
            label={words.allowable}
            value={formatEstimateNumber(allowableAverage.estimate, allowableAverage.unit)}
            unit={allowableAverage.unit}
          >
            {working(allowableAverage)}
          </Figure>
        </>
      )}
    </div>
  );
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
