/** Another device's backup, or an earlier one: looked into first, then taken in as a union. What is here is never changed by it. */
import { useState } from 'react';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { FileField } from '#parts/FileField.tsx';
import { Particulars } from '#parts/Lines.tsx';
import { Notice } from '#parts/Notice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Preview } from '#store/handOver/handOver.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { previewItems, en as words } from '#words/keep.ts';
import { backupRefused, failedSentence } from '#words/saving.ts';
import styles from './keep.module.css';

const text = words.take;
const refused = (why: string): readonly FieldError[] => [
  { field: 'file', text: backupRefused[why] ?? backupRefused.damaged ?? '' },
];

export function TakeIn() {
  const [file, setFile] = useState<File | null>(null);
  const [preview, setPreview] = useState<Preview | null>(null);
  const [done, setDone] = useState<readonly string[]>([]);
  const [busy, setBusy] = useState(false);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);

  const look = async () => {
    if (file === null) return setErrors([{ field: 'file', text: text.fileMissing }]);
    setBusy(true);
    const read = await lookInto(file);
    setBusy(false);
    setErrors(read.kind === 'preview' ? [] : refused(read.kind === 'refused' ? read.why : 'sealed'));
    setPreview(read.kind === 'preview' ? read : null);
  };
  const take = async (shown: Preview) => {
    setBusy(true);
    const taken = await takeIn(shown);
    setBusy(false);
    setPreview(null);
    if (taken.kind === 'refused') return setErrors(refused(taken.why));
    if (taken.kind === 'cancelled') return setErrors(refused('stopped'));
    if (taken.kind === 'failed') return setErrors([{ field: null, text: failedSentence(taken.why) }]);
    const numbers = taken.sharedNumbers.map(({ sampleNumber }) => sampleNumber).join(', ');
    setDone([text.done(taken.newCount), ...(numbers === '' ? [] : [text.shared(numbers)])]);
  };

  return (
    <section className={styles.section}>
      <h2>{text.heading}</h2>
      <ErrorSummary errors={errors} />
      <p>{text.intro}</p>
      <FileField
        name="file"
        label={text.file}
        onChange={(chosen) => {
          setFile(chosen);
          setPreview(null);
          setDone([]);
          setErrors([]);
        }}
        error={errorOf(errors, 'file')}
      />
      {preview === null ? (
        <div>
          <QuietAction busy={busy} onClick={() => void look()}>
            {text.look}
          </QuietAction>
        </div>
      ) : (
        <>
          <Particulars items={previewItems(preview)} />
          {preview.newCount === 0 ? (
            <Notice>{text.nothingNew}</Notice>
          ) : (
            <div>
              <QuietAction busy={busy} onClick={() => void take(preview)}>
                {text.action}
              </QuietAction>
            </div>
          )}
        </>
      )}
      {done.map((sentence) => (
        <Notice key={sentence}>{sentence}</Notice>
      ))}
    </section>
  );
}
