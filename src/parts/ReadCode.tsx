/**
 * Reads the code of a label with the camera, for one number. Nothing is shown where the device cannot; the field to type in always
 * stands beside it. What was read passes the same check as what is typed, and says in words what was wrong.
 */
import { useEffect, useRef, useState } from 'react';
import { spacedDigits } from '#words/digits.ts';
import { en as words } from '#words/readCode.ts';
import { type CameraTrouble, canReadCodes } from './codeReader.ts';
import { QuietAction } from './QuietAction.tsx';
import styles from './ReadCode.module.css';
import { useCamera } from './useCamera.ts';

export type CheckedCode =
  | { readonly kind: 'right'; readonly number: string }
  /** `why`: for whoever holds the label; a sentence without its full stop. */
  | { readonly kind: 'wrong'; readonly why: string };

export interface ReadCodeProps {
  readonly check: (text: string) => CheckedCode;
  readonly onRead: (number: string) => void;
  /** For one label after the other: the camera stays on until it is closed. */
  readonly goesOn?: boolean | undefined;
}

type State = 'closed' | 'opening' | 'looking';

export function ReadCode({ check, onRead, goesOn = false }: ReadCodeProps) {
  const [can, setCan] = useState(false);
  const [state, setState] = useState<State>('closed');
  const [said, setSaid] = useState('');
  const last = useRef<string | null>(null);
  useEffect(() => {
    let left = false;
    void canReadCodes().then((answer) => {
      if (!left) setCan(answer);
    });
    return () => {
      left = true;
    };
  }, []);
  const close = (text: string) => {
    setState('closed');
    setSaid(text);
  };
  const take = (texts: readonly string[]) => {
    const [text] = texts;
    if (text === undefined || texts.length > 1) {
      last.current = null;
      return setSaid(words.several);
    }
    // one label is seen many times a second
    if (text === last.current) return;
    last.current = text;
    const checked = check(text);
    if (checked.kind === 'wrong') return setSaid(words.wrong(checked.why));
    const took = words.took(spacedDigits(checked.number));
    if (goesOn) setSaid(took);
    else close(took);
    onRead(checked.number);
  };
  const video = useCamera({
    open: state !== 'closed',
    onStarted: () => setState('looking'),
    onCodes: take,
    onTrouble: (trouble: CameraTrouble) => close(words.trouble[trouble]),
  });
  const open = () => {
    last.current = null;
    setSaid('');
    setState('opening');
  };
  if (!can) return null;
  return (
    <div className={styles.reader}>
      {state === 'closed' ? (
        <QuietAction onClick={open}>{words.open}</QuietAction>
      ) : (
        <>
          <video ref={video} className={styles.picture} muted playsInline aria-label={words.picture} />
          <QuietAction onClick={() => close('')}>{words.close}</QuietAction>
        </>
      )}
      <p role="status">{said !== '' ? said : state === 'closed' ? '' : words[state]}</p>
    </div>
  );
}
