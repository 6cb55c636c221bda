/** The file to look into, and its passphrase when it is sealed. */
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { FileField } from '#parts/FileField.tsx';
import { Notice } from '#parts/Notice.tsx';
import { PassphraseField } from '#parts/PassphraseField.tsx';
import { takeInLimits } from '#store/handOver/limits.ts';
import { en as words } from '#words/takeIn.ts';

export interface ChooseFileProps {
  readonly name: string | null;
  /** Where it comes from, when it was not chosen here. */
  readonly from: 'received' | 'folder' | null;
  readonly errors: readonly FieldError[];
  readonly sealed: boolean;
  readonly passphrase: string;
  readonly onPassphrase: (text: string) => void;
  readonly onFile: (file: File | null) => void;
  /** Once it was looked into, its contents stand in place of the question. */
  readonly shown: boolean;
}

export function ChooseFile(props: ChooseFileProps) {
  const { name, from, errors, sealed, passphrase, onPassphrase, onFile, shown } = props;
  return (
    <>
      <ErrorSummary errors={errors} />
      {shown && <p>{words.intro}</p>}
      {name !== null && from !== null && (
        <Notice>{from === 'received' ? words.received(name) : words.fromFolder(name)}</Notice>
      )}
      {shown && (
        <FileField
          name="file"
          label={from === null ? words.file : words.otherFile}
          hint={words.fileHint(takeInLimits.fileBytes / 1_000_000)}
          onChange={onFile}
          error={errorOf(errors, 'file')}
        />
      )}
      {shown && sealed && (
        <>
          <p>{words.sealed}</p>
          <PassphraseField
            name="filePassphrase"
            label={words.passphrase}
            hint={words.passphraseHint}
            use="current"
            value={passphrase}
            onChange={onPassphrase}
            error={errorOf(errors, 'filePassphrase')}
          />
        </>
      )}
    </>
  );
}
