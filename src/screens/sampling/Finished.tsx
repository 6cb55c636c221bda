/** What a finished sample shows: whether it is good, its minutes, its air, and its result once the laboratory has reported. */
import { findSample, type Quality } from '#findings/sample.ts';
import { Figure } from '#parts/Figure.tsx';
import { Notice } from '#parts/Notice.tsx';
import { type Standing, StandingMark } from '#parts/StandingMark.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import { formatEstimateNumber } from '#words/quantity.ts';
import { reasonSentence } from '#words/reasons.ts';
import { en as words } from '#words/sampling.ts';
import type { Sampling } from './useSampling.ts';

const markOf: Readonly<Record<Quality, Standing>> = {
  good: 'good',
  doubtful: 'doubtful',
  void: 'void',
  open: 'waiting',
};

export function Finished({ sampling }: { readonly sampling: Sampling }) {
  const finding = findSample(sampling.sample.id, sampling.book);
  const figures = [
    [words.finished.worn, finding.wornMin],
    [words.finished.volume, finding.volume],
    [words.finished.judged, finding.judged],
  ] as const;
  const sentences = [...new Set(finding.reasons.map(reasonSentence))];
  return (
    <>
      <p>
        <StandingMark standing={markOf[finding.quality]}>{words.finished.quality[finding.quality]}</StandingMark>
      </p>
      {figures.map(
        ([label, term]) =>
          term !== null && (
            <Figure key={label} label={label} value={formatEstimateNumber(term.estimate, term.unit)} unit={term.unit}>
              {term.kind === 'working' && <WorkingView working={term} />}
            </Figure>
          ),
      )}
      {sentences.length > 0 && (
        <Notice>
          {sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </Notice>
      )}
    </>
  );
}
