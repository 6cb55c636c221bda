/** Level by level: could it be shown as planned, and with which minutes; and what would do it over the whole shift. */
import type { SampleAhead, ToComeBelow } from '#findings/season/sampleAhead.ts';
import { Figure } from '#parts/Figure.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import { en } from '#words/proveScreen.ts';
import { formatQuantity } from '#words/quantity.ts';
import styles from './prove.module.css';

const words = en.levels;
const needs = en.needs;

export function Levels({ ahead }: { readonly ahead: SampleAhead }) {
  const { share, actionLevel, pel, california, input } = ahead;
  const part = formatQuantity(input.shareOfActionLevel * 100, '%', { digits: 'working' });
  const { flowNeededAllowed } = share;
  const flowNote =
    flowNeededAllowed === null ? needs.flowNotStated : flowNeededAllowed ? needs.flowAllowed : needs.flowNotAllowed;
  return (
    <>
      <Lines heading={words.heading}>
        <Level text={words.share(part, share.levelUgPerM3)} level={share} />
        <Level text={words.actionLevel(actionLevel.levelUgPerM3)} level={actionLevel} />
        <Level text={words.pel(pel.levelUgPerM3)} level={pel} />
        <Level text={words.california(part, california.levelUgPerM3)} level={california} />
      </Lines>
      <section className={styles.answer}>
        <h2>{needs.heading}</h2>
        <Figure label={needs.limit} value={needs.less(share.reportingLimitNeeded)} unit="µg">
          <WorkingView working={share.reportingLimitNeeded} />
        </Figure>
        <Figure label={needs.flow} value={needs.more(share.flowNeeded)} unit="L/min" note={flowNote}>
          <WorkingView working={share.flowNeeded} />
        </Figure>
      </section>
    </>
  );
}

const Level = ({ text, level }: { readonly text: string; readonly level: ToComeBelow }) => (
  <Line
    end={words.stands[level.couldShow]}
    detail={level.minutesNeededMin === null ? undefined : words.minutes(level.minutesNeededMin)}
  >
    {text}
  </Line>
);
