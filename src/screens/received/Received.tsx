/**
 * Supervisor or office, right after sharing a file with the app or opening one with it. They see that it came, and go on to look into
 * it as if they had chosen it; or put it aside. Nothing is taken in from here.
 */
import { useMemo } from 'react';
import { useSearch } from 'wouter';
import { wallTimeOf } from '#core/calendar.ts';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { deviceZone } from '#store/device.ts';
import { useReceived } from '#store/hooks/useReceived.ts';
import { useBookState } from '#store/hooks.ts';
import { forgetReceived, type NotReceived, notReceivedReasons, type Received as Waiting } from '#store/received.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/received.ts';
import styles from './received.module.css';

const isTable = ({ name }: Waiting): boolean => /\.csv$/i.test(name);
const nameOf = ({ name }: Waiting): string => (name === '' ? words.noName : name);

function whenOf(at: string): string {
  const { day, time } = wallTimeOf(at, deviceZone());
  return `${formatDay(day)}, ${time}`;
}

function reasonIn(search: string): NotReceived | null {
  const not = new URLSearchParams(search).get('not');
  return notReceivedReasons.find((reason) => reason === not) ?? null;
}

export function Received() {
  const waiting = useReceived();
  const reason = reasonIn(useSearch());
  const errors = useMemo(
    (): readonly FieldError[] => (reason === null ? [] : [{ field: null, text: words.not[reason] }]),
    [reason],
  );
  const isOpen = useBookState().kind === 'open';
  if (waiting === null) return <Page heading={words.heading} />;
  const taking = isOpen ? '/take-in' : '/start';
  const newest = waiting.at(-1);
  const wayOf = ({ key }: Waiting) => `${taking}?received=${key}`;
  const action =
    newest === undefined ? (
      <MainAction to={taking}>{words.choose}</MainAction>
    ) : isTable(newest) && isOpen ? (
      <MainAction to="/results">{words.toResults}</MainAction>
    ) : (
      <MainAction to={wayOf(newest)}>{words.look}</MainAction>
    );
  return (
    <Page heading={words.heading} back={isOpen ? '/' : '/start'} action={action}>
      <ErrorSummary errors={errors} />
      <p>{newest === undefined ? words.nothing : words.waits}</p>
      {newest !== undefined && (
        <ul className={styles.files}>
          {waiting.toReversed().map((each) => (
            <li key={each.key} className={styles.file}>
              <p className={styles.name}>
                <bdi>{nameOf(each)}</bdi>
              </p>
              <p className={styles.quiet}>{words.about(each.bytesCount, whenOf(each.receivedAt))}</p>
              {isTable(each) && <p>{words.table}</p>}
              <div className={styles.choices}>
                {each !== newest && !isTable(each) && (
                  <QuietAction to={wayOf(each)}>{words.lookAt(nameOf(each))}</QuietAction>
                )}
                <QuietAction onClick={() => void forgetReceived(each.key)}>
                  {waiting.length === 1 ? words.putAside : words.putAsideOf(nameOf(each))}
                </QuietAction>
              </div>
            </li>
          ))}
        </ul>
      )}
    </Page>
  );
}
