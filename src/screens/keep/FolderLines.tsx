/** The folder that the firm shares, where the browser can open one: chosen, opened again, and the new files in it. */
import { Line, Lines } from '#parts/Lines.tsx';
import { Notice } from '#parts/Notice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { canChooseFolder } from '#store/handOver/folder.ts';
import { type FolderHere, useFolder } from '#store/hooks/useFolder.ts';
import { folderFault, en as words } from '#words/folder.ts';
import styles from './keep.module.css';

export function FolderLines() {
  const folder = useFolder();
  if (!canChooseFolder() || folder.state === null) return null;
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      {folder.fault && <Notice kind="alert">{folderFault[folder.fault]}</Notice>}
      <FolderStands folder={folder} />
    </section>
  );
}

function FolderStands({ folder }: { readonly folder: FolderHere }) {
  const { state, files, waitingCount } = folder;
  if (state === null || state.kind === 'none')
    return (
      <>
        <p>{words.intro}</p>
        <div>
          <QuietAction onClick={() => void folder.choose()}>{words.choose}</QuietAction>
        </div>
      </>
    );
  const leave = <QuietAction onClick={() => void folder.forget()}>{words.forget}</QuietAction>;
  if (state.kind !== 'ready')
    return (
      <>
        <p>{state.kind === 'askAgain' ? words.asks(state.name) : words.gone(state.name)}</p>
        <div className={styles.actions}>
          {state.kind === 'askAgain' ? (
            <QuietAction onClick={() => void folder.openAgain()}>{words.askAgain(state.name)}</QuietAction>
          ) : (
            <QuietAction onClick={() => void folder.choose()}>{words.chooseAnother}</QuietAction>
          )}
          {leave}
        </div>
      </>
    );
  return (
    <>
      <p role="status">{files.length === 0 ? words.nothingNew : words.newFiles(files.length)}</p>
      {files.length > 0 && (
        <Lines>
          {files.map((file) => (
            <Line key={file.name} to={`/take-in?folder=${encodeURIComponent(file.name)}`}>
              {words.lookInto(file.name)}
            </Line>
          ))}
        </Lines>
      )}
      {waitingCount > 0 && <p className={styles.quiet}>{words.waiting(waitingCount)}</p>}
      <p className={styles.quiet}>{words.watched(state.name)}</p>
      <div className={styles.actions}>
        {files.map((file) => (
          <QuietAction key={file.name} onClick={() => void folder.aside(file)}>
            {words.asideOf(file.name)}
          </QuietAction>
        ))}
        {leave}
      </div>
    </>
  );
}
