/** What is presumed of the chosen tasks until somebody measures, and what must be there meanwhile, each with its paragraph. */
import type { PresumptionFinding } from '#findings/presumption.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { isCitable } from '#reference/source.ts';
import { taskById } from '#reference/tasks.ts';
import { en as words } from '#words/fitting.ts';
import { formatList } from '#words/quantity.ts';
import styles from './fitting.module.css';

/** A presumed level as the list states it: whole micrograms. */
const limit = (level: PresumptionFinding['presumedAbove']): string =>
  level === null ? '' : `${level.value}\u00a0${level.unit}`;

export function Presumed({ presumption }: { readonly presumption: PresumptionFinding }) {
  const {
    presumedTextKey,
    presumedAbove,
    presumedUpTo,
    becauseTaskIds,
    sources,
    interimProtections,
    leastApf,
    leadTakenAsPresent,
  } = presumption;
  const tasks = becauseTaskIds.map((id) => taskById(id)?.en ?? id);
  const cited = sources.find(isCitable);
  return (
    <section className={styles.presumed}>
      <p className={styles.strong}>{words.presumed[presumedTextKey](limit(presumedAbove), limit(presumedUpTo))}</p>
      {leadTakenAsPresent && <p>{words.leadTaken}</p>}
      <p>{words.because(formatList(tasks))}</p>
      <p className={styles.source}>
        {cited ? words.paragraph(cited.title, cited.section ?? '') : ''}
        {sources.some((source) => !isCitable(source)) && ` ${words.ownReading}`}
      </p>
      {interimProtections.length > 0 && (
        <Lines heading={words.meanwhile}>
          {interimProtections.map(({ key, paragraph, source }) => (
            <Line key={key} detail={isCitable(source) ? words.protectionDetail(paragraph) : undefined}>
              {key === 'respirator' && leastApf !== null
                ? factorText(presumption, leastApf.value)
                : words.protection[key]}
            </Line>
          ))}
        </Lines>
      )}
      {leastApf !== null && <Respirators presumption={presumption} />}
      <p className={styles.source}>{words.defers}</p>
    </section>
  );
}

/** Where the rule says no upper level, no factor is named: only what is known to be too little. */
const factorText = ({ tier }: PresumptionFinding, apf: number): string =>
  tier === '1b' ? words.leastFactorOpen(apf) : words.leastFactor(apf);

const shownAtMost = 3;

function Respirators({ presumption }: { readonly presumption: PresumptionFinding }) {
  return (
    <details>
      <summary className={styles.summary}>{words.respirators}</summary>
      <ul>
        {presumption.respirators.slice(0, shownAtMost).map(({ id, supply, facepiece, apf }) => (
          <li key={id}>{words.respirator(supply, facepiece, apf.value)}</li>
        ))}
      </ul>
      <p className={styles.source}>{words.leastFactorOwn}</p>
    </details>
  );
}
