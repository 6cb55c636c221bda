/** The file of another device, what it holds, its passphrase if it is sealed, and what this device is to be called. */
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { FileField } from '#parts/FileField.tsx';
import { Particulars } from '#parts/Lines.tsx';
import { Notice } from '#parts/Notice.tsx';
import { PassphraseField } from '#parts/PassphraseField.tsx';
import { ProgressLine } from '#parts/ProgressLine.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en as handOverWords } from '#words/handOver.ts';
import { previewItems } from '#words/keep.ts';
import { en as words } from '#words/start.ts';
import { en as takeInWords } from '#words/takeIn.ts';
import type { Joining } from './useJoining.ts';

export interface JoinFieldsProps {
  readonly joining: Joining;
  /** Name of a file that was sent to the app; null when one is chosen here. */
  readonly receivedName: string | null;
  readonly errors: readonly FieldError[];
  readonly onFile: (file: File | null) => void;
}

export function JoinFields({ joining, receivedName, errors, onFile }: JoinFieldsProps) {
  const { here, preview, sealed, passphrase, deviceName } = joining;
  return (
    <>
      {receivedName !== null && <Notice>{takeInWords.received(receivedName)}</Notice>}
      <FileField
        name="file"
        label={words.file}
        hint={words.fileHint}
        onChange={onFile}
        error={errorOf(errors, 'file')}
      />
      {sealed && (
        <PassphraseField
          name="filePassphrase"
          label={takeInWords.passphrase}
          hint={takeInWords.passphraseHint}
          use="current"
          value={passphrase}
          onChange={joining.setPassphrase}
          error={errorOf(errors, 'filePassphrase')}
        />
      )}
      {here.busy && (
        <>
          <ProgressLine
            text={takeInWords.steps[here.progress?.step ?? 'reading']}
            done={here.progress?.done ?? 0}
            total={here.progress?.total ?? 0}
          />
          <div>
            <QuietAction onClick={here.stop}>{takeInWords.stop}</QuietAction>
          </div>
        </>
      )}
      {preview !== null && (
        <>
          <Particulars items={previewItems(preview)} />
          {preview.part === 'paper' && <p>{words.fromPaper}</p>}
          <TextField
            name="deviceName"
            label={handOverWords.deviceName.label}
            hint={words.deviceNameHint}
            value={deviceName}
            onChange={joining.setDeviceName}
            error={errorOf(errors, 'deviceName')}
          />
        </>
      )}
    </>
  );
}
