/** What should be done before the pump goes on: the flow before, and the fitting with the worker. Neither stops it. */
import { checksOfSample } from '#findings/checks.ts';
import { wantsFlowBetween } from '#findings/flowBetween.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import { en as fitting } from '#words/fitting.ts';
import { en as words } from '#words/sampling.ts';
import type { Sampling } from './useSampling.ts';

export function Before({ sampling }: { readonly sampling: Sampling }) {
  const { sample, book, pump, worker } = sampling;
  const hasFlow = checksOfSample(sample, book).before !== null;
  const due = <StandingMark standing="due" />;
  const wantsBetween = hasFlow && wantsFlowBetween(sample, book);
  if (hasFlow && !wantsBetween && sample.fitting !== null) return null;
  return (
    <Lines heading={words.before}>
      {!hasFlow && (
        <Line
          to={`/shift/${sample.shiftId}/flow?pump=${sample.pumpId ?? ''}&purpose=before&sample=${sample.id}`}
          detail={words.flowMissing(pump)}
          end={due}
        >
          {words.toFlow}
        </Line>
      )}
      {wantsBetween && (
        <Line
          to={`/shift/${sample.shiftId}/flow?pump=${sample.pumpId ?? ''}&purpose=between&sample=${sample.id}`}
          detail={words.flowBetweenMissing}
          end={due}
        >
          {fitting.flowBetween}
        </Line>
      )}
      {sample.fitting === null && (
        <Line to={`/worker/${sample.id}`} detail={words.fittingMissing} end={due}>
          {words.toFitting(worker)}
        </Line>
      )}
    </Lines>
  );
}
