/** The flow, large, as soon as one reading can be read; and what is wrong with it, at once, before anything is saved. */
import type { FlowCheckFinding } from '#findings/flow.ts';
import { Figure } from '#parts/Figure.tsx';
import { Notice } from '#parts/Notice.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import { en as words } from '#words/flow.ts';
import { formatEstimate, formatEstimateNumber } from '#words/quantity.ts';
import { reasonSentence } from '#words/reasons.ts';
import type { Purpose } from './flowDraft.ts';

/** Told when convenient: a third reading is good practice, not a fault. */
const quiet: readonly string[] = ['fewReadings'];

export function LiveFlow({
  finding,
  purpose,
}: {
  readonly finding: FlowCheckFinding | null;
  readonly purpose: Purpose;
}) {
  if (finding === null) return <p>{words.noFigure}</p>;
  const { flow, lowFlow } = finding;
  const loud = finding.reasons.filter(({ key }) => !quiet.includes(key));
  const soft = finding.reasons.filter(({ key }) => quiet.includes(key));
  return (
    <>
      {flow !== null && (
        <Figure
          label={words.figure[purpose]}
          value={formatEstimateNumber(flow.estimate, flow.unit)}
          unit={flow.unit}
          note={lowFlow === null ? undefined : words.protective(formatEstimate(lowFlow.estimate, lowFlow.unit))}
        >
          <WorkingView working={flow} />
        </Figure>
      )}
      {loud.length > 0 && (
        <Notice kind="alert">
          {loud.map((reason) => (
            <p key={reason.key}>{reasonSentence(reason)}</p>
          ))}
          <p>{words.outsideSave}</p>
        </Notice>
      )}
      {soft.map((reason) => (
        <p key={reason.key}>{reasonSentence(reason)}</p>
      ))}
    </>
  );
}
