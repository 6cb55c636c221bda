/** What came from other devices and waits: a file half taken in, new files in the folder. Fetched once the page stands. */
import { Notice } from '#parts/Notice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { TakeInMark } from '#store/handOver/handOver.ts';
import { useFolder } from '#store/hooks/useFolder.ts';
import { en as folderWords } from '#words/folder.ts';
import { en } from '#words/takeIn.ts';

const words = en.unfinished;

export function Beside({ mark }: { readonly mark: TakeInMark | null }) {
  const { files, state } = useFolder();
  return (
    <>
      {mark && (
        <Notice kind="alert" actions={<QuietAction to="/take-in">{words.goOn}</QuietAction>}>
          {words.text(mark.fileName, mark.doneCount, mark.totalCount)} {words.means}
        </Notice>
      )}
      {state?.kind === 'ready' && files.length > 0 && (
        <Notice actions={<QuietAction to="/keep">{folderWords.look}</QuietAction>}>
          {folderWords.newFiles(files.length)}
        </Notice>
      )}
    </>
  );
}
