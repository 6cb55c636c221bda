/** What was found bad of this gear: open ones told at once, with the way to decide; settled ones in a quiet list. */
import { effectOf } from '#findings/gear/doubtsOf.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { Notice } from '#parts/Notice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { GearDoubt } from '#records/book.ts';
import { en as words } from '#words/gearDoubt.ts';
import { doubtPath, type GearHere } from './gearHere.ts';

export interface DoubtsProps {
  readonly here: GearHere;
  /** The one that the page's own action leads to: not offered twice. */
  readonly atTheFoot?: GearDoubt | undefined;
}

export function Doubts({ here, atTheFoot }: DoubtsProps) {
  const doubts = here.record.doubts ?? [];
  const open = doubts.filter((doubt) => effectOf(doubt) === 'open');
  const settled = doubts.filter((doubt) => effectOf(doubt) !== 'open');
  return (
    <>
      {open.map((doubt) => (
        <Notice
          key={doubt.doubtId}
          kind="alert"
          actions={
            doubt === atTheFoot ? undefined : <QuietAction to={doubtPath(here, doubt)}>{words.toDoubt}</QuietAction>
          }
        >
          {words.open(doubt.found, doubt.foundOn)}
        </Notice>
      ))}
      {settled.length > 0 && (
        <Lines heading={words.doubtsHeading}>
          {settled.map((doubt) => (
            <Line key={doubt.doubtId} to={doubtPath(here, doubt)} detail={words.standing[effectOf(doubt)]}>
              {words.line(doubt.found, doubt.foundOn)}
            </Line>
          ))}
        </Lines>
      )}
    </>
  );
}
