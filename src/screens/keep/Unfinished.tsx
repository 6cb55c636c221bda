/** A file that is half taken in: how far it came, what that means, the way on, and the way to leave it. */
import { useState } from 'react';
import { ConfirmBox } from '#parts/ConfirmBox.tsx';
import { Notice } from '#parts/Notice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { TakeInMark } from '#store/handOver/handOver.ts';
import { failedSentence } from '#words/saving.ts';
import { en } from '#words/takeIn.ts';

const words = en.unfinished;

export interface UnfinishedProps {
  readonly mark: TakeInMark;
  /** On the page where it goes on, no link to it is needed. */
  readonly here?: boolean;
}

export function Unfinished({ mark, here = false }: UnfinishedProps) {
  const [asking, setAsking] = useState(false);
  const [busy, setBusy] = useState(false);
  const [why, setWhy] = useState<string | null>(null);
  const leave = async () => {
    setBusy(true);
    const { leaveTakeIn } = await import('#store/handOver/taking.ts');
    const notLeft = await leaveTakeIn();
    setBusy(false);
    setWhy(notLeft);
    if (notLeft === null) setAsking(false);
  };
  return (
    <>
      <Notice
        kind="alert"
        actions={
          <>
            {!here && <QuietAction to="/take-in">{words.goOn}</QuietAction>}
            <QuietAction onClick={() => setAsking(true)}>{words.leave}</QuietAction>
          </>
        }
      >
        {words.text(mark.fileName, mark.doneCount, mark.totalCount)} {words.means}
        {here && ` ${words.goOn}.`}
      </Notice>
      <ConfirmBox
        open={asking}
        heading={words.leaveHeading}
        confirmText={words.leaveConfirm}
        busy={busy}
        onConfirm={() => void leave()}
        onCancel={() => setAsking(false)}
      >
        <p>{words.leaveText}</p>
        {why !== null && <Notice kind="alert">{failedSentence(why)}</Notice>}
      </ConfirmBox>
    </>
  );
}
