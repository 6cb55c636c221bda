/** The fitting is written down already: what the worker was told, and the way back to the pump. */

import { pointsFor } from '#findings/fittingPoints.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import type { FittingProps } from './FittingForm.tsx';

export function FittingKept({ sample, words, language, workerName, languages }: FittingProps) {
  return (
    <Page
      heading={words.heading(workerName)}
      lang={language}
      action={<MainAction to={`/sample/${sample.id}`}>{words.toSample}</MainAction>}
    >
      {languages}
      <p>{words.whatText}</p>
      <p>{words.watchText}</p>
      <p>{words.already}</p>
      <Lines>
        {pointsFor(sample.taskIds).map((key) => (
          <Line
            key={key}
            end={
              sample.fitting?.points[key] === true ? (
                <StandingMark standing="done" />
              ) : (
                <StandingMark standing="doubtful">{words.notSo}</StandingMark>
              )
            }
          >
            {words.points[key]}
          </Line>
        ))}
      </Lines>
    </Page>
  );
}
