/** The cassette is prepared: its number, large, to be written on it; then the phone goes to the worker. */
import { checksOfSample } from '#findings/checks.ts';
import { wantsFlowBetween } from '#findings/flowBetween.ts';
import { BigNumber } from '#parts/BigNumber.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Book, SampleRecord } from '#records/book.ts';
import { en as words } from '#words/fitting.ts';

export function Prepared({ book, sample }: { readonly book: Book; readonly sample: SampleRecord }) {
  const worker = book.people.get(sample.workerId ?? '')?.name ?? '';
  const pump = book.pumps.get(sample.pumpId ?? '')?.serial ?? '';
  const hasFlow = checksOfSample(sample, book).before !== null;
  const shift = `/shift/${sample.shiftId}`;
  return (
    <Page
      heading={words.prepared(worker)}
      back={shift}
      action={
        <>
          <MainAction to={`/worker/${sample.id}`}>{words.toWorker(worker)}</MainAction>
          <QuietAction to={`${shift}/fit`}>{words.another}</QuietAction>
        </>
      }
    >
      <BigNumber label={words.number} digits={sample.sampleNumber} note={words.numberHint} />
      {hasFlow && wantsFlowBetween(sample, book) && (
        <Lines>
          <Line
            to={`${shift}/flow?pump=${sample.pumpId ?? ''}&purpose=between&sample=${sample.id}`}
            detail={words.flowBetweenDetail}
          >
            {words.flowBetween}
          </Line>
        </Lines>
      )}
      {!hasFlow && (
        <Lines>
          <Line
            to={`${shift}/flow?pump=${sample.pumpId ?? ''}&purpose=before&sample=${sample.id}`}
            detail={words.noFlowYet(pump)}
          >
            {words.toFlow}
          </Line>
        </Lines>
      )}
    </Page>
  );
}
