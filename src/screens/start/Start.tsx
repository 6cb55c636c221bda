/**
 * The first page of a device: supervisor or office, nothing in the book yet, perhaps no signal. Afterwards a book is open: a new one, the
 * one from a backup, or the practice book. When the browser has emptied the book, that is said first and the backup is the way on.
 */
import { useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { TextField } from '#parts/TextField.tsx';
import { useReceivedFile } from '#store/hooks/useReceived.ts';
import { useBookState } from '#store/hooks.ts';
import type { BookState } from '#store/session.ts';
import { en as words } from '#words/start.ts';
import { AlreadyOpen } from './AlreadyOpen.tsx';
import { type Begun, openNew, openPractice } from './begin.ts';
import { JoinFields } from './JoinFields.tsx';
import styles from './start.module.css';
import { useJoining } from './useJoining.ts';

type Way = 'new' | 'backup' | 'practice';

const actionByWay = { new: words.openNew, practice: words.openPractice };

const actionText = (way: Way, busy: boolean, isShown: boolean): string => {
  if (way === 'backup') return busy ? words.reading : isShown ? words.takeIn : words.lookInto;
  return busy ? words.busy : actionByWay[way];
};

/** An emptied device takes its backup in, and so does one that was sent a file; who came for the practice book gets it. */
function firstWay(state: BookState, receivedKey: string | null): Way {
  if (state.kind === 'evicted' || receivedKey !== null) return 'backup';
  return state.kind === 'none' && state.which === 'practice' ? 'practice' : 'new';
}

export function Start() {
  const state = useBookState();
  const evicted = state.kind === 'evicted';
  const [, go] = useLocation();
  const receivedKey = new URLSearchParams(useSearch()).get('received');
  const received = useReceivedFile(receivedKey);
  const [way, setWay] = useState<Way>(() => firstWay(state, receivedKey));
  const [firmName, setFirmName] = useState('');
  const [chosen, setChosen] = useState<File | null>(null);
  const file = chosen ?? received.file ?? null;
  const joining = useJoining();
  const { preview } = joining;
  const [busy, setBusy] = useState(false);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  if (state.kind === 'open' && !busy) return <AlreadyOpen />;

  const begin = (): Promise<Begun> => (way === 'practice' ? openPractice() : openNew(firmName));
  const join = async () => {
    const joined = await joining.goOn(file);
    setErrors(typeof joined === 'string' ? [] : joined);
    // Taken in or refused: what was sent to the app does not wait any longer. It can still be looked into again from here.
    if (joined !== 'looked' && chosen === null && file !== null) received.done();
    if (joined === 'open') go('/who');
  };
  const submit = async () => {
    setBusy(true);
    if (way === 'backup') await join();
    else {
      const begun = await begin();
      setErrors(begun.kind === 'errors' ? begun.errors : []);
      if (begun.kind === 'open') go(begun.next);
    }
    setBusy(false);
  };
  const change = (next: Way) => {
    setWay(next);
    joining.forget();
    setErrors([]);
  };

  return (
    <Page
      heading={evicted ? words.evicted.heading : words.heading}
      action={
        <MainAction type="submit" form="begin" busy={busy}>
          {actionText(way, busy, preview !== null)}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      {!evicted && (
        <Lines>
          <Line to="/wear" detail={words.wear.detail}>
            {words.wear.link}
          </Line>
        </Lines>
      )}
      {evicted && <Notice kind="alert">{words.evicted.text}</Notice>}
      <form
        id="begin"
        noValidate
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          void submit();
        }}
      >
        <Choice
          name="way"
          label={words.choose}
          options={(evicted ? (['backup', 'new', 'practice'] as const) : (['new', 'backup', 'practice'] as const)).map(
            (value) => ({ value, ...words.choices[value] }),
          )}
          value={way}
          onChange={change}
        />
        {way === 'new' && (
          <TextField
            name="firmName"
            label={words.firmName}
            hint={words.firmNameHint}
            value={firmName}
            onChange={setFirmName}
            error={errorOf(errors, 'firmName')}
            autoComplete="organization"
          />
        )}
        {way === 'backup' && (
          <JoinFields
            joining={joining}
            receivedName={chosen === null ? (received.file?.name ?? null) : null}
            errors={errors}
            onFile={(picked) => {
              setChosen(picked);
              joining.forget();
              setErrors([]);
            }}
          />
        )}
      </form>
      <p className={styles.quiet}>{words.intro}</p>
    </Page>
  );
}
