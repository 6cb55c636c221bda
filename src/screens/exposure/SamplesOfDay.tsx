/** The samples that the day stands on, each with its minutes and figure. */
import { Line, Lines } from '#parts/Lines.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import { en as words } from '#words/exposure.ts';
import { formatEstimate } from '#words/quantity.ts';
import type { DayOn } from './dayOn.ts';

const markByQuality = { good: 'good', doubtful: 'doubtful', void: 'void', open: 'waiting' } as const;

export function SamplesOfDay({ day }: { readonly day: DayOn }) {
  const { samples } = day.finding;
  if (samples.length === 0) return null;
  return (
    <Lines heading={words.samples}>
      {samples.map(({ sampleId, sampleNumber, quality, wornMin, judged }) => (
        <Line
          key={sampleId}
          to={`/sample/${sampleId}`}
          detail={<StandingMark standing={markByQuality[quality]}>{words.quality[quality]}</StandingMark>}
        >
          {words.sampleLine(
            sampleNumber,
            wornMin === null ? words.noFigure : formatEstimate(wornMin.estimate, wornMin.unit),
            judged === null ? words.noFigure : formatEstimate(judged.estimate, judged.unit),
          )}
        </Line>
      ))}
    </Lines>
  );
}
