/** Taking up a book from a file: looked into first, with its passphrase when it is sealed, then taken in. */
import { useState } from 'react';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import type { Looked, Preview } from '#store/handOver/handOver.ts';
import { setDeviceName } from '#store/handOver/partners.ts';
import { type Looking, useLooking } from '#store/hooks/useLooking.ts';
import { backupRefused, failedSentence } from '#words/saving.ts';
import { en as words } from '#words/start.ts';

export interface Joining {
  readonly here: Looking;
  readonly preview: Preview | null;
  readonly sealed: boolean;
  readonly passphrase: string;
  readonly deviceName: string;
  readonly setPassphrase: (text: string) => void;
  readonly setDeviceName: (text: string) => void;
  /** Looks, or takes in what was looked into. `open`: the book is on this device now. */
  readonly goOn: (file: File | null) => Promise<'open' | 'looked' | readonly FieldError[]>;
  readonly forget: () => void;
}

const mostLetters = 40;
const oneError = (field: string | null, text: string): readonly FieldError[] => [{ field, text }];
const sentence = (why: string): string => backupRefused[why] ?? backupRefused.damaged ?? '';

function looked(found: Looked, passphrase: string): 'looked' | readonly FieldError[] {
  if (found.kind === 'preview') return 'looked';
  if (found.kind === 'sealed')
    return passphrase === '' ? 'looked' : oneError('filePassphrase', sentence('wrongPassphrase'));
  if (found.why === 'stopped') return 'looked';
  return oneError(found.why === 'wrongPassphrase' ? 'filePassphrase' : 'file', sentence(found.why));
}

export function useJoining(): Joining {
  const here = useLooking();
  const [passphrase, setPassphrase] = useState('');
  const [name, setName] = useState('');
  const preview = here.looked?.kind === 'preview' ? here.looked : null;
  const [isSealed, setSealed] = useState(false);
  const sealed = isSealed && preview === null;

  const look = async (file: File) => {
    if (isSealed && passphrase === '') return oneError('filePassphrase', sentence('sealed'));
    const found = await here.look(file, passphrase === '' ? {} : { passphrase });
    setSealed(found?.kind === 'sealed' || passphrase !== '');
    return found === null ? 'looked' : looked(found, passphrase);
  };
  const take = async (shown: Preview) => {
    if (name.trim().length > mostLetters) return oneError('deviceName', words.deviceNameLong);
    const taken = await here.take(shown);
    if (taken === null || taken.kind === 'cancelled') return oneError(null, words.stopped);
    if (taken.kind === 'failed') return oneError(null, failedSentence(taken.why));
    if (taken.kind === 'refused') return oneError('file', sentence(taken.why));
    if (name.trim() !== '') await setDeviceName(name);
    return 'open';
  };
  return {
    here,
    preview,
    sealed,
    passphrase,
    deviceName: name,
    setPassphrase,
    setDeviceName: setName,
    goOn: async (file) => {
      if (preview !== null) return take(preview);
      return file === null ? oneError('file', words.fileMissing) : look(file);
    },
    forget: () => {
      here.forget();
      setPassphrase('');
      setSealed(false);
    },
  };
}
