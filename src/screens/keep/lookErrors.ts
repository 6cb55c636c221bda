/** What stands in the way of looking into a file or taking it in, as sentences at the field that mends it. */
import type { FieldError } from '#parts/ErrorSummary.tsx';
import type { Looking } from '#store/hooks/useLooking.ts';
import { backupRefused, failedSentence } from '#words/saving.ts';
import { en as words } from '#words/takeIn.ts';

const sentence = (why: string): string => backupRefused[why] ?? backupRefused.damaged ?? '';

/** `missing`: what was not given when the look was asked for. */
export function errorsOf({ looked, taken }: Looking, missing: 'file' | 'passphrase' | null): readonly FieldError[] {
  if (missing === 'file') return [{ field: 'file', text: words.fileMissing }];
  if (missing === 'passphrase') return [{ field: 'filePassphrase', text: words.passphraseMissing }];
  if (taken?.kind === 'failed') return [{ field: null, text: failedSentence(taken.why) }];
  if (taken?.kind === 'refused') return [{ field: null, text: sentence(taken.why) }];
  if (looked?.kind !== 'refused' || looked.why === 'stopped') return [];
  return [{ field: looked.why === 'wrongPassphrase' ? 'filePassphrase' : 'file', text: sentence(looked.why) }];
}
