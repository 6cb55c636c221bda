/** After the backup was found whole: what still stands in the way, and the name of the firm to be typed before anything is deleted. */
import { useCallback, useEffect, useState } from 'react';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import { type BooksHere, booksHere, isClear } from '#store/beforeWiping.ts';
import { bookState } from '#store/session.ts';
import { type VerifiedBackup, wipe } from '#store/wiping.ts';
import { en } from '#words/storage.ts';
import { InTheWay } from './InTheWay.tsx';
import styles from './keep.module.css';

const words = en.wipe;

export interface WipeNowProps {
  readonly backup: VerifiedBackup;
  /** Deleted; or emptied, and the browser kept something of it back. */
  readonly onGone: (how: 'whole' | 'partly') => void;
  /** Something was written since: the backup has to be read through again. */
  readonly onChanged: () => void;
}

export function WipeNow({ backup, onGone, onChanged }: WipeNowProps) {
  const [books, setBooks] = useState<BooksHere | null>(null);
  const [typed, setTyped] = useState('');
  const [busy, setBusy] = useState(false);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const look = useCallback(async () => {
    try {
      setBooks(await booksHere());
    } catch {
      // Closed meanwhile: the page of a book that is not open takes over.
      setBooks(null);
    }
  }, []);
  useEffect(() => {
    void look();
  }, [look]);
  const firm = books?.firmName ?? '';
  const submit = async () => {
    if (typed.trim() !== firm) return setErrors([{ field: 'firmName', text: words.nameWrong }]);
    setBusy(true);
    setErrors([]);
    const wiped = await wipe(backup).finally(() => setBusy(false));
    if (wiped.kind === 'wiped') return onGone('whole');
    if (wiped.kind === 'failed' && bookState().kind !== 'open') return onGone('partly');
    if (wiped.kind === 'inTheWay') return look();
    setErrors([{ field: null, text: wiped.kind === 'changed' ? words.changed : words.failed }]);
  };
  const clear = books !== null && isClear(books.inTheWay);
  return (
    <Page
      heading={words.headingWipe}
      back="/storage"
      backText={en.heading}
      action={
        clear ? (
          <MainAction type="submit" form="wipe" busy={busy}>
            {words.action}
          </MainAction>
        ) : (
          <QuietAction onClick={() => void look()}>{words.lookAgain}</QuietAction>
        )
      }
    >
      <ErrorSummary errors={errors} />
      <Notice>{words.holdsAll(backup.factsCount, backup.filesCount)}</Notice>
      {errors.some(({ text }) => text === words.changed) && (
        <div>
          <QuietAction onClick={onChanged}>{words.checkAgain}</QuietAction>
        </div>
      )}
      {books !== null && !clear && <InTheWay books={books} onChange={() => void look()} />}
      {clear && (
        <form
          id="wipe"
          noValidate
          className={styles.section}
          onSubmit={(event) => {
            event.preventDefault();
            void submit();
          }}
        >
          <p className={styles.warning}>{words.warning}</p>
          {books.both && <p>{words.both}</p>}
          <TextField
            name="firmName"
            label={words.typeName(firm)}
            hint={words.typeHint}
            value={typed}
            onChange={setTyped}
            error={errorOf(errors, 'firmName')}
          />
        </form>
      )}
    </Page>
  );
}
