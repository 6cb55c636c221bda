/** What this device is called on the other side: asked once, changed when wanted. Kept beside the book, not in it. */
import { useState } from 'react';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { Notice } from '#parts/Notice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import { setDeviceName } from '#store/handOver/partners.ts';
import { en } from '#words/handOver.ts';
import { failedSentence } from '#words/saving.ts';
import styles from './keep.module.css';

const words = en.deviceName;
const mostLetters = 40;

export function DeviceName({ name }: { readonly name: string | null }) {
  const [typed, setTyped] = useState(name ?? '');
  const [saved, setSaved] = useState(false);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const save = async () => {
    const wanted = typed.trim();
    const why = wanted === '' ? words.missing : wanted.length > mostLetters ? words.long : null;
    setErrors(why === null ? [] : [{ field: 'deviceName', text: why }]);
    if (why !== null) return;
    const notKept = await setDeviceName(wanted);
    if (notKept !== null) return setErrors([{ field: null, text: failedSentence(notKept) }]);
    setSaved(true);
  };
  return (
    <form
      noValidate
      className={styles.section}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <h2>{words.heading}</h2>
      <ErrorSummary errors={errors} />
      {name === null && <p>{words.none}</p>}
      <TextField
        name="deviceName"
        label={words.label}
        hint={words.hint}
        value={typed}
        onChange={(text) => {
          setTyped(text);
          setSaved(false);
        }}
        error={errorOf(errors, 'deviceName')}
      />
      <div>
        <QuietAction type="submit">{words.save}</QuietAction>
      </div>
      {saved && <Notice>{words.saved}</Notice>}
    </form>
  );
}
