/**
 * The office at its desk, or the supervisor: a file of another device. It is looked into first and nothing is changed by that; then it is
 * taken in, with a way to stop. Afterwards what is new is here, and what both sides changed waits to be settled.
 */
import { useState } from 'react';
import { useSearch } from 'wouter';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { ProgressLine } from '#parts/ProgressLine.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Preview } from '#store/handOver/handOver.ts';
import { useFolder, useFolderFile } from '#store/hooks/useFolder.ts';
import { useKeeping } from '#store/hooks/useKeeping.ts';
import { type Looking, useLooking } from '#store/hooks/useLooking.ts';
import { useReceivedFile } from '#store/hooks/useReceived.ts';
import { useBookState } from '#store/hooks.ts';
import { en as words } from '#words/takeIn.ts';
import { ChooseFile } from './ChooseFile.tsx';
import { errorsOf } from './lookErrors.ts';
import { NoBook } from './NoBook.tsx';
import { PreviewOf } from './PreviewOf.tsx';
import { TakenIn } from './TakenIn.tsx';
import { Unfinished } from './Unfinished.tsx';

export function TakeIn() {
  const state = useBookState();
  if (state.kind !== 'open') return <NoBook heading={words.heading} />;
  return <TakeInFile key={state.bookId} />;
}

/** The file in hand: chosen here, sent to the app, or lying in the folder; and what is done with it once it was dealt with. */
function useFileInHand() {
  const asked = new URLSearchParams(useSearch());
  const received = useReceivedFile(asked.get('received'));
  const inFolder = useFolderFile(asked.get('folder'));
  const folder = useFolder();
  const [chosen, setChosen] = useState<File | null>(null);
  const file = chosen ?? received.file ?? inFolder?.file ?? null;
  const from = chosen !== null ? null : received.file ? 'received' : inFolder ? 'folder' : null;
  const done = () => {
    if (from === 'received') received.done();
    if (from === 'folder' && inFolder) void folder.aside(inFolder);
  };
  return { file, from, done, setChosen } as const;
}

function TakeInFile() {
  const { file, from, done, setChosen } = useFileInHand();
  const keeping = useKeeping();
  const here = useLooking();
  const [passphrase, setPassphrase] = useState('');
  const [missing, setMissing] = useState<'file' | 'passphrase' | null>(null);
  const [sealed, setSealed] = useState(false);
  const preview = here.looked?.kind === 'preview' ? here.looked : null;
  const look = async (salvage = false) => {
    const lacking = file === null ? 'file' : sealed && passphrase === '' ? 'passphrase' : null;
    setMissing(lacking);
    if (file === null || lacking !== null) return;
    const found = await here.look(file, { ...(passphrase === '' ? {} : { passphrase }), salvage });
    setSealed(found?.kind === 'sealed' || passphrase !== '');
    // Nothing in it is new: it need not wait any longer.
    if (found?.kind === 'preview' && found.forks.length === 0 && !mayTake(found)) done();
  };
  const take = async () => {
    if (preview === null) return;
    const taken = await here.take(preview);
    if (taken?.kind === 'takenIn') done();
  };
  if (here.taken?.kind === 'takenIn')
    return (
      <TakenIn
        taken={here.taken}
        onAnother={() => {
          here.forget();
          setChosen(null);
          setPassphrase('');
          setSealed(false);
        }}
      />
    );
  return (
    <Page
      heading={preview === null ? words.heading : words.preview.heading}
      back="/keep"
      backText={words.backKeep}
      action={<Actions here={here} preview={preview} onLook={() => void look()} onTake={() => void take()} />}
    >
      {keeping?.takeIn && !here.busy && <Unfinished mark={keeping.takeIn} here />}
      <ChooseFile
        name={file?.name ?? null}
        from={from}
        errors={errorsOf(here, missing)}
        sealed={sealed}
        passphrase={passphrase}
        onPassphrase={setPassphrase}
        onFile={(picked) => {
          setChosen(picked);
          setMissing(null);
          setPassphrase('');
          setSealed(false);
          here.forget();
        }}
        shown={preview === null}
      />
      <WhatCame here={here} preview={preview} onSalvage={() => void look(true)} />
    </Page>
  );
}

const mayTake = (preview: Preview | null): boolean =>
  preview !== null && preview.forks.length === 0 && preview.newCount + preview.newFilesCount > 0;

interface ActionsProps {
  readonly here: Looking;
  readonly preview: Preview | null;
  readonly onLook: () => void;
  readonly onTake: () => void;
}

function Actions({ here, preview, onLook, onTake }: ActionsProps) {
  if (here.busy) return <QuietAction onClick={here.stop}>{words.stop}</QuietAction>;
  if (preview === null) return <MainAction onClick={onLook}>{words.look}</MainAction>;
  if (!mayTake(preview)) return <MainAction onClick={here.forget}>{words.otherFile}</MainAction>;
  return (
    <>
      <MainAction onClick={onTake}>{words.preview.action(preview.newCount, preview.newFilesCount)}</MainAction>
      <QuietAction onClick={here.forget}>{words.otherFile}</QuietAction>
    </>
  );
}

interface WhatCameProps {
  readonly here: Looking;
  readonly preview: Preview | null;
  readonly onSalvage: () => void;
}

/** How far it is, what came of it, and what is in the file. */
function WhatCame({ here, preview, onSalvage }: WhatCameProps) {
  const { busy, progress, looked, taken } = here;
  const salvageable = looked?.kind === 'refused' && looked.why === 'damaged' ? looked.intactCount : 0;
  return (
    <>
      {salvageable > 0 && !busy && (
        <Notice actions={<QuietAction onClick={onSalvage}>{words.lookPart}</QuietAction>}>
          {words.salvageable(salvageable)}
        </Notice>
      )}
      {busy && (
        <ProgressLine
          text={words.steps[progress?.step ?? 'reading']}
          done={progress?.done ?? 0}
          total={progress?.total ?? 0}
        />
      )}
      {taken?.kind === 'cancelled' && <Notice>{words.cancelled(taken.doneCount, taken.totalCount)}</Notice>}
      {preview !== null && <PreviewOf preview={preview} />}
    </>
  );
}
