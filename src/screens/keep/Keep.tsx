/**
 * Kept records, for supervisor and office: how the book stands towards being lost, and what can be done about it. A short page of
 * sentences; each leads to the page where it is done.
 */
import { backupIsDue } from '#findings/backupDue.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { now } from '#store/device.ts';
import { useKeeping } from '#store/hooks/useKeeping.ts';
import { useOpenMatterCount } from '#store/hooks/useOpenMatters.ts';
import { useBookCounts, useBookMeta, useBookState } from '#store/hooks.ts';
import { en as words } from '#words/keep.ts';
import { Books } from './Books.tsx';
import { FolderLines } from './FolderLines.tsx';
import { LastFile } from './LastFile.tsx';
import { NoBook } from './NoBook.tsx';
import { Unfinished } from './Unfinished.tsx';

export function Keep() {
  const state = useBookState();
  if (state.kind !== 'open') return <NoBook heading={words.heading} />;
  return <KeepOpen key={state.bookId} />;
}

function KeepOpen() {
  const meta = useBookMeta();
  const keeping = useKeeping();
  const counts = useBookCounts();
  const openCount = useOpenMatterCount() ?? 0;
  const due =
    meta !== undefined &&
    keeping !== undefined &&
    counts !== undefined &&
    backupIsDue({
      now: now(),
      lastBackupAt: keeping.lastBackupAt,
      persisted: meta.persisted,
      samplesCount: counts.sampleCount,
      runningCount: meta.runningCount,
      newCount: counts.factsSinceBackup,
    });
  return (
    <Page
      heading={words.heading}
      over={meta?.book?.firmName}
      action={
        keeping?.takeIn ? (
          <MainAction to="/take-in">{words.takeIn.line}</MainAction>
        ) : (
          <MainAction to="/send">{words.send.action}</MainAction>
        )
      }
      aside={
        <>
          <FolderLines />
          <Books practice={meta?.practice ?? false} />
        </>
      }
    >
      {keeping?.takeIn && <Unfinished mark={keeping.takeIn} />}
      {due && <Notice>{words.due}</Notice>}
      <LastFile keeping={keeping} counts={counts} />
      <Lines>
        <Line to="/send" detail={words.send.detail}>
          {words.send.line}
        </Line>
        <Line to="/take-in" detail={words.takeIn.detail}>
          {words.takeIn.line}
        </Line>
        <Line to="/settle" detail={openCount > 0 ? words.settle.detail : words.settle.noneDetail}>
          {openCount > 0 ? words.settle.line : words.settle.none}
        </Line>
        <Line to="/storage" detail={words.storage.detail}>
          {words.storage.line}
        </Line>
      </Lines>
      <p>{words.intro}</p>
    </Page>
  );
}
