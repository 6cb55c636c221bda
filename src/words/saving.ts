/** What is said when something could not be written down. Each sentence tells what to do; nothing typed is lost. */
import type { Refusal } from '#records/decide/refusal.ts';
import { refusalSentence } from './refusals.ts';

export const failed = {
  quota:
    'The device has no room left, so nothing was written down. What you typed is still here. Free some space, make a backup under Kept records, then try again.',
  lost: 'The device lost hold of the book, so nothing was written down. What you typed is still here. Load this page again, then try again.',
  newer:
    'Another window of Fullshift is newer and holds the book now. What you typed is kept. Load this page again, then try again.',
  evicted:
    'The browser has emptied the book on this device. Nothing was written down. Take your last backup in first; it is on the first page.',
  unknown:
    'The device did not say why, but nothing was written down. What you typed is still here. Try again; if it fails again, load the page again.',
} as const;

export type FailedWhy = keyof typeof failed;

export const failedSentence = (why: string): string => (why in failed ? failed[why as FailedWhy] : failed.unknown);

/** Backups: why a file is refused. */
export const backupRefused: Readonly<Record<string, string>> = {
  stale: 'The book was changed over meanwhile. Look into the file again.',
  notABackup: 'This file is not a backup of Fullshift. Choose the file that was made on the other device.',
  damaged:
    'This file is cut or damaged. Fetch it again from where it was kept, or choose an earlier backup. Nothing was changed.',
  sheetOnly:
    'This custody sheet was made by the first version of Fullshift. It carries the sheet alone, not the record behind it: it can be read, but no shift can be rebuilt from it. Nothing was changed.',
  notAsIssued:
    'What lies in this PDF cannot be read. It was locked or saved anew by another program, or it is damaged. Use the PDF as it was issued. Nothing was changed.',
  tooLarge: 'This file is larger than any book could be. Choose another one. Nothing was changed.',
  tooManyEntries: 'This file holds more entries than any book could. Choose another one. Nothing was changed.',
  newerFormat:
    'This backup was made by a newer version of Fullshift. Load this page again with a connection, then choose it again.',
  otherBook: 'This backup is of another book. Two books never mix. Nothing was changed.',
  practiceIntoReal: 'This is a backup of a practice book. It never goes into a real book. Nothing was changed.',
  realIntoPractice:
    'This is a backup of a real book. Change to the real book first, then choose it again. Nothing was changed.',
  begun:
    'Another file is half taken in, or another window is taking this one in. Go on with that file, or leave it at that first.',
  partOnly:
    'This file holds only what another device lacked. This device is empty: ask for a file with the whole book. A custody sheet rebuilds the shifts that lie in its box.',
  sealed: 'This file is sealed. Write its passphrase.',
  wrongPassphrase:
    'This passphrase does not open the file. Look at each word, and at the file: each file has its own. Nothing was changed.',
  sealNotOurs:
    'This file is sealed in a way that Fullshift does not open: with a key instead of a passphrase, or so that it would need more memory than a phone has.',
  stopped: 'Stopped. Look into the file again when it suits you.',
  forks:
    'This file and this device hold different entries under one name. Nothing was taken in. Keep both files, and look into which device wrote them.',
};

interface NotWritten {
  readonly field: string | null;
  readonly text: string;
}

type Outcome =
  | { readonly kind: 'written' }
  | { readonly kind: 'refused'; readonly refusals: readonly RefusalLike[] }
  | { readonly kind: 'failed'; readonly why: string };
type RefusalLike = Pick<Refusal, 'key' | 'fields' | 'params'>;

/** The field of the form that a place in the facts belongs to, by the last name in it: `0/body/identifier`. */
const fieldOf = (fields: readonly string[], fieldByName: Readonly<Record<string, string>>): string | null => {
  for (const place of fields) {
    const field = fieldByName[place.slice(place.lastIndexOf('/') + 1)];
    if (field !== undefined) return field;
  }
  return null;
};

/** The sentences of an attempt to write; empty when it is written. `fieldByName` says which field shows which value of the body. */
export function notWritten(written: Outcome, fieldByName: Readonly<Record<string, string>> = {}): NotWritten[] {
  if (written.kind === 'written') return [];
  if (written.kind === 'failed') return [{ field: null, text: failedSentence(written.why) }];
  return written.refusals.map((refusal) => ({
    field: fieldOf(refusal.fields, fieldByName),
    text: refusalSentence(refusal),
  }));
}
