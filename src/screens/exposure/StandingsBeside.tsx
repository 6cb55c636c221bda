/** Quietly, under where the day stands by the rule: the firm's own stricter limits, and the sets that the book shows beside it. */
import { type BesideStanding, standingsBeside } from '#findings/duties/limits/limitsBeside.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import { noOwnLimits } from '#reference/ownLimits.ts';
import { en as words } from '#words/exposure.ts';
import { en } from '#words/limitsBeside.ts';
import type { DayOn } from './dayOn.ts';
import styles from './exposure.module.css';
import { markByVerdict } from './markByVerdict.ts';

const beside = en.day;

export function StandingsBeside({ day: { finding, limits } }: { readonly day: DayOn }) {
  const shown = standingsBeside(finding, limits?.besideIds ?? [], limits ?? noOwnLimits);
  if (finding.twa8 === null || shown.length === 0) return null;
  return (
    <section className={styles.beside}>
      <h2>{beside.heading}</h2>
      <p>{beside.intro}</p>
      {shown.map((one) => (
        <section key={one.id} className={styles.standing}>
          <h3>{nameOf(one)}</h3>
          {one.standings.length === 0 && <p>{beside.none}</p>}
          {one.standings.map(({ which, limit, verdict }) => (
            <p key={which}>
              <StandingMark standing={markByVerdict[verdict]}>
                {one.kind === 'rule' || one.kind === 'ofTask'
                  ? words.verdict(verdict, which, limit.value)
                  : beside.verdict(verdict, one.kind, which, limit.value)}
              </StandingMark>
            </p>
          ))}
          {(one.kind === 'otherRule' || one.kind === 'advice') && <p>{beside.check}</p>}
        </section>
      ))}
      <Lines>
        <Line to="/rules">{beside.choose}</Line>
      </Lines>
    </section>
  );
}

function nameOf({ kind, document, jurisdiction, untilOn }: BesideStanding): string {
  if (kind === 'own') return beside.own;
  if (kind === 'ofTask') return beside.ofTask(document ?? '', untilOn);
  return beside.set(jurisdiction ?? '', document ?? '');
}
