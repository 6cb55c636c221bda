/** The least protection factor, large, with how it was worked out and what it holds to on a shift of that length. */
import { lowerOf } from '#core/estimate.ts';
import type { FirstDay } from '#findings/duties/protecting/firstDay.ts';
import { Figure } from '#parts/Figure.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import { formatNumber, formatQuantity } from '#words/quantity.ts';
import { en } from '#words/wear.ts';
import styles from './wear.module.css';

const words = en.answer;

export function Factor({ first }: { readonly first: FirstDay }) {
  const { advice, holdsTo, shiftHours } = first;
  const { leastApf, floorApf } = advice;
  if (floorApf === null)
    return (
      <section className={styles.presumed}>
        <p className={styles.strong}>{words.factorNone}</p>
        <p>{words.factorNoneText}</p>
      </section>
    );
  const note =
    leastApf === null || holdsTo === null
      ? words.noFactor
      : words.holdsTo(heldUpTo(holdsTo.cappedUgPerM3 ?? lowerOf(holdsTo.working.estimate)), shiftHours);
  return (
    <Figure
      label={leastApf === null ? words.notLess : words.factor}
      value={formatNumber(floorApf, '', { digits: 'working' })}
      note={
        <p>
          {note}
          {first.ownPelUgPerM3 !== null &&
            ` ${words.byOwnLimit(formatQuantity(first.ownPelUgPerM3, 'µg/m³', { digits: 'working' }))}`}
        </p>
      }
      openText={words.factorWorking}
    >
      <Workings first={first} />
    </Figure>
  );
}

/** Rounded down: what is printed must not promise more than the factor holds to. */
const heldUpTo = (value: number): string =>
  words.micrograms(formatNumber(value, 'µg/m³', Number.isInteger(value) ? { digits: 'working' } : {}, 'down'));

function Workings({ first }: { readonly first: FirstDay }) {
  const { advice, holdsTo, presumption, shiftHours } = first;
  const ownReading = { '2': words.tierTwo, '3': words.tierThree, '1b': words.tierOneB, none: null, '1': null };
  return (
    <div className={styles.workings}>
      {advice.presumedWorking !== null && <WorkingView working={advice.presumedWorking} />}
      {ownReading[presumption.tier] !== null && <p>{ownReading[presumption.tier]}</p>}
      {shiftHours > 8 && <p>{words.longer(shiftHours)}</p>}
      {holdsTo !== null && <WorkingView working={holdsTo.working} />}
      {holdsTo !== null && holdsTo.cappedUgPerM3 !== null && <p>{words.capped}</p>}
    </div>
  );
}
