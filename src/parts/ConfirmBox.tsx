/** Asks before an act that cannot be taken back, and why it is done. A native dialog: Escape and Back leave everything as it was. */
import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import styles from './ConfirmBox.module.css';
import { usePartsWords } from './language.ts';
import { MainAction } from './MainAction.tsx';
import { QuietAction } from './QuietAction.tsx';
import { TextField } from './TextField.tsx';

export interface ConfirmBoxProps {
  readonly open: boolean;
  readonly heading: string;
  readonly children?: ReactNode;
  /** When given, a reason is asked for and may not be empty. */
  readonly reasonLabel?: string | undefined;
  readonly confirmText: string;
  readonly busy?: boolean | undefined;
  readonly onConfirm: (reason: string) => void;
  readonly onCancel: () => void;
}

export function ConfirmBox(props: ConfirmBoxProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const box = dialog.current;
    if (props.open && box && !box.open) box.showModal();
    if (!props.open && box?.open) box.close();
  }, [props.open]);
  return (
    <dialog
      ref={dialog}
      className={styles.box}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        props.onCancel();
      }}
    >
      {props.open && <Asking {...props} id={id} />}
    </dialog>
  );
}

function Asking({
  id,
  heading,
  children,
  reasonLabel,
  confirmText,
  busy,
  onConfirm,
  onCancel,
}: ConfirmBoxProps & { readonly id: string }) {
  const words = usePartsWords();
  const [reason, setReason] = useState('');
  const [error, setError] = useState<string | undefined>(undefined);
  const confirm = () => {
    if (reasonLabel !== undefined && reason.trim() === '') {
      setError(words.reasonMissing);
      document.getElementById(`${id}-reason`)?.focus();
    } else onConfirm(reason.trim());
  };
  return (
    <form
      noValidate
      className={styles.inside}
      onSubmit={(event) => {
        event.preventDefault();
        confirm();
      }}
    >
      <h2 id={id}>{heading}</h2>
      {children}
      {reasonLabel !== undefined && (
        <TextField
          name={`${id}-reason`}
          label={reasonLabel}
          value={reason}
          onChange={setReason}
          error={error}
          rows={2}
        />
      )}
      <div className={styles.actions}>
        <MainAction type="submit" busy={busy}>
          {confirmText}
        </MainAction>
        <QuietAction onClick={onCancel}>{words.cancel}</QuietAction>
      </div>
    </form>
  );
}
