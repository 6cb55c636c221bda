/** What this page does not promise, and whose rule decides. */
import type { WorkdayFinding } from '#findings/workday.ts';
import { stateByCode } from '#reference/states.ts';
import { en as words } from '#words/exposure.ts';
import styles from './exposure.module.css';

export function Cautions({ finding }: { readonly finding: WorkdayFinding }) {
  const { stateCode, ruleHeld } = finding;
  const state = stateCode === null ? null : (stateByCode(stateCode)?.name ?? stateCode);
  return (
    <section className={styles.cautions}>
      <h2>{words.cautions.heading}</h2>
      <p>
        {ruleHeld ? words.cautions.held : state === null ? words.cautions.stateNotKnown : words.cautions.ownRule(state)}
      </p>
      <p>{words.cautions.shown}</p>
    </section>
  );
}
