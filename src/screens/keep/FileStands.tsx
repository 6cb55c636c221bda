/** How the file stands: being made, ready, handed out or not, and why not. */
import { Notice } from '#parts/Notice.tsx';
import { ProgressLine } from '#parts/ProgressLine.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Delivery, WayOut } from '#store/handOver/delivery.ts';
import type { HandOver } from '#store/handOver/handOver.ts';
import { type HandOverHere, hasLeft } from '#store/hooks/useHandOver.ts';
import { en as words } from '#words/handOver.ts';
import { en as takeInWords } from '#words/takeIn.ts';
import styles from './keep.module.css';

const outcomeText = (outcome: Delivery): string =>
  outcome.kind === 'failed' ? words.outcome[outcome.why] : words.outcome[outcome.kind];

export interface FileStandsProps {
  readonly here: HandOverHere;
  /** Nothing is made before there is a passphrase. */
  readonly waits: boolean;
  readonly best: WayOut | undefined;
  /** Goes on with what had no room in this file. */
  readonly onNextFile: (from: string) => void;
}

export function FileStands({ here, waits, best, onNextFile }: FileStandsProps) {
  const { making, outcome } = here;
  return (
    <div className={styles.section}>
      {waits && <p role="status">{words.waitsForPassphrase}</p>}
      {making.kind === 'making' && (
        <ProgressLine
          text={making.progress === null ? words.making : takeInWords.making[making.progress.step]}
          done={making.progress?.done ?? 0}
          total={making.progress?.total ?? 0}
        />
      )}
      {making.kind === 'made' && (
        <p role="status">
          {words.ready(making.file.factsCount, making.file.filesCount, making.file.blob.size, making.file.sealed)}
        </p>
      )}
      {making.kind === 'made' && making.file.factsCount === 0 && <p>{words.nothingLacking}</p>}
      {best === 'shareAsText' && <p className={styles.quiet}>{words.shareAsTextHint}</p>}
      {making.kind === 'made' && best === undefined && <Notice kind="alert">{words.ways.none}</Notice>}
      {making.kind === 'made' && <LeftOut file={making.file} onNextFile={onNextFile} />}
      {making.kind === 'failed' && <Notice kind="alert">{words.failed}</Notice>}
      {(making.kind === 'stopped' || making.kind === 'failed') && (
        <div className={styles.actions}>
          {making.kind === 'stopped' && <p role="status">{words.stopped}</p>}
          <QuietAction onClick={here.again}>{words.makeAgain}</QuietAction>
        </div>
      )}
      {outcome && <Outcome outcome={outcome} />}
    </div>
  );
}

function Outcome({ outcome }: { readonly outcome: Delivery }) {
  return (
    <>
      <Notice kind={outcome.kind === 'failed' ? 'alert' : 'quiet'}>{outcomeText(outcome)}</Notice>
      {hasLeft(outcome) && <p className={styles.quiet}>{words.assumesNothing}</p>}
    </>
  );
}

interface LeftOutProps {
  readonly file: HandOver;
  readonly onNextFile: (from: string) => void;
}

/** More pictures than one file may hold: the rest go into another one, and both are needed. */
function LeftOut({ file: { filesLeftOut }, onNextFile }: LeftOutProps) {
  if (filesLeftOut === undefined) return null;
  const { count, from } = filesLeftOut;
  return (
    <Notice kind="alert" actions={<QuietAction onClick={() => onNextFile(from)}>{words.leftOut.next}</QuietAction>}>
      {words.leftOut.text(count)}
    </Notice>
  );
}
