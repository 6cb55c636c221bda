/**
 * Whoever gives a device away, or wants to know that a backup is good. A file is read through and held against everything that is here;
 * only then the device may be wiped, and only by typing the name of the firm. Afterwards nothing of the book is on it.
 */
import { useEffect, useState } from 'react';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { FileField } from '#parts/FileField.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { PassphraseField } from '#parts/PassphraseField.tsx';
import { ProgressLine } from '#parts/ProgressLine.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { booksHere } from '#store/beforeWiping.ts';
import { useBookMeta, useBookState } from '#store/hooks.ts';
import { en } from '#words/storage.ts';
import { en as takeInWords } from '#words/takeIn.ts';
import { NoBook } from './NoBook.tsx';
import { useChecking } from './useChecking.ts';
import { WipeNow } from './WipeNow.tsx';

const words = en.wipe;

export function Wipe() {
  const state = useBookState();
  const meta = useBookMeta();
  const [file, setFile] = useState<File | null>(null);
  const [passphrase, setPassphrase] = useState('');
  const [missing, setMissing] = useState(false);
  const [gone, setGone] = useState<'whole' | 'partly' | null>(null);
  const here = useChecking();
  const [both, setBoth] = useState(false);
  useEffect(() => {
    booksHere().then(
      (books) => setBoth(books.both),
      () => setBoth(false),
    );
  }, []);
  if (gone !== null)
    return (
      <Page
        heading={gone === 'whole' ? words.goneHeading : words.headingWipe}
        action={<MainAction to="/start">{words.toStart}</MainAction>}
      >
        <p role="status">{gone === 'whole' ? words.gone : words.failed}</p>
      </Page>
    );
  if (state.kind !== 'open') return <NoBook heading={words.heading} />;
  if (here.backup !== null) return <WipeNow backup={here.backup} onGone={setGone} onChanged={here.forget} />;
  const errors: readonly FieldError[] = missing ? [{ field: 'backupFile', text: words.fileMissing }] : here.errors;
  const check = async () => {
    setMissing(file === null);
    if (file !== null) await here.check(file, passphrase);
  };
  return (
    <Page
      heading={words.heading}
      back="/storage"
      backText={en.heading}
      action={
        here.busy ? (
          <QuietAction onClick={here.stop}>{takeInWords.stop}</QuietAction>
        ) : (
          <MainAction onClick={() => void check()}>{words.check}</MainAction>
        )
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      {meta?.practice && both && <p>{words.realNotOpen}</p>}
      <FileField
        name="backupFile"
        label={words.file}
        hint={words.fileHint}
        onChange={(picked) => {
          setFile(picked);
          setMissing(false);
          setPassphrase('');
          here.forget();
        }}
        error={errorOf(errors, 'backupFile')}
      />
      {here.sealed && (
        <PassphraseField
          name="backupPassphrase"
          label={takeInWords.passphrase}
          use="current"
          value={passphrase}
          onChange={setPassphrase}
          error={errorOf(errors, 'backupPassphrase')}
        />
      )}
      {here.busy && <ProgressLine text={words.reading} done={here.done} total={here.total} />}
      {here.lacks !== null && (
        <Notice kind="alert" actions={<QuietAction to="/send">{words.sendNew}</QuietAction>}>
          {words.lacks(here.lacks.entriesCount, here.lacks.filesCount)}
        </Notice>
      )}
    </Page>
  );
}
