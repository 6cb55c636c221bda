/** Flow before and after, their change, and what follows from it: each figure opens into its working. */

import type { Term } from '#core/formula.ts';
import { findSample } from '#findings/sample.ts';
import { Figure } from '#parts/Figure.tsx';
import { Particulars } from '#parts/Lines.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Outgoing } from '#parts/Pictures.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import { usePictures } from '#store/hooks/usePhotos.ts';
import { en as words } from '#words/after.ts';
import { formatEstimate, formatEstimateNumber } from '#words/quantity.ts';
import { reasonSentence } from '#words/reasons.ts';
import { en as sampleWords } from '#words/sampling.ts';
import styles from './sampling.module.css';
import type { Sampling } from './useSampling.ts';

/** Reasons that this page answers in its own parts, or that belong to the result. */
const saidElsewhere: readonly string[] = [
  'noFlowAfter',
  'notSealed',
  'pumpMinutesBlank',
  'blanksMissing',
  'regularNotSaid',
  'resultAwaited',
];

export function AfterFlow({ sampling }: { readonly sampling: Sampling }) {
  const { sample, book, pump } = sampling;
  const finding = findSample(sample.id, book);
  const hasAfter = finding.flowAfter !== null;
  const reasons = finding.reasons.filter(({ key }) => !saidElsewhere.includes(key));
  const sentences = [...new Set(reasons.map(reasonSentence))];
  const canDecide =
    (finding.flowRule === 'atLeastOnly' && (finding.flowBefore !== null || hasAfter)) ||
    reasons.some(({ key }) => key === 'flowChecksDiffer');
  const pictures = usePictures([]);
  return (
    <section className={styles.section}>
      <h2>{words.flow.heading}</h2>
      <Outgoing held={pictures} />
      {!hasAfter && (
        <>
          <p>{words.flow.not(pump)}</p>
          <p>{words.flow.nothing}</p>
        </>
      )}
      <Particulars
        items={[
          [words.flow.before, flowText(finding.flowBefore)],
          [words.flow.after, flowText(finding.flowAfter)],
        ]}
      />
      <Terms
        items={[
          [words.flow.change, finding.flowChange],
          [words.flow.average, finding.averageFlow],
          [words.flow.lower, finding.flowRule === 'average' ? null : finding.lowerFlow],
          [words.flow.volume, finding.volume],
        ]}
      />
      {hasAfter && finding.volume === null && <p>{words.flow.volumeNone}</p>}
      {sentences.length > 0 && (
        <Notice>
          {sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </Notice>
      )}
      {canDecide && (
        <div>
          <QuietAction to={`/sample/${sample.id}?do=decide`}>{sampleWords.lines.decide}</QuietAction>
        </div>
      )}
    </section>
  );
}

const flowText = (term: Term | null): string =>
  term === null ? words.flow.notRead : formatEstimate(term.estimate, term.unit);

function Terms({ items }: { readonly items: readonly (readonly [string, Term | null])[] }) {
  return items.map(
    ([label, term]) =>
      term !== null && (
        <Figure key={label} label={label} value={formatEstimateNumber(term.estimate, term.unit)} unit={term.unit}>
          {term.kind === 'working' && <WorkingView working={term} />}
        </Figure>
      ),
  );
}
