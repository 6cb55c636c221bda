/** The answer: a sentence, the two figures that matter, what stands against it, then the rest for whoever reads on. */
import type { SampleAhead } from '#findings/season/sampleAhead.ts';
import { Figure } from '#parts/Figure.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import { en as words } from '#words/proveScreen.ts';
import { formatEstimateNumber, formatMinutes } from '#words/quantity.ts';
import { aheadReasonText } from '#words/sampleAhead.ts';
import { BoundPicture, LoadPicture } from './Curves.tsx';
import { Levels } from './Levels.tsx';
import { OfMethod } from './OfMethod.tsx';
import styles from './prove.module.css';

export function Answer({ ahead }: { readonly ahead: SampleAhead }) {
  const { share, bound, input, sampledMin, reasons, blocks } = ahead;
  const { levelUgPerM3, minutesNeededMin, couldShow } = share;
  const said = { couldShow, levelUgPerM3, minutesNeededMin, cassettesCount: input.cassettesCount };
  const blocking = reasons.filter(({ key }) => blocks.includes(key));
  const others = reasons.filter(({ key }) => !blocks.includes(key));
  const against = [levelUgPerM3, input.actionLevelUgPerM3, input.pelUgPerM3];
  return (
    <div className={styles.answer}>
      <h2>{words.answerHeading}</h2>
      <p className={styles.first}>
        {blocking.length > 0 && couldShow === 'yes' ? words.notLikeThis : words.answer(said)}
      </p>
      {blocking.length > 0 && (
        <div>
          <p>{words.blocked}</p>
          <ul className={styles.list}>
            {blocking.map((reason) => (
              <li key={reason.key}>{aheadReasonText(reason)}</li>
            ))}
          </ul>
        </div>
      )}
      <Figure
        label={words.bound.label}
        value={formatEstimateNumber(bound.estimate, 'µg/m³', { against })}
        unit="µg/m³"
        note={sampledMin < input.shiftMin ? words.bound.restNote : words.bound.note}
      >
        <WorkingView working={bound} />
      </Figure>
      <Figure
        label={words.minutes.label}
        value={minutesNeededMin === null ? words.minutes.never : formatMinutes(minutesNeededMin)}
        note={
          minutesNeededMin === null
            ? words.minutes.neverNote(levelUgPerM3, input.cassettesCount)
            : words.minutes.note(levelUgPerM3)
        }
      >
        <WorkingView working={share.minutesWorking} />
      </Figure>
      <BoundPicture ahead={ahead} />
      <Levels ahead={ahead} />
      <OfMethod ahead={ahead} />
      <LoadPicture ahead={ahead} />
      <section>
        <h2>{words.alsoHeading}</h2>
        <ul className={styles.list}>
          {others.map((reason) => (
            <li key={reason.key}>{aheadReasonText(reason)}</li>
          ))}
          {unsaid(reasons).map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </section>
      <Figure
        label={words.charge.label}
        value={formatMinutes(ahead.charge.neededHours * 60)}
        note={words.charge.enough[ahead.charge.enough]}
      />
    </div>
  );
}

/** What holds of every sample, unless a reason says it with figures. */
const unsaid = (reasons: SampleAhead['reasons']): readonly string[] =>
  (['splittingCostsProof', 'moreSensitiveMethod'] as const)
    .filter((key) => !reasons.some((reason) => reason.key === key))
    .map((key) => words.always[key]);
