/** What stands in the way of looking into a file or taking it in, as sentences at the field that mends it. */
import type { FieldError } from '#parts/ErrorSummary.tsx';
import type { Looking } from '#store/hooks/useLooking.ts';
import { backupRefused, failedSentence } from '#words/saving.ts';
import { en as words } from '#words/takeIn.ts';

const sentence = (why: string): string => backupRefused[why] ?? backupRefused.damaged ?? '';

export interface Given {
  readonly fileMissing: boolean;
  readonly passphraseGiven: boolean;
}

export function errorsOf({ looked, taken }: Looking, { fileMissing, passphraseGiven }: Given): readonly FieldError[] {
  if (fileMissing) return [{ field: 'file', text: words.fileMissing }];
  if (taken?.kind === 'failed') return [{ field: null, text: failedSentence(taken.why) }];
  if (taken?.kind === 'refused') return [{ field: null, text: sentence(taken.why) }];
  if (looked?.kind === 'sealed' && passphraseGiven)
    return [{ field: 'filePassphrase', text: sentence('wrongPassphrase') }];
  if (looked?.kind !== 'refused' || looked.why === 'stopped') return [];
  return [{ field: looked.why === 'wrongPassphrase' ? 'filePassphrase' : 'file', text: sentence(looked.why) }];
}
