/** Where the day stands to each limit, in a shape and a sentence, with what would settle it. */
import type { DayStanding, WorkdayFinding } from '#findings/workday.ts';
import { StandingMark } from '#parts/StandingMark.tsx';
import { en as words } from '#words/exposure.ts';
import { formatEstimate } from '#words/quantity.ts';
import styles from './exposure.module.css';
import { markByVerdict } from './markByVerdict.ts';

export function Standings({ finding }: { readonly finding: WorkdayFinding }) {
  if (finding.standings.length === 0 || finding.twa8 === null) return null;
  return (
    <section className={styles.standings}>
      <h2>{words.standing}</h2>
      {finding.standings.map((standing) => (
        <One key={`${standing.limitSetId} ${standing.which}`} standing={standing} finding={finding} />
      ))}
    </section>
  );
}

function One({ standing, finding }: { readonly standing: DayStanding; readonly finding: WorkdayFinding }) {
  const { verdict, which, limit, protectiveJudges, unknownWouldReach } = standing;
  const { protectiveTwa8 } = finding;
  return (
    <div className={styles.standing}>
      <p>
        <StandingMark standing={markByVerdict[verdict]}>{words.verdict(verdict, which, limit.value)}</StandingMark>
      </p>
      {protectiveJudges && protectiveTwa8 !== null && (
        <p>
          {words.lowerJudges}:{' '}
          <strong>{formatEstimate(protectiveTwa8.estimate, protectiveTwa8.unit, { against: [limit.value] })}</strong>
        </p>
      )}
      {unknownWouldReach !== null && verdict !== 'above' && verdict !== 'atOrAbove' && (
        <p>{words.unknownWouldReach(formatEstimate(unknownWouldReach.estimate, unknownWouldReach.unit), which)}</p>
      )}
    </div>
  );
}
