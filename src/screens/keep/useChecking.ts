/** Reading a backup through, with progress and a way to stop. */
import { useRef, useState } from 'react';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { now } from '#store/device.ts';
import { noteVerified } from '#store/sending.ts';
import { type BackupCheck, checkBackup, type VerifiedBackup } from '#store/wiping.ts';
import { backupRefused } from '#words/saving.ts';

export interface Checking {
  readonly busy: boolean;
  readonly done: number;
  readonly total: number;
  readonly sealed: boolean;
  readonly errors: readonly FieldError[];
  readonly lacks: { readonly entriesCount: number; readonly filesCount: number } | null;
  readonly backup: VerifiedBackup | null;
  readonly check: (file: File, passphrase: string) => Promise<void>;
  readonly stop: () => void;
  readonly forget: () => void;
}

const sentence = (why: string): string => backupRefused[why] ?? backupRefused.damaged ?? '';

function errorsOf(checked: BackupCheck | null, asked: boolean): readonly FieldError[] {
  if (checked?.kind === 'sealed') return asked ? [{ field: 'backupPassphrase', text: sentence('sealed') }] : [];
  if (checked?.kind !== 'refused' || checked.why === 'stopped') return [];
  return [
    { field: checked.why === 'wrongPassphrase' ? 'backupPassphrase' : 'backupFile', text: sentence(checked.why) },
  ];
}

export function useChecking(): Checking {
  const [checked, setChecked] = useState<BackupCheck | null>(null);
  const [sealed, setSealed] = useState(false);
  const [asked, setAsked] = useState(false);
  const [busy, setBusy] = useState(false);
  const [progress, setProgress] = useState({ done: 0, total: 0 });
  const stopper = useRef<AbortController | null>(null);
  const check = async (file: File, passphrase: string) => {
    if (stopper.current !== null) return;
    const stop = new AbortController();
    stopper.current = stop;
    setBusy(true);
    setChecked(null);
    const found = await checkBackup(file, {
      ...(passphrase === '' ? {} : { passphrase }),
      onProgress: ({ done, total }) => setProgress({ done, total }),
      signal: stop.signal,
    }).finally(() => {
      stopper.current = null;
      setBusy(false);
    });
    setAsked(sealed);
    setSealed(found.kind === 'sealed' || passphrase !== '');
    setChecked(found);
    // Only told on the page of this device: a book closed meanwhile has nowhere to note it.
    if (found.kind === 'holdsAll') await noteVerified(now()).catch(() => undefined);
  };
  return {
    busy,
    ...progress,
    sealed,
    errors: errorsOf(checked, asked),
    lacks: checked?.kind === 'lacks' ? checked : null,
    backup: checked?.kind === 'holdsAll' ? checked : null,
    check,
    stop: () => stopper.current?.abort(),
    forget: () => {
      setChecked(null);
      setSealed(false);
      setAsked(false);
    },
  };
}
